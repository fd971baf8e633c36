package shinline.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Schemas;

class RecordCommandTest {
  private static final ObjectMapper EXACT =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  @TempDir Path folder;

  private final Shell shell = new Shell();

  private int record(String... words) {
    List<String> args = new ArrayList<>(List.of("record"));
    args.addAll(Arrays.asList(words));
    args.addAll(List.of("--record", folder.resolve("r").toString()));
    return shell.run(args.toArray(String[]::new));
  }

  private List<String> lines() throws IOException {
    return Files.readAllLines(file());
  }

  private Path file() {
    return folder.resolve("r").resolve("record.jsonl");
  }

  private JsonNode last() throws IOException {
    List<String> lines = lines();
    String line = lines.get(lines.size() - 1);
    assertThat(Schemas.complaints("record.schema.json", line)).isEmpty();
    return EXACT.readTree(line);
  }

  private String add(String athlete, String... more) throws IOException {
    List<String> words =
        new ArrayList<>(
            List.of(
                "add",
                athlete,
                "--date",
                "2026-03-02",
                "--leg",
                "left",
                "--step",
                "bench-dumbbells",
                "--asked-reps",
                "8",
                "--target",
                "upright",
                "--reps",
                "8",
                "--clean",
                "7"));
    words.addAll(Arrays.asList(more));
    assertThat(record(words.toArray(String[]::new))).as(shell.err()).isZero();
    return last().path("id").asText();
  }

  @Test
  void everyFieldOfASetCanBeWritten() throws IOException {
    add(
        "Mira Voss",
        ("--set B2 --purpose test --asked-sets 3 --tempo 3-0-X --depth full --load 22.5kg"
                + " --load-kind each-hand --vest 22lb --pain no --note calm --source clip"
                + " --hit 6 --near 1 --miss 0 --unclear 1 --flag heel-rise=1 --flag wobble=2"
                + " --at-bottom shinDeg=31.5/2/1.2 --lowering-s 3.1 --hold-s 0.4 --drive-speed 0.61"
                + " --bar-speed 0.55 --clip-sha256 ab12 --measured-by 0.1.0")
            .split(" "));
    JsonNode line = last();
    assertThat(line.path("set").asText()).isEqualTo("B2");
    assertThat(line.path("asked").toString())
        .isEqualTo(
            "{\"sets\":3,\"reps\":8,\"target\":\"upright\",\"tempo\":\"3-0-X\",\"depth\":\"full\"}");
    assertThat(line.at("/load/value").asText()).isEqualTo("22.5");
    assertThat(line.at("/load/vest").decimalValue()).isEqualByComparingTo("9.97903214");
    assertThat(line.at("/load").has("vestUnit")).isFalse();
    assertThat(line.path("pain").isBoolean()).isTrue();
    assertThat(line.at("/result/flags/wobble").asInt()).isEqualTo(2);
    assertThat(line.at("/result/atBottom/shinDeg/plusMinusWithin").asDouble()).isEqualTo(1.2);
    assertThat(line.at("/result/barSpeedMps").asDouble()).isEqualTo(0.55);
  }

  @Test
  void theOtherKinds() throws IOException {
    String set = add("Mira Voss");
    assertThat(
            record(
                "athlete",
                "Mira Voss",
                "--birth-year",
                "2001",
                "--mass",
                "160lb",
                "--height",
                "5ft10in",
                "--consent",
                "yes",
                "--start-step",
                "bench-supported",
                "--note",
                "says \"fine\""))
        .isZero();
    assertThat(last().path("massKg").decimalValue()).isEqualByComparingTo("72.5747792");
    assertThat(last().path("heightCm").decimalValue()).isEqualByComparingTo("177.8");
    assertThat(last().path("note").asText()).isEqualTo("says \"fine\"");
    assertThat(record("gate", "Mira Voss", "--date", "2026-03-01")).isZero();
    assertThat(last().path("gate").asText()).isEqualTo("hip-flexor-range");
    assertThat(record("clear", "Mira Voss")).isZero();
    assertThat(last().path("kind").asText()).isEqualTo("clearance");
    assertThat(record("release", "Mira Voss")).isZero();
    assertThat(last().path("release").asText()).isEqualTo("short-range");
    assertThat(record("review", set.substring(0, 8), "--flag", "heel-rise", "--rep", "2")).isZero();
    assertThat(last().path("of").asText()).isEqualTo(set);
    assertThat(record("review", set, "--flag", "slouch")).isEqualTo(2);
    assertThat(record("list")).isZero();
    assertThat(shell.out()).isEqualTo("Mira Voss: 6 lines" + System.lineSeparator());
  }

  @Test
  void aCorrectionKeepsTheRestOfAGroup() throws IOException {
    String set = add("Mira Voss", "--load", "20kg", "--load-kind", "each-hand");
    assertThat(record("correct", set, "--clean", "8", "--pain", "no", "--field", "weather=wet"))
        .isZero();
    JsonNode line = last();
    assertThat(line.path("result").toString()).isEqualTo("{\"reps\":8,\"cleanReps\":8}");
    assertThat(line.path("weather").asText()).isEqualTo("wet");
    assertThat(lines()).hasSize(2);
    assertThat(record("show", set)).isZero();
    assertThat(shell.out()).contains("\"cleanReps\":8", "pain: false", "weather: wet");
    assertThat(record("correct", set, "--clean", "9")).isEqualTo(2);
    assertThat(record("correct", set)).isEqualTo(2);
    assertThat(record("correct", "nobody", "--clean", "8")).isEqualTo(2);
    assertThat(lines()).hasSize(2);
  }

  @Test
  void aClipOnRecordIsNotRecordedAgain() throws IOException {
    String first = add("Mira Voss", "--clip-sha256", "AB12");
    add(" mira voss", "--clip-sha256", "ab12");
    assertThat(shell.err()).contains("line " + first);
    assertThat(lines()).hasSize(1);
    add("Jon Rask", "--clip-sha256", "ab12");
    assertThat(lines()).hasSize(2);
  }

  @Test
  void minorsAreNotReleased() throws IOException {
    assertThat(record("athlete", "Mira Voss", "--birth-year", "2012")).isZero();
    assertThat(record("release", "Mira Voss", "--date", "2026-03-01")).isEqualTo(2);
    assertThat(lines()).hasSize(1);
  }

  @Test
  void whatIsWrongIsNotWritten() {
    assertThat(record("add", "Mira Voss", "--leg", "left")).isEqualTo(2);
    assertThat(shell.err()).contains("nothing was written: step");
    assertThat(record("add", " ", "--leg", "left")).isEqualTo(2);
    assertThat(record("add", "Mira", "--load", "twenty")).isEqualTo(2);
    assertThat(record("add", "Mira", "--date", "02.03.2026")).isEqualTo(2);
    assertThat(record("add", "Mira", "--reps", "many")).isEqualTo(2);
    assertThat(record("athlete", "Mira")).isEqualTo(2);
    assertThat(record("athlete", "Mira", "--start-step", "moon")).isEqualTo(2);
    assertThat(shell.run("record")).isEqualTo(2);
    assertThat(file()).doesNotExist();
  }

  @Test
  void exportForSpreadsheets() throws IOException {
    add("Mira Voss", "--load", "22.5kg", "--load-kind", "each-hand", "--note", "=1+1");
    Path csv = folder.resolve("sets.csv");
    assertThat(record("export", csv.toString(), "--decimal", "comma")).isZero();
    List<String> rows = Files.readAllLines(csv);
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0)).startsWith("id;athlete;date;leg;step");
    assertThat(rows.get(1)).contains(";Mira Voss;2026-03-02;left;", ";22,5;kg;", ";'=1+1;");
    assertThat(record("export", csv.toString())).isZero();
    assertThat(Files.readAllLines(csv).get(1)).contains(",22.5,kg,");
  }

  @Test
  void removalTakesAllOfAnAthleteAndNothingElse() throws IOException {
    String hers = add("Mira Voss");
    String his = add("Jon Rask");
    String moved = add("mira voss");
    assertThat(record("correct", moved, "--athlete", "Jon Rask")).isZero();
    assertThat(record("correct", hers, "--clean", "8")).isZero();
    assertThat(record("review", hers, "--flag", "heel-rise")).isZero();
    Files.writeString(
        file(), "{\"athlete\":\"Mira Voss\",\"no", java.nio.file.StandardOpenOption.APPEND);
    Path page = Files.writeString(folder.resolve("mira.html"), "page");
    Path changed = Files.writeString(folder.resolve("mira-2.html"), "page");
    WrittenFiles written = new WrittenFiles(new RecordFolder(folder.resolve("r")));
    written.note(new AthleteName("Mira Voss"), page);
    written.note(new AthleteName("Mira Voss"), changed);
    Files.writeString(changed, "page, and a note of the coach");

    assertThat(record("remove", "Mira Voss")).isEqualTo(2);
    assertThat(shell.err()).contains("--yes");
    assertThat(record("remove", "Mira Voss", "--yes")).isZero();

    assertThat(page).doesNotExist();
    assertThat(changed).exists();
    assertThat(Files.readString(file()).toLowerCase(java.util.Locale.ROOT))
        .doesNotContain("mira", hers);
    assertThat(record("list", "Jon Rask")).isZero();
    assertThat(shell.out()).contains(his.substring(0, 8), moved.substring(0, 8));
    assertThat(Files.list(folder.resolve("r")).map(p -> p.getFileName().toString()))
        .containsExactlyInAnyOrder("record.jsonl", "record.lock", "written.jsonl");
  }
}
