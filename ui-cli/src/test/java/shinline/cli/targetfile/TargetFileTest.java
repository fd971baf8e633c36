package shinline.cli.targetfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.yaml.YamlReading;
import shinline.cli.yaml.YamlText;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.target.TempoTarget.Phase;

class TargetFileTest {
  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final Path EXAMPLE = Path.of("..", "docs", "examples", "target.yaml");
  private static final String TEMPO_ADVICE =
      "write lowering-hold-drive-top in seconds, for example 4-2-X-1";

  @TempDir Path folder;

  private static Target target(String yaml) {
    return TargetFile.parse(yaml)
        .fold(
            read -> read,
            refused -> {
              throw new AssertionError(refused.problems());
            });
  }

  private static List<String> problems(YamlReading<Target> file) {
    return file.fold(
        read -> List.of(),
        refused -> refused.problems().stream().map(p -> p.text("day.yaml")).toList());
  }

  private static List<String> problems(String yaml) {
    return problems(TargetFile.parse(yaml));
  }

  private static String onlyProblem(String yaml) {
    List<String> problems = problems(yaml);
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  @Test
  void theDocumentedExampleIsRead() {
    assertThat(TargetFile.read(EXAMPLE))
        .isEqualTo(
            new YamlReading.Read<>(
                new Target(
                    Optional.of(ShinPreset.OVER_TOE.target()),
                    new DepthTarget(
                        "own", Optional.of(10.0), Optional.of(12.0), Optional.empty(), false),
                    new TempoTarget(
                        Optional.of(new Phase(3, 5)),
                        Optional.of(new Phase(1.5, OPEN)),
                        Optional.empty(),
                        Optional.empty()),
                    Optional.of(new Target.TrunkBand(Double.NEGATIVE_INFINITY, 40)),
                    new Target.Margin(3, 2, 0.3))));
  }

  @ParameterizedTest
  @EnumSource(ShinPreset.class)
  void presetsAreKnownByTheirWord(ShinPreset preset) {
    assertThat(target("shin: " + preset.word()).shin()).contains(preset.target());
  }

  @Test
  void ownShinBandsInDegreesOrCentimetres() {
    assertThat(target("shin: {name: long stride, degrees: [-5, 8]}").shin())
        .contains(new ShinTarget.AngleBand("long stride", -5, 8));
    assertThat(target("shin:\n  knee-past-toe-cm: [8, open]").shin())
        .contains(new ShinTarget.KneePastToeBand("own", 8, OPEN));
  }

  @Test
  void depthByNameOrByOwnLimits() {
    assertThat(target("depth: full").depth()).isEqualTo(DepthTarget.full());
    assertThat(target("depth: short-range").depth()).isEqualTo(DepthTarget.quarterRange());
    assertThat(target("depth: {hip-travel-min-cm: 30}").depth())
        .isEqualTo(
            new DepthTarget("own", Optional.empty(), Optional.empty(), Optional.of(30.0), false));
  }

  @Test
  void whatIsLeftOutIsNotJudged() {
    assertThat(target("shin: upright"))
        .isEqualTo(
            new Target(
                Optional.of(ShinPreset.UPRIGHT.target()),
                DepthTarget.any(),
                TempoTarget.any(),
                Optional.empty(),
                Target.Margin.standard()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4-2-X-1", "42X1", "'4-2-x-1'", "4 - 2 - X - 1"})
  void theTradesFourFigures(String tempo) {
    assertThat(target("tempo: " + tempo).tempo())
        .isEqualTo(
            new TempoTarget(
                Optional.of(new Phase(3.5, 4.5)),
                Optional.of(new Phase(1.5, 2.5)),
                Optional.empty(),
                Optional.of(new Phase(0.5, 1.5))));
  }

  /**
   * How long a set lasts by its tempo, X counted as a second: 3-1-1-0 for eight reps and 4-2-X-1
   * for five last 40 s each (common practice).
   */
  @ParameterizedTest
  @CsvSource({"3-1-1-0, 8, 40", "4-2-X-1, 5, 40"})
  void theFourFiguresAddUpToTheSetsLength(String tempo, int reps, double seconds) {
    TempoTarget asked = target("tempo: " + tempo).tempo();
    double rep = 0;
    for (Optional<Phase> phase :
        List.of(asked.lowering(), asked.hold(), asked.drive(), asked.top())) {
      // Half a second either way; a phase of no time has only its upper half.
      rep += phase.map(p -> p.maxS() - TempoTarget.DEFAULT_TOLERANCE_S).orElse(1.0);
    }
    assertThat(reps * rep).isEqualTo(seconds);
  }

  @Test
  void aToleranceNeverMakesATimeNegative() {
    assertThat(target("tempo: 3-0-1").tempo())
        .isEqualTo(
            new TempoTarget(
                Optional.of(new Phase(2.5, 3.5)),
                Optional.of(new Phase(0, 0.5)),
                Optional.of(new Phase(0.5, 1.5)),
                Optional.empty()));
    assertThat(target("tempo: {drive: {seconds: 1, tolerance: 2}}").tempo().drive())
        .contains(new Phase(0, 3));
    assertThat(target("tempo: {hold: [open, 1]}").tempo().hold()).contains(new Phase(0, 1));
  }

  @Test
  void marginsGivenInPartKeepTheOtherDefaults() {
    assertThat(target("shin: upright\nmargin: {cm: 1}").margin())
        .isEqualTo(new Target.Margin(3, 1, 0.3));
  }

  @Test
  void aMarkInFrontOfTheTextIsPassedOver() {
    assertThat(target("\uFEFFshin: upright").shin()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "sihn: upright | line 1: unknown field \"sihn\"; known here: shin, depth, tempo, trunk-deg,"
            + " margin",
        "just words | line 1: should hold fields, not \"just words\"; known here: shin, depth,"
            + " tempo, trunk-deg, margin",
        "margin: {deg: 3} | line 1: asks for nothing; give at least one of shin, depth, tempo,"
            + " trunk-deg",
        "shin: sideways | line 1, shin: no shin target is called \"sideways\"; write one of"
            + " upright, over-toe, past-toe, or {name: ..., degrees: [least, most]}",
        "shin: | line 1, shin: no shin target is called nothing; write one of upright, over-toe,"
            + " past-toe, or {name: ..., degrees: [least, most]}",
        "shin: {name: x} | line 1, shin: has neither degrees nor knee-past-toe-cm; give exactly one"
            + " of the two",
        "shin: {degrees: [0, 4], knee-past-toe-cm: [0, 4]} | line 1, shin: has both degrees and"
            + " knee-past-toe-cm; give exactly one of the two",
        "depth: [1, 2] | line 1, depth: no depth is called a list; write full, short-range or any,"
            + " or {thigh-max-deg: 10}",
        "depth: {} | line 1, depth: asks for no depth; give at least one of thigh-max-deg,"
            + " rear-knee-max-cm, hip-travel-min-cm",
        "depth: {thigh-max-deg: 120} | line 1, depth.thigh-max-deg: 120 degrees cannot be meant;"
            + " give -90 to 90 degrees",
        "depth: {thigh-max-deg: .nan} | line 1, depth.thigh-max-deg: should be a number of degrees,"
            + " not \".nan\"; write a number of degrees, for example 12",
      })
  void wrongFieldsAreNamedWithTheirRemedy(String yaml, String message) {
    assertThat(onlyProblem(yaml)).isEqualTo("day.yaml " + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[8, -5] | has its ends the wrong way round; write the smaller number first",
        "[5, 5] | has the same number at both ends, which no rep can meet; leave room between them",
        "[open, open] | is open at both ends, so it asks for nothing; give one end a number",
        "[1, 2, 3] | should hold two values, not 3; write [least, most] in degrees, with the word"
            + " open for an end without limit",
        "5 | should be [least, most], not \"5\"; write [least, most] in degrees, with the word open"
            + " for an end without limit",
        "[1, {a: b}] | should be one number of degrees, not a group of fields; write a number of"
            + " degrees, for example 12",
      })
  void wrongBandsAreNamedWithTheirRemedy(String band, String message) {
    assertThat(onlyProblem("shin: {degrees: " + band + "}"))
        .isEqualTo("day.yaml line 1, shin.degrees: " + message);
    assertThat(onlyProblem("trunk-deg: " + band))
        .isEqualTo("day.yaml line 1, trunk-deg: " + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{lowering: -4} | .lowering: must not be negative, but is \"-4\"; write a number of"
            + " seconds, for example 3",
        "{lowering: '4,5'} | .lowering: \"4,5\" has a decimal comma; write 4.5",
        "{hold: {tolerance: 1}} | .hold: lacks seconds; write {seconds: 4, tolerance: 1}",
        "{} | : asks for no phase; give at least one of lowering, hold, drive, top",
      })
  void wrongPhasesAreNamedWithTheirRemedy(String tempo, String message) {
    assertThat(onlyProblem("tempo: " + tempo)).isEqualTo("day.yaml line 1, tempo" + message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{hold: X} | .hold: hold cannot be X: only the drive is as fast as technique allows",
        "X-1-1-1 | : lowering cannot be X: only the drive is as fast as technique allows",
        "fast | : is not a tempo: \"fast\"",
        "4-2-900-1 | : drive should be 0 to 60 seconds, not \"900\"",
        "4--1-1 | : hold should be 0 to 60 seconds, not \"\"",
        "4-2-NaN | : drive should be 0 to 60 seconds, not \"NaN\"",
      })
  void wrongTemposAreNamedWithTheirRemedy(String tempo, String message) {
    assertThat(onlyProblem("tempo: " + tempo))
        .isEqualTo("day.yaml line 1, tempo" + message + "; " + TEMPO_ADVICE);
  }

  @Test
  void askingForTheDriveAtFullSpeedIsAskingForSomething() {
    assertThat(target("tempo: {drive: X}").tempo()).isEqualTo(TempoTarget.any());
  }

  @Test
  void allProblemsAreListedInTheOrderOfTheFile() {
    assertThat(
            problems(
                """
                shin: upright
                # a comment
                tempo:
                  lowering: slow
                  hold: 2
                trunk-deg: [40, 10]
                shin: over-toe
                """))
        .containsExactly(
            "day.yaml line 4, tempo.lowering: should be a number of seconds, not \"slow\"; write a"
                + " number of seconds, for example 3",
            "day.yaml line 6, trunk-deg: has its ends the wrong way round; write the smaller number"
                + " first",
            "day.yaml line 7, shin: is given twice; keep the one you mean");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n"})
  void anEmptyFileSaysHowToStart(String yaml) {
    assertThat(onlyProblem(yaml)).contains("holds nothing; start with");
  }

  @Test
  void tabsArePointedAt() {
    assertThat(onlyProblem("tempo:\n\thold: 2\n"))
        .isEqualTo("day.yaml line 2: a tab is used to indent; use spaces, two for each step");
  }

  @Test
  void brokenYamlNamesItsLine() {
    assertThat(onlyProblem("shin: upright\ntrunk-deg: [1, 2\nmargin: {deg: 1}\n"))
        .startsWith("day.yaml line 3: this cannot be read as YAML");
  }

  @Test
  void anchorsAliasesAndTypesAreRefused() {
    assertThat(onlyProblem("shin: &a upright")).startsWith("day.yaml line 1: names with &");
    assertThat(onlyProblem("a: &a [x]\nb: &b [*a, *a, *a]\n")).contains("line 1: names with &");
    assertThat(onlyProblem("shin: *a")).contains("names with & or *");
    assertThat(onlyProblem("shin: !!java.io.File [x]")).contains("types with !");
    assertThat(onlyProblem("shin: upright\n---\nshin: upright"))
        .contains("line 2: a second document");
  }

  @Test
  void deepNestingIsRefusedWithoutATrace() {
    assertThat(onlyProblem("shin: " + "[".repeat(60_000))).contains("nested");
    assertThat(onlyProblem("{".repeat(60_000))).contains("nested");
    assertThat(onlyProblem("- ".repeat(30_000))).contains("nested");
  }

  @Test
  void aLongListOfMistakesIsCutShort() {
    StringBuilder yaml = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      yaml.append("field").append(i).append(": 1\n");
    }
    assertThat(problems(yaml.toString())).hasSize(20);
  }

  @Test
  void filesThatAreNoTargetFilesAreRefused() throws IOException {
    assertThat(problems(TargetFile.read(folder)))
        .containsExactly("day.yaml: is a folder; name the file in it");
    assertThat(problems(TargetFile.read(folder.resolve("none.yaml"))))
        .containsExactly("day.yaml: there is no such file; check the name and the folder");
    Path huge = Files.write(folder.resolve("huge.yaml"), new byte[YamlText.MAX_BYTES + 1]);
    assertThat(problems(TargetFile.read(huge))).singleElement().asString().contains("64 KB");
    Path utf16 =
        Files.write(
            folder.resolve("utf16.yaml"), "shin: upright".getBytes(StandardCharsets.UTF_16));
    assertThat(problems(TargetFile.read(utf16))).singleElement().asString().contains("UTF-8");
    Path binary = Files.write(folder.resolve("binary.yaml"), new byte[] {0, 1, 2, 3});
    assertThat(problems(TargetFile.read(binary))).isNotEmpty();
  }

  /** Whatever is done to a good file, it is read or refused: no exception, no trace. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aDamagedFileIsReadOrRefused(long seed) throws IOException {
    String good = Files.readString(EXAMPLE);
    String alphabet = " \t\n:-[]{},&*!|>'\"%@`#?0.9eXé\u0000\uD83D";
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      StringBuilder damaged = new StringBuilder(good);
      for (int n = random.nextInt(6); n >= 0; n--) {
        int at = random.nextInt(damaged.length());
        char c = alphabet.charAt(random.nextInt(alphabet.length()));
        switch (random.nextInt(3)) {
          case 0 -> damaged.setCharAt(at, c);
          case 1 -> damaged.insert(at, c);
          default -> damaged.deleteCharAt(at);
        }
      }
      for (String problem : problems(damaged.toString())) {
        assertThat(problem).startsWith("day.yaml").doesNotContain("Exception");
      }
    }
  }
}
