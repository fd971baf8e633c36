package shinline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.check.CheckOptions;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.vision.pose.PoseModel;

/** The command line over a checker that answers by the clip's name. */
class MainTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final List<CheckOptions> asked = new ArrayList<>();

  /** Without pages, which would otherwise appear beside clips that are not there. */
  private int run(String... args) {
    return runWithPages(
        Stream.concat(
                Stream.of(args),
                Stream.of("--no-report").filter(o -> List.of(args).contains("check")))
            .toArray(String[]::new));
  }

  private int runWithPages(String... args) {
    CommandContext surroundings = PlainContext.of(out, err);
    return new Main(
            surroundings,
            (clip, options, progress) -> {
              asked.add(options);
              String name = clip.getFileName().toString();
              if (name.startsWith("good")) {
                return Sets.measured(name);
              }
              if (name.startsWith("empty")) {
                return Sets.notMeasured(name);
              }
              if (name.startsWith("bug")) {
                throw new IllegalStateException("a fault of ours");
              }
              return new ClipReport.Unreadable(name, "it is text", "give a video");
            })
        .run(args);
  }

  @Test
  void optionsReachTheWork() {
    int code =
        run(
            "check",
            "good.mp4",
            "--height",
            "5ft10in",
            "--bench",
            "43cm",
            "--roll",
            "-1.5",
            "--pitch",
            "12.5",
            "--capture-fps",
            "240",
            "--model",
            "accurate",
            "--target",
            "over-toe");
    assertThat(code).isZero();
    CheckOptions options = asked.get(0);
    assertThat(options.request().scale().athleteHeightM()).contains(1.778);
    assertThat(options.request().scale().benchHeightM()).contains(0.43);
    assertThat(options.request().overrides().rollDeg()).contains(-1.5);
    assertThat(options.request().overrides().pitchDeg()).contains(12.5);
    assertThat(options.request().target()).isEqualTo(Target.preset(ShinPreset.OVER_TOE));
    assertThat(options.captureFps()).hasValue(240);
    assertThat(options.model()).isEqualTo(PoseModel.HEAVY);
    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains("not a diagnosis");
  }

  /** They cost time and memory, which a run that shows none must not pay for. */
  @Test
  void framesAreKeptOnlyForARunWithPictures() {
    run("check", "good.mp4");
    run("check", "good.mp4", "--csv", folder.resolve("good.csv").toString());
    run("check", "good.mp4", "--json", folder.resolve("good.json").toString());
    runWithPages("check", "good.mp4", "--out", folder.resolve("pages").toString());
    assertThat(asked).extracting(CheckOptions::pictures).containsExactly(false, false, true, true);
  }

  /** Competition discs are 450 mm across (IWF rules); training discs need not be. */
  @Test
  void aBarHasCompetitionDiscsUnlessToldOtherwise() {
    run("check", "good.mp4");
    run("check", "good.mp4", "--bar-disc", "36cm");
    assertThat(asked.get(0).barDiscM()).isEqualTo(0.450);
    assertThat(asked.get(1).barDiscM()).isEqualTo(0.36);
  }

  @Test
  void oneBadClipDoesNotStopTheRestAndTheWorstCodeWins() {
    assertThat(run("check", "text.mp4", "empty.mp4", "good.mp4")).isEqualTo(3);
    assertThat(asked).hasSize(3);
    assertThat(out.toString())
        .contains("2 reps: 1 hit the past-toe target, 1 unclear; front heel lifts in rep 2.");
    assertThat(err.toString()).contains("text.mp4", "It is text.", "Give a video.", "empty.mp4");
    assertThat(run("check", "good.mp4", "empty.mp4")).isEqualTo(4);
  }

  @Test
  void aFaultOfOursIsSaidWithoutATraceAndTheRestGoesOn() {
    assertThat(run("check", "bug.mp4", "good.mp4")).isEqualTo(70);
    assertThat(err.toString()).contains("bug.mp4", "a fault of ours").doesNotContain("\tat ");
    assertThat(out.toString())
        .contains("2 reps: 1 hit the past-toe target, 1 unclear; front heel lifts in rep 2.");
  }

  @Test
  void outWritesEveryFileForEachClip() throws IOException {
    Path to = folder.resolve("new/results");
    assertThat(runWithPages("check", "good1.mp4", "empty.mov", "text.mp4", "--out", to.toString()))
        .isEqualTo(3);
    assertThat(Files.list(to).map(p -> p.getFileName().toString()))
        .containsExactlyInAnyOrder(
            ".shinline-files",
            "good1.html",
            "good1.json",
            "good1.csv",
            "good1-reps.csv",
            "empty.html",
            "empty.json",
            "empty.csv",
            "empty-reps.csv");
    assertThat(ResultSchema.complaints(Files.readString(to.resolve("good1.json")))).isEmpty();
    assertThat(ResultSchema.complaints(Files.readString(to.resolve("empty.json")))).isEmpty();
    assertThat(Files.readAllLines(to.resolve("empty.csv"))).hasSize(1);
  }

  @Test
  void thePageIsWrittenBesideTheClip() throws IOException {
    assertThat(runWithPages("check", folder.resolve("good.mp4").toString())).isZero();
    Path page = folder.resolve("good-shinline/report.html");
    assertThat(page)
        .content()
        .startsWith("<!doctype html>")
        .contains("2 reps: 1 hit the past-toe target, 1 unclear");
    assertThat(out.toString()).contains("Page: " + page);
    assertThat(Files.list(page.getParent()))
        .containsExactlyInAnyOrder(page, page.resolveSibling(".shinline-files"));
  }

  @Test
  void aPlaceBesideTheClipThatRefusesThePageIsSaidAndIsNoFailure() throws IOException {
    Files.writeString(folder.resolve("good-shinline"), "a file where the folder would be");
    assertThat(runWithPages("check", folder.resolve("good.mp4").toString())).isZero();
    assertThat(err.toString()).contains("no page written", "--out", "--no-report");
  }

  @Test
  void noPageIsWrittenWhenNoneIsWanted() {
    assertThat(run("check", folder.resolve("good.mp4").toString())).isZero();
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void theRepTableIsWrittenWhereAsked() throws IOException {
    Path csv = folder.resolve("reps.csv");
    assertThat(run("check", "good.mp4", "--csv", csv.toString())).isZero();
    assertThat(Files.readAllLines(csv)).hasSize(3);
  }

  @Test
  void theSameRunTwiceWritesTheSameBytes() throws IOException {
    Path json = folder.resolve("a.json");
    run("check", "good.mp4", "--json", json.toString());
    byte[] first = Files.readAllBytes(json);
    run("check", "good.mp4", "--json", json.toString());
    assertThat(Files.readAllBytes(json)).isEqualTo(first);
  }

  @Test
  void singleFilesAreRefusedForSeveralClips() {
    assertThat(run("check", "good1.mp4", "good2.mp4", "--json", "x.json")).isEqualTo(2);
    assertThat(err.toString()).contains("--out FOLDER");
    assertThat(asked).isEmpty();
  }

  @Test
  void twoClipsOfOneNameAreRefusedForOneFolder() {
    assertThat(run("check", "a/good.mp4", "b/good.mp4", "--out", folder.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("good.json");
    assertThat(asked).isEmpty();
  }

  @Test
  void aResultNeverOverwritesAClip() throws IOException {
    Path clip = folder.resolve("good.mp4");
    Files.writeString(clip, "film");
    assertThat(run("check", clip.toString(), "--json", clip.toString())).isEqualTo(2);
    assertThat(clip).hasContent("film");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--height 178", "--height 99cm", "--height 251cm", "--height 9ft", "--bench 9cm",
        "--bench 101cm", "--roll 46", "--roll NaN", "--capture-fps 0", "--model huge",
        "--target sideways", "--units stone", "--frobnicate", "--json", "--limit-length=0",
        "--limit-gap=-1", "--limit-pixels=1000", "--height=3m", "--height=0cm", "--disc=2m",
        "--disc=5cm", "--disc=450", "--disc-at=320,410", "--disc-at=here", "--pitch=90",
        "--front=both", "--facing=me", "--from=five", "--to=0s", "--bar-disc=3m"
      })
  void wrongUseIsTwo(String words) {
    List<String> args = new ArrayList<>(List.of("check", "good.mp4"));
    args.addAll(List.of(words.split(" ")));
    Path json = folder.resolve("result.json");
    args.addAll(words.equals("--json") ? List.of() : List.of("--json", json.toString()));
    assertThat(run(args.toArray(String[]::new))).isEqualTo(2);
    assertThat(err.toString()).startsWith("shinline: ").contains("--help");
    assertThat(err.toString()).contains(words.split("[ =]")[0]);
    assertThat(asked).isEmpty();
    assertThat(json).doesNotExist();
  }

  @Test
  void noClipAndNoCommandAreTwo() {
    assertThat(run("check")).isEqualTo(2);
    assertThat(run()).isEqualTo(2);
    assertThat(run("measure")).isEqualTo(2);
  }

  @Test
  void colourIsForTerminalsThatWantIt() {
    assertThat(Main.wantsColour(Map.of("TERM", "xterm"))).isTrue();
    assertThat(Main.wantsColour(Map.of("TERM", "dumb"))).isFalse();
    assertThat(Main.wantsColour(Map.of("NO_COLOR", "1"))).isFalse();
  }

  @Test
  void aNumberThatIsNoneIsToldWhatToTypeInstead() {
    assertThat(run("check", "good.mp4", "--capture-fps", "fast")).isEqualTo(2);
    assertThat(err.toString()).contains("'fast' is no number; write digits alone");
  }

  /** As when the disk is full: every write fails. */
  @Test
  void outputThatCannotBeWrittenIsAFailure() {
    Writer full =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("No space left on device");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    CommandContext context = PlainContext.of(full, err);
    assertThat(new Main(context, (clip, options, progress) -> Sets.free("x.mp4")).run("--version"))
        .isEqualTo(2);
    assertThat(err.toString()).contains("could not be written");
  }
}
