package shinline.cli.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shinline.cli.EveryJsonFits.WritesWhatDoesNotFit;
import shinline.cli.Schemas;
import shinline.cli.record.Shell;

class AdviseCommandTest {
  @TempDir Path folder;

  private final Shell shell = new Shell();

  static Stream<WorkedCases.Case> cases() throws IOException {
    return WorkedCases.all().stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void asWorkedByHand(WorkedCases.Case worked) throws IOException {
    for (String line : worked.record) {
      assertThat(Schemas.complaints("record.schema.json", line)).isEmpty();
    }
    JsonNode advice = advise(worked.record, worked.asOf, worked.ladder);

    assertThat(text(advice)).isEqualTo(worked.next);
    assertThat(advice.path("earliest").asText("")).isEqualTo(worked.earliest);
    assertThat(advice.path("missing")).hasSize(worked.missing);
    assertThat(shell.err()).isEmpty();
    assertThat(shell.out()).contains("Cautions", "common practice");
  }

  @Test
  void namesThatDifferInCaseOrBlanksAreOneAthlete() throws IOException {
    List<String> record =
        List.of(
            set("a", "Mira Voss", "2026-03-02", "left"),
            set("b", " mira  VOSS ", "2026-03-02", "right"));
    assertThat(advise(record, "2026-03-04", "").path("decision").asText()).isEqualTo("next-target");
  }

  /** The correction marks pain, its own correction takes it back. */
  @Test
  void aCorrectionOfACorrection() throws IOException {
    List<String> record = new ArrayList<>();
    record.add(set("a", "Mira Voss", "2026-03-02", "left"));
    record.add(set("b", "Mira Voss", "2026-03-02", "right"));
    record.add(correction("c", "a", "\"pain\":true"));
    assertThat(advise(record, "2026-03-04", "").path("decision").asText()).isEqualTo("stop");
    record.add(correction("d", "c", "\"pain\":false"));
    assertThat(advise(record, "2026-03-04", "").path("decision").asText()).isEqualTo("next-target");
    record.add(correction("e", "a", "\"pain\":null"));
    JsonNode advice = advise(record, "2026-03-04", "");
    assertThat(advice.path("decision").asText()).isEqualTo("next-target");
    assertThat(advice.at("/because/0/lines").toString()).isEqualTo("[\"a\",\"b\"]");
  }

  @Test
  void correctionsReplaceAFieldWholeAndThoseInARingEnd() throws IOException {
    List<String> record = new ArrayList<>();
    record.add(set("a", "Mira Voss", "2026-03-02", "left"));
    record.add(set("b", "Mira Voss", "2026-03-02", "right"));
    record.add(correction("c", "a", "\"result\":{\"reps\":8,\"cleanReps\":5}"));
    record.add(correction("d", "e", "\"note\":\"x\""));
    record.add(correction("e", "d", "\"note\":\"y\""));
    JsonNode advice = advise(record, "2026-03-04", "");
    assertThat(advice.path("decision").asText()).isEqualTo("stay");
    assertThat(advice.at("/missing/0").asText()).isEqualTo("left leg: one more good set of 8");
  }

  @Test
  void aDismissedFlagSpoilsNothing() throws IOException {
    List<String> record = new ArrayList<>();
    record.add(
        set("a", "Mira Voss", "2026-03-02", "left")
            .replace(
                "\"cleanReps\":8",
                "\"hit\":8,\"near\":0,\"miss\":0,\"cleanReps\":6,\"flags\":{\"heel-rise\":2}"));
    record.add(set("b", "Mira Voss", "2026-03-02", "right"));
    assertThat(advise(record, "2026-03-04", "").path("decision").asText()).isEqualTo("stay");
    record.add(
        "{\"schema\":\"shinline-record/1\",\"id\":\"r\",\"recordedAt\":\"2026-03-03T09:00:00Z\","
            + "\"kind\":\"review\",\"athlete\":\"Mira Voss\",\"of\":\"a\",\"flag\":\"heel-rise\","
            + "\"rep\":3,\"dismissed\":true}");
    assertThat(advise(record, "2026-03-04", "").path("decision").asText()).isEqualTo("next-target");
  }

  /** A torn last line, one id twice, and a line that lacks its reps: said, and the rest counts. */
  @Test
  @WritesWhatDoesNotFit
  void whatIsWrongWithLinesIsSaid() throws IOException {
    List<String> record = new ArrayList<>();
    record.add(set("a", "Mira Voss", "2026-03-02", "left"));
    record.add(set("a", "Mira Voss", "2026-03-03", "left"));
    record.add(set("c", "Mira Voss", "2026-03-03", "left").replace("\"reps\":8,\"cl", "\"cl"));
    record.add(set("b", "Mira Voss", "2026-03-02", "right"));
    Path place = folder.resolve("record.jsonl");
    Files.writeString(place, String.join("\n", record) + "\n{\"schema\":\"shinline-rec");
    JsonNode advice = run("2026-03-04", "");
    assertThat(advice.path("decision").asText()).isEqualTo("next-target");
    assertThat(shell.err())
        .contains("line 2: the id a is that of line 1")
        .contains("line 3: result.reps is lacking")
        .contains("line 5: the last line was cut off");
  }

  @Test
  void theCoachHasTheLastWord() throws IOException {
    write(
        List.of(
            set("a", "Mira Voss", "2026-03-02", "left"),
            set("b", "Mira Voss", "2026-03-02", "right")));
    assertThat(
            shell.run(
                "record",
                "overrule",
                "Mira Voss",
                "--record",
                folder.toString(),
                "--date",
                "2026-03-03",
                "--reason",
                "race on Saturday",
                "--instead",
                "two sets of 5"))
        .isZero();
    JsonNode advice = run("2026-03-04", "");
    assertThat(advice.path("decision").asText()).isEqualTo("next-target");
    assertThat(advice.at("/overruled/reason").asText()).isEqualTo("race on Saturday");
    assertThat(shell.out()).contains("race on Saturday", "two sets of 5");
    assertThat(run("2026-03-02", "").has("overruled")).isFalse();
  }

  @Test
  void wrongUseIsTwo() throws IOException {
    assertThat(shell.run("advise")).isEqualTo(2);
    assertThat(shell.run("advise", "Mira", "--as-of", "4.3.2026")).isEqualTo(2);
    assertThat(shell.err()).contains("year-month-day");
    Path bad = Files.writeString(folder.resolve("l.yaml"), "ladder: shinline-ladder/1\nrules: 3\n");
    assertThat(shell.run("advise", "Mira", "--ladder", bad.toString())).isEqualTo(2);
    assertThat(shell.err()).contains("l.yaml line 2, rules");
  }

  @Test
  void theRecordIsNeverAnOutput() throws IOException {
    write(List.of(set("a", "Mira Voss", "2026-03-02", "left")));
    String place = folder.resolve("record.jsonl").toString();
    assertThat(shell.run("advise", "Mira", "--record", folder.toString(), "--json", place))
        .isEqualTo(2);
    assertThat(Path.of(place)).content().contains("\"id\":\"a\"");
  }

  private JsonNode advise(List<String> record, String asOf, String ladder) throws IOException {
    write(record);
    return run(asOf, ladder);
  }

  private void write(List<String> record) throws IOException {
    Files.writeString(
        folder.resolve("record.jsonl"), record.isEmpty() ? "" : String.join("\n", record) + "\n");
  }

  private JsonNode run(String asOf, String ladder) throws IOException {
    Path json = folder.resolve("advice.json");
    List<String> args =
        new ArrayList<>(
            List.of(
                "advise",
                "Mira Voss",
                "--record",
                folder.toString(),
                "--as-of",
                asOf,
                "--json",
                json.toString()));
    if (!ladder.isEmpty()) {
      args.add("--ladder");
      args.add(Files.writeString(folder.resolve("ladder.yaml"), ladder).toString());
    }
    assertThat(shell.run(args.toArray(String[]::new))).as(shell.err()).isZero();
    assertThat(Schemas.complaints("advice.schema.json", Files.readString(json))).isEmpty();
    return new ObjectMapper().readTree(json.toFile());
  }

  private static String set(String id, String athlete, String date, String leg) {
    return ("{\"schema\":\"shinline-record/1\",\"id\":\"%s\",\"recordedAt\":\"2026-03-02T18:00:00Z\","
            + "\"kind\":\"set\",\"athlete\":\"%s\",\"date\":\"%s\",\"leg\":\"%s\","
            + "\"step\":\"floor-supported\",\"asked\":{\"sets\":1,\"reps\":8,\"target\":\"upright\"},"
            + "\"pain\":false,\"madeUp\":{\"kept\":[1,2]},\"result\":{\"reps\":8,\"cleanReps\":8}}")
        .formatted(id, athlete, date, leg);
  }

  private static String correction(String id, String of, String field) {
    return ("{\"schema\":\"shinline-record/1\",\"id\":\"%s\",\"recordedAt\":\"2026-03-03T18:00:00Z\","
            + "\"kind\":\"correction\",\"of\":\"%s\",%s}")
        .formatted(id, of, field);
  }

  /** The advice as the cases write it. */
  private static String text(JsonNode advice) {
    String decision = advice.path("decision").asText();
    if (advice.path("step").isNull()) {
      return decision;
    }
    JsonNode load = advice.path("load");
    String kind = load.path("kind").asText();
    String shown =
        load.isNull()
            ? "none"
            : load.path("value").asText()
                + load.path("unit").asText()
                + (kind.equals("each-hand") ? "" : ":" + kind);
    return String.join(
        " ",
        decision,
        advice.path("step").asText(),
        advice.path("target").asText(),
        advice.path("sets").asText() + "x" + advice.path("reps").asText(),
        advice.path("tempo").asText(),
        shown + (advice.has("vest") ? "+" + advice.at("/vest/value").asText() : ""));
  }
}
