package shinline.cli.accuracy;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.words.Words;

/**
 * The accuracy of a run as a page of Markdown and as a few lines for the terminal. Every figure is
 * computed but those of other people's studies, which carry their source.
 *
 * @param command the command that makes this page
 * @param model the pose model that looked
 * @param unscored clips that could not be scored, and why
 * @param cameras clips from a grid of cameras, which count in their own table only
 * @param leftOut the section on clips that nothing was fitted on, empty when there are too few
 */
record AccuracyReport(
    Accuracy all,
    String command,
    String model,
    List<String> unscored,
    List<String> leftOut,
    Optional<Accuracy> cameras) {
  private static final double OFF_SIDE_DEG = 5;
  private static final double FEW_FPS = 27;
  private static final double MANY_FPS = 40;

  /** The short table for the terminal. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%-17s %4s %8s %8s %8s %8s %7s",
            Words.lines("accuracy.table.head").toArray()));
    for (Scored scored : Scored.values()) {
      all.spread(scored)
          .ifPresent(
              s ->
                  lines.add(
                      String.format(
                          Locale.ROOT,
                          "%-17s %4d %8s %8s %8s %8s %7s",
                          scored.words(),
                          s.n(),
                          signed(scored, s.bias()),
                          plain(scored, s.meanAbsolute()),
                          plain(scored, s.p95()),
                          plain(scored, s.medianPlusMinus()),
                          Markdown.percent(s.coverage()))));
    }
    lines.add(reps());
    lines.add(flags());
    lines.add(new VerdictTable(all).line());
    lines.addAll(leftOut);
    return lines;
  }

  void write(Writer out) throws IOException {
    for (String line : page()) {
      out.write(line + "\n");
    }
  }

  private List<String> page() {
    List<String> page = new ArrayList<>();
    page.add("# " + Words.say("accuracy.title"));
    page.add("");
    page.add(Words.say("accuracy.how", command, model, all.clips().size(), all.trueReps()));
    page.add("");
    page.add(reps() + " " + flags() + " " + new VerdictTable(all).line());
    page.add("");
    page.add(Words.say("accuracy.fitted"));
    measures(page);
    clips(page);
    page.addAll(new VerdictTable(all).section());
    faults(page);
    worse(page);
    outside(page);
    page.addAll(leftOut);
    cameras.ifPresent(grid -> page.addAll(new CameraTable(grid).section()));
    published(page);
    return page;
  }

  private void measures(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.measures"));
    page.add("");
    page.add(Words.say("accuracy.measures.how"));
    page.add("");
    page.add(Markdown.row(Words.lines("accuracy.measures.head").toArray(String[]::new)));
    page.add(Markdown.rule(2, 7));
    for (Scored scored : Scored.values()) {
      all.spread(scored)
          .ifPresentOrElse(
              s ->
                  page.add(
                      Markdown.row(
                          scored.words(),
                          scored.unit(),
                          String.valueOf(s.n()),
                          signed(scored, s.bias()),
                          plain(scored, s.meanAbsolute()),
                          goal(scored),
                          plain(scored, s.p95()),
                          plain(scored, s.medianPlusMinus()),
                          Markdown.percent(s.coverage()))),
              () ->
                  page.add(
                      Markdown.row(
                          scored.words(),
                          scored.unit(),
                          "0",
                          Markdown.NONE,
                          Markdown.NONE,
                          goal(scored),
                          Markdown.NONE,
                          Markdown.NONE,
                          Markdown.NONE)));
    }
  }

  private void clips(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.clips"));
    page.add("");
    page.add(Words.say("accuracy.clips.how"));
    page.add("");
    page.add(head("accuracy.clips.head", Scored.values(), "accuracy.clips.head-end"));
    page.add(Markdown.rule(1, Scored.values().length + 2) + " --- |");
    for (ClipScore clip : all.clips()) {
      Accuracy one = new Accuracy(List.of(clip));
      List<String> cells = new ArrayList<>();
      cells.add(clip.truth().clip());
      cells.add(Words.say("accuracy.of", clip.matched(), clip.trueReps()));
      for (Scored scored : Scored.values()) {
        cells.add(
            one.spread(scored)
                .map(s -> plain(scored, s.meanAbsolute()) + " / " + plain(scored, s.p95()))
                .orElse(Markdown.NONE));
      }
      cells.add(one.coverage().map(Markdown::percent).orElse(Markdown.NONE));
      List<String> notes = new ArrayList<>(clip.notes());
      if (!clip.missing().isEmpty()) {
        notes.add(Words.say("accuracy.not-measured", String.join(", ", clip.missing())));
      }
      if (clip.falseReps() > 0) {
        notes.add(Words.say("accuracy.false-reps", clip.falseReps()));
      }
      cells.add(notes.isEmpty() ? "" : String.join("; ", notes));
      page.add(Markdown.row(cells.toArray(String[]::new)));
    }
    if (!unscored.isEmpty()) {
      page.add("");
      page.add(Words.say("accuracy.unscored", String.join("; ", unscored)));
    }
  }

  private void faults(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.flags"));
    page.add("");
    page.add(Words.say("accuracy.flags.how"));
    page.add("");
    Map<String, int[]> kinds = new java.util.TreeMap<>();
    List<String> wrong = new ArrayList<>();
    for (ClipScore clip : all.clips()) {
      for (ClipScore.FlagScore rep : clip.flags()) {
        String name = clip.truth().clip();
        for (String kind : rep.wanted()) {
          int column = rep.said().contains(kind) ? 0 : 1;
          kinds.computeIfAbsent(kind, k -> new int[3])[column]++;
        }
        for (String kind : rep.falseOnClean()) {
          kinds.computeIfAbsent(kind, k -> new int[3])[2]++;
          wrong.add(Words.say("accuracy.flag.false", name, rep.rep(), kind));
        }
        rep.missed()
            .forEach(kind -> wrong.add(Words.say("accuracy.flag.missed", name, rep.rep(), kind)));
      }
    }
    page.add(Markdown.row(Words.lines("accuracy.flags.head").toArray(String[]::new)));
    page.add(Markdown.rule(1, 3));
    kinds.forEach(
        (kind, n) ->
            page.add(
                Markdown.row(
                    kind, String.valueOf(n[0]), String.valueOf(n[1]), String.valueOf(n[2]))));
    if (!wrong.isEmpty()) {
      page.add("");
      wrong.forEach(w -> page.add("- " + w));
    }
  }

  private static final Scored[] COMPARED = {
    Scored.SHIN,
    Scored.TRUNK_LEAN,
    Scored.THIGH,
    Scored.KNEE_FLEXION,
    Scored.KNEE_PAST_TOE,
    Scored.DRIVE
  };

  private void worse(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.worse"));
    page.add("");
    page.add(Words.say("accuracy.worse.how"));
    page.add("");
    page.add(head("accuracy.worse.head", COMPARED, "accuracy.worse.head-end"));
    page.add(Markdown.rule(1, COMPARED.length + 3));
    Map<String, Predicate<Truth>> facts = new LinkedHashMap<>();
    facts.put(Words.say("accuracy.fact.side"), t -> t.yawDeg() <= OFF_SIDE_DEG);
    facts.put(Words.say("accuracy.fact.off-side"), t -> t.yawDeg() > OFF_SIDE_DEG);
    facts.put(Words.say("accuracy.fact.near"), Truth::frontLegNear);
    facts.put(Words.say("accuracy.fact.far"), t -> !t.frontLegNear());
    facts.put(Words.say("accuracy.fact.floor"), t -> !t.onBench());
    facts.put(Words.say("accuracy.fact.bench"), Truth::onBench);
    facts.put(Words.say("accuracy.fact.few-fps"), t -> t.fps() < FEW_FPS);
    facts.put(Words.say("accuracy.fact.usual-fps"), t -> t.fps() >= FEW_FPS && t.fps() <= MANY_FPS);
    facts.put(Words.say("accuracy.fact.many-fps"), t -> t.fps() > MANY_FPS);
    facts.put(Words.say("accuracy.fact.hand"), Truth::shaken);
    facts.forEach(
        (name, fact) -> {
          Accuracy group = all.where(fact);
          if (!group.clips().isEmpty()) {
            List<String> cells = new ArrayList<>();
            cells.add(name);
            cells.add(String.valueOf(group.clips().size()));
            cells.add(String.valueOf(group.trueReps()));
            for (Scored scored : COMPARED) {
              cells.add(
                  group
                      .spread(scored)
                      .map(s -> plain(scored, s.meanAbsolute()))
                      .orElse(Markdown.NONE));
            }
            cells.add(group.coverage().map(Markdown::percent).orElse(Markdown.NONE));
            page.add(Markdown.row(cells.toArray(String[]::new)));
          }
        });
  }

  private void outside(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.outside"));
    page.add("");
    int before = page.size();
    for (ClipScore clip : all.clips()) {
      Accuracy one = new Accuracy(List.of(clip));
      List<String> beyond = new ArrayList<>();
      for (Scored scored : Scored.values()) {
        Optional<Spread> spread = one.spread(scored);
        if (spread.isPresent()
            && scored.goal().isPresent()
            && spread.get().meanAbsolute() > scored.goal().get()) {
          Spread s = spread.get();
          beyond.add(
              Words.say(
                  "accuracy.outside.measure",
                  scored.words(),
                  plain(scored, s.meanAbsolute())
                      + (scored.unit().equals("°") ? "°" : " " + scored.unit()),
                  goal(scored),
                  signed(scored, s.bias()),
                  Markdown.percent(s.coverage())));
        }
      }
      if (!beyond.isEmpty()) {
        page.add(
            "- "
                + Words.say(
                    "accuracy.outside.clip",
                    clip.truth().clip(),
                    facts(clip.truth()),
                    String.join("; ", beyond)));
      }
    }
    if (page.size() == before) {
      page.add(Words.say("accuracy.outside.none"));
    } else {
      page.add("");
      page.add(Words.say("accuracy.outside.how"));
    }
  }

  private static String facts(Truth truth) {
    return Stream.of(
            Words.say(truth.frontLegNear() ? "accuracy.clip.near" : "accuracy.clip.far"),
            Words.say(truth.onBench() ? "accuracy.clip.bench" : "accuracy.clip.floor"),
            Words.say("accuracy.clip.fps", truth.fps()),
            Words.say("accuracy.clip.yaw", truth.yawDeg()),
            truth.shaken() ? Words.say("accuracy.clip.hand") : "")
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private void published(List<String> page) {
    page.add("");
    page.add("## " + Words.say("accuracy.published"));
    page.add("");
    page.add(Words.say("accuracy.published.how"));
    page.add("");
    page.add(Markdown.row(Words.lines("accuracy.published.head").toArray(String[]::new)));
    page.add("| --- | --- | --- | --- |");
    published(
        page,
        "accuracy.published.knee-in-gait",
        told(Scored.KNEE_FLEXION, s -> plain(Scored.KNEE_FLEXION, s.meanAbsolute()) + "°"));
    published(
        page,
        "accuracy.published.ankle-in-gait",
        told(Scored.SHIN, s -> plain(Scored.SHIN, s.meanAbsolute()) + "°"),
        told(Scored.THIGH, s -> plain(Scored.THIGH, s.meanAbsolute()) + "°"));
    published(
        page,
        "accuracy.published.knee-in-squats",
        told(
            Scored.KNEE_FLEXION,
            s ->
                signed(Scored.KNEE_FLEXION, s.bias())
                    + " ± "
                    + plain(Scored.KNEE_FLEXION, s.sd())
                    + "°"));
    published(page, "accuracy.published.shin-in-lunge", change(Scored.SHIN, "°"));
    published(page, "accuracy.published.distance-in-lunge", change(Scored.KNEE_PAST_TOE, " cm"));
  }

  /** The cells of a row are lines of one text. */
  private static void published(List<String> page, String key, String... ours) {
    page.add(Markdown.row(Words.lines(key, (Object[]) ours).toArray(String[]::new)));
  }

  private String change(Scored scored, String unit) {
    return told(
        scored,
        s ->
            Words.say(
                "accuracy.published.change",
                plain(scored, s.sd()) + unit,
                // MDC95 = 1.96·√2·SEM
                plain(scored, 1.96 * Math.sqrt(2) * s.sd()) + unit));
  }

  /** The heading of a table with a column for each measure between columns of its own. */
  private static String head(String first, Scored[] measures, String last) {
    return Markdown.row(
        Stream.of(
                Words.lines(first).stream(),
                Stream.of(measures)
                    .map(s -> Words.say("accuracy.measure-unit", s.words(), s.unit())),
                Words.lines(last).stream())
            .flatMap(s -> s)
            .toArray(String[]::new));
  }

  private String told(Scored scored, Function<Spread, String> words) {
    return all.spread(scored).map(words).orElse(Words.say("accuracy.told.none"));
  }

  private String reps() {
    return Words.say("accuracy.line.reps", all.matchedReps(), all.trueReps(), all.falseReps());
  }

  private String flags() {
    return Words.say(
        "accuracy.line.flags",
        all.flagsFound(),
        all.flagsMissed(),
        all.flagsFalse(),
        all.cleanReps());
  }

  private static String goal(Scored scored) {
    return scored.goal().map(g -> "≤ " + plain(scored, g)).orElse(Markdown.NONE);
  }

  private static String plain(Scored scored, double value) {
    return String.format(Locale.ROOT, "%." + scored.places() + "f", value);
  }

  private static String signed(Scored scored, double value) {
    return String.format(Locale.ROOT, "%+." + scored.places() + "f", value);
  }
}
