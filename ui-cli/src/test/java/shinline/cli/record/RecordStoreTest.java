package shinline.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordStoreTest {
  private static final int UUID_LENGTH = 36;

  @TempDir Path folder;

  private static RecordStore store(Path folder) {
    return new RecordStore(new RecordFolder(folder), Clock.systemUTC());
  }

  private static String append(RecordStore store) {
    return store.append(
        RecordWriting.noted(
            Entry.CLEARANCE, new AthleteName("Mira Voss"), LocalDate.EPOCH, Map.of()));
  }

  @Test
  void aTornLineStaysAloneAndTheNextStartsItsOwn() throws IOException {
    RecordStore store = store(folder);
    append(store);
    Path file = folder.resolve("record.jsonl");
    String before = Files.readString(file);
    Files.writeString(file, before + "{\"schema\":\"shinline-re");
    append(store);
    RecordLines read = store.read();
    assertThat(read.lines()).hasSize(2);
    assertThat(read.problems()).hasSize(1);
    assertThat(read.problems().get(0).line()).isEqualTo(2);
    assertThat(file).content().startsWith(before);
  }

  /** A whole line without its line break was written; only the break was lost. */
  @Test
  void aLastLineWithoutItsBreakCounts() throws IOException {
    RecordStore store = store(folder);
    append(store);
    Path file = folder.resolve("record.jsonl");
    Files.writeString(file, Files.readString(file).strip());
    assertThat(store.read().lines()).hasSize(1);
    append(store);
    assertThat(store.read().lines()).hasSize(2);
    assertThat(store.read().problems()).isEmpty();
  }

  @Test
  void unknownFieldsAreKeptAndALaterFormatIsLeftAlone() throws IOException {
    Path file = folder.resolve("record.jsonl");
    String newer =
        "{\"schema\":\"shinline-record/9\",\"id\":\"x\",\"kind\":\"set\",\"athlete\":\"M\"}";
    Files.writeString(
        file,
        "{\"schema\":\"shinline-record/1\",\"id\":\"a\","
            + "\"recordedAt\":\"2026-03-02T18:00:00Z\",\"kind\":\"athlete\",\"athlete\":\"M\","
            + "\"shoe\":{\"eu\":41.50}}\n"
            + newer
            + "\n");
    RecordStore store = store(folder);
    append(store);
    RecordLines read = store.read();
    assertThat(read.lines().get(0).json().at("/shoe/eu").decimalValue()).hasToString("41.50");
    assertThat(read.problems().get(0).what()).contains("shinline-record/9");
    assertThat(file).content().contains(newer, "41.50");
  }

  /**
   * Two processes append as fast as they can and are killed after a few lines, again and again:
   * every line that was acknowledged is there, once, and no line that can be read is damaged. With
   * -Dshinline.appends=300 until that many lines were acknowledged.
   */
  @Test
  void twoProcessesKilledInTheMiddleLoseNoAcknowledgedLine() throws Exception {
    int wanted = Integer.getInteger("shinline.appends", 60);
    Random turns = new Random(1);
    List<Path> outputs = new ArrayList<>();
    Set<String> acknowledged = new HashSet<>();
    while (acknowledged.size() < wanted) {
      Map<Path, Process> writers = new LinkedHashMap<>();
      for (int i = 0; i < 2; i++) {
        Path output = folder.resolve("acknowledged-" + (outputs.size() + i));
        writers.put(output, writer(output));
      }
      outputs.addAll(writers.keySet());
      for (Map.Entry<Path, Process> one : writers.entrySet()) {
        int lines = 1 + turns.nextInt(20);
        while (!Files.exists(one.getKey()) || Files.readAllLines(one.getKey()).size() < lines) {
          assertThat(one.getValue().isAlive()).isTrue();
          Thread.sleep(5);
        }
        one.getValue().destroyForcibly().waitFor();
      }
      for (Path output : writers.keySet()) {
        // A last line without its end was not acknowledged in full.
        Files.readAllLines(output).stream()
            .filter(l -> l.length() == UUID_LENGTH)
            .forEach(acknowledged::add);
      }
    }
    List<String> ids = store(folder).read().lines().stream().map(RecordLine::id).toList();
    assertThat(ids).doesNotHaveDuplicates().containsAll(acknowledged);
  }

  private Process writer(Path output) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Writer.class.getName(),
            folder.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .redirectOutput(output.toFile())
        .start();
  }

  /** Appends until it is killed, and prints each id once it is acknowledged. */
  static final class Writer {
    public static void main(String[] args) {
      RecordStore store = store(Path.of(args[0]));
      for (int i = 0; i < 100_000; i++) {
        System.out.println(append(store));
        System.out.flush();
      }
    }
  }
}
