package shinline.cli.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** The page's tables, with what they say. */
final class SpeedTables {
  private final SpeedPage page;
  private final List<ClipCost> costs;

  SpeedTables(SpeedPage page, List<ClipCost> costs) {
    this.page = page;
    this.costs = costs;
  }

  void add() {
    page.paragraph(
        "Made by `SpeedBenchmark` ([DEVELOPERS.md](../DEVELOPERS.md) has the command) in one run;"
            + " no figure here is typed by hand. Clips called made are made from a sample clip by"
            + " this project's own writer, the large ones scaled up and with noise added, so that"
            + " decoding costs about what a phone's clip costs. Accurate is the default pose model,"
            + " quick the one of `--model quick`.");
    whole();
    parts();
    pose();
    fourCores();
  }

  private void whole() {
    page.heading("Whole check");
    page.paragraph(
        "Whole check: from the start of the program to its end, with page, pictures and tables."
            + " Decoding alone: every picture decoded on one thread, none converted, through"
            + " FFmpeg's own decoder as JavaCV hands it out, from opening the file to its last"
            + " picture; the start of a program is not in it; the mean of three runs, before,"
            + " between and after the two checks. × decoding: the whole check's time over the mean"
            + " of the decoding just before and just after it. First output: on a terminal, from"
            + " the start of the program until it says that it opens the clip; into a pipe nothing"
            + " is written before the clip's table.");
    page.table(
        List.of(
            "clip",
            "Mbit/s",
            "plays, s",
            "decoding alone, s",
            "accurate, s",
            "× decoding",
            "quick, s",
            "× decoding",
            "first output, ms"),
        "%s | %.1f | %.1f | %.2f | %.2f | %.2f | %.2f | %.2f | %.0f",
        rows(
            costs,
            c ->
                new Object[] {
                  c.words(),
                  c.megabits(),
                  c.decode().get("playsS"),
                  c.decodeS(),
                  c.check(PoseModel.HEAVY).wallS(),
                  c.timesDecoding(PoseModel.HEAVY),
                  c.check(PoseModel.FULL).wallS(),
                  c.timesDecoding(PoseModel.FULL),
                  1000 * c.check(PoseModel.HEAVY).firstOutputS()
                }));
    page.paragraph(
        "Of the playing time: below 100 %% it runs faster than the clip plays. Core time: all"
            + " threads together. Peak: most memory the process held.");
    page.table(
        List.of("clip", "model", "of the playing time", "core time, s", "peak, MB"),
        "%s | %s | %.0f %% | %.2f | %s",
        ofEachModel(
            costs,
            (c, model) ->
                new Object[] {
                  c.words(),
                  Words.of(model, "name"),
                  100 * c.check(model).wallS() / c.decode().get("playsS"),
                  c.check(model).get("coreS"),
                  peak(c.check(model).get("peakMb"))
                }));
  }

  private static String peak(double mb) {
    return mb == 0 ? "–" : String.format(Locale.ROOT, "%.0f", mb);
  }

  private void parts() {
    page.heading("Parts");
    page.paragraph(
        "Each part with every other thing left out. Read: decoded as the program does on one"
            + " thread, without the pictures that nobody wants and no other needs, and with those"
            + " converted that the pose model may look at; convert all: every picture decoded and"
            + " converted. Beside the looks: core time of the thread of the accurate check that"
            + " watches room, camera, discs and back while the pose model is at its next look.");
    page.table(
        List.of(
            "clip",
            "pictures",
            "decoding alone, s",
            "read, s",
            "convert all, s",
            "beside the looks, s",
            "analysis, s",
            "pictures and page, s"),
        "%s | %.0f | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f",
        rows(
            inParts(),
            c -> {
              ClipCost.Parts parts = c.parts().orElseThrow();
              return new Object[] {
                c.words(),
                c.decode().get("pictures"),
                c.decodeS(),
                parts.others().get("readS"),
                parts.others().get("convertAllS"),
                c.check(PoseModel.HEAVY).get("watchS"),
                parts.poses().get(PoseModel.HEAVY).get("analysisS"),
                parts.others().get("pageS")
              };
            }));
  }

  private void pose() {
    page.heading("The pose model alone");
    page.paragraph(
        "Core time on one thread, at the frames at which a check has it look: it samples frames,"
            + " and looks at some of these only where somebody changes pace. A look is all it does"
            + " for one frame, finding people anew and second looks included.");
    page.table(
        List.of(
            "clip", "model", "load, s", "sampled frames", "looks", "all looks, s", "a look, ms"),
        "%s | %s | %.2f | %.0f | %.0f | %.2f | %.1f",
        ofEachModel(
            inParts(),
            (c, model) -> {
              SpeedRun run = c.parts().orElseThrow().poses().get(model);
              return new Object[] {
                c.words(),
                Words.of(model, "name"),
                run.get("loadS"),
                run.get("sampled"),
                run.get("looks"),
                run.get("coreS"),
                1000 * run.get("coreS") / run.get("looks")
              };
            }));
  }

  private void fourCores() {
    page.heading("On four cores");
    page.paragraph(
        "Computed, not run. From four cores on a look is shared between two threads and decoding"
            + " has two; what watches beside them has one. Looks and reading were each measured"
            + " alone in this run with two threads; the whole is the time to the first output,"
            + " loading the models, the longest of the three, analysis, pictures and page. It takes"
            + " for granted that nothing waits for memory or for another thread, so a real run is"
            + " somewhat longer."
            + " Accurate model.");
    page.table(
        List.of(
            "clip",
            "decoding alone on two threads, s",
            "a look, ms",
            "looks, s",
            "read, s",
            "beside the looks, s",
            "whole check, s",
            "× decoding on one thread"),
        "%s | %.2f | %.1f | %.2f | %.2f | %.2f | %.2f | %.2f",
        rows(
            inParts(),
            c -> {
              ClipCost.Parts parts = c.parts().orElseThrow();
              FourCores four = c.onFour();
              return new Object[] {
                c.words(),
                parts.decodeOnFour().get("wallS"),
                1000 * four.poseS() / parts.poseOnFour().get("looks"),
                four.poseS(),
                four.readS(),
                four.watchS(),
                four.wholeS(),
                c.timesDecoding(four.wholeS())
              };
            }));
  }

  private List<ClipCost> inParts() {
    return costs.stream().filter(c -> c.parts().isPresent()).toList();
  }

  private static List<Object[]> rows(List<ClipCost> clips, Function<ClipCost, Object[]> row) {
    return clips.stream().map(row).toList();
  }

  private interface RowOfModel {
    Object[] of(ClipCost clip, PoseModel model);
  }

  private static List<Object[]> ofEachModel(List<ClipCost> clips, RowOfModel row) {
    List<Object[]> rows = new ArrayList<>();
    for (ClipCost clip : clips) {
      Stream.of(PoseModel.HEAVY, PoseModel.FULL).map(m -> row.of(clip, m)).forEach(rows::add);
    }
    return rows;
  }
}
