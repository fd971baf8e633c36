package shinline.cli.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.cli.record.Shell;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

class LadderFileTest {
  @TempDir Path folder;

  @Test
  void theShippedLadder() {
    Ladder ladder = LadderFile.shipped();
    assertThat(ladder.steps())
        .extracting(Step::id)
        .containsExactly(
            "floor-supported",
            "bench-supported",
            "bench-bodyweight",
            "bench-dumbbells",
            "floor-bar",
            "short-range");
    assertThat(ladder.atHand().of(LoadKind.EACH_HAND, MassUnit.LB).atMost(kg("500")))
        .contains(Mass.of("90", MassUnit.LB));
    assertThat(ladder.atHand().of(LoadKind.GUIDED_BAR, MassUnit.KG).lightest()).isEqualTo(kg("20"));
    assertThat(LadderFile.shippedText()).contains("common practice");
  }

  @Test
  void whatAFileLeavesOutIsAsShipped() {
    Ladder ladder =
        LadderFile.parse("ladder: shinline-ladder/1\nat-hand: {kg: {guided-bar: 15}}\n")
            .fold(read -> read, r -> LadderFile.shipped());
    assertThat(ladder.atHand().of(LoadKind.GUIDED_BAR, MassUnit.KG).lightest()).isEqualTo(kg("15"));
    assertThat(ladder.steps()).isEqualTo(LadderFile.shipped().steps());
    assertThat(ladder.limits()).isEqualTo(LadderFile.shipped().limits());
  }

  private static Mass kg(String value) {
    return Mass.of(value, MassUnit.KG);
  }

  /** Line, field and what to do. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: stone                                   | line 2, unit: | kg or lb",
        "maximum: guess                                | line 2, maximum: | epley",
        "rules: {half-pct: 50,5}                       | line 2, rules | known here",
        "rules: {half-pct: '50,5'}                     | line 2, rules.half-pct: | 50.5",
        "rules: {half-pct: -5}                         | line 2, rules.half-pct: | above 0",
        "rules: {more-reps: 1.5}                       | line 2, rules.more-reps: | whole number",
        "rules: {less-after-days: 50}                  | line 2, rules: | half-after-days",
        "at-hand: {kg: {dumbbells: []}}                | line 2, at-hand.kg.dumbbells: | brackets",
        "at-hand: {kg: {dumbbells: {from: 9, to: 2, by: 1}}} | line 2, at-hand.kg.dumbbells: | from",
        "at-hand: {kg: {discs: [1.125]}}               | line 2, at-hand.kg.discs: | two decimals",
        "steps: []                                     | line 2, steps: | - id:",
        "steps: [{id: a, tempo: 4-4-X}]                | line 2, steps: | sets:",
        "steps: [{id: A B, sets: [3x8], tempo: X}]     | line 2, steps.id: | hyphens",
        "steps: [{id: a, sets: [3-8], tempo: X}]       | line 2, steps.sets: | 3x8",
        "steps: [{id: a, sets: [3x8], tempo: fast}]    | line 2, steps.tempo: | 3-0-X",
        "steps: [{id: a, sets: [3x8], tempo: X, load: bar}] | line 2, steps: | weekly:",
        "steps: [{id: a, sets: [3x8], tempo: X, leave: {weeks: 2, gate: b}}] | line 2, steps.leave: | at-once",
        "steps: [{id: a, sets: [3x8], tempo: X, leave: later}] | line 2, steps.leave: | at-once",
      })
  void wrongPlacesAreNamed(String line, String place, String whatToDo) {
    String problem =
        LadderFile.parse("ladder: shinline-ladder/1\n" + line + "\n")
            .fold(read -> "", refused -> refused.problems().get(0).text("mine.yaml"));
    assertThat(problem).contains(place, whatToDo);
  }

  @Test
  void otherFilesAreNoLadders() {
    assertThat(problem("shin: upright\n")).contains("unknown field");
    assertThat(problem("")).contains("holds nothing");
    assertThat(problem("unit: kg\n")).contains("does not say that it is a ladder");
    assertThat(problem("ladder: shinline-ladder/2\n")).contains("shinline-ladder/1");
  }

  private static String problem(String text) {
    return LadderFile.parse(text)
        .fold(read -> "", refused -> refused.problems().get(0).text("mine.yaml"));
  }

  @Test
  void theCommandWritesAndChecks() throws IOException {
    Shell shell = new Shell();
    Path file = folder.resolve("ladder.yaml");
    assertThat(shell.run("ladder", "--new", file.toString())).isZero();
    assertThat(shell.run("ladder", file.toString())).isZero();
    assertThat(shell.out()).contains("a ladder of 6 steps");
    assertThat(shell.run("ladder", "--new", file.toString())).isEqualTo(2);
    assertThat(shell.err()).contains("is there already");
    Files.writeString(file, Files.readString(file).replace("tempo: 2-0-X", "tempo: quick"));
    assertThat(shell.run("ladder", file.toString())).isEqualTo(2);
    assertThat(shell.err()).contains("ladder.yaml line", "steps.tempo");
    assertThat(shell.run("ladder")).isEqualTo(2);
  }
}
