package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.record.Entry;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordLines;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordWriting;

/** A record on a disk that is full, in a file that may not grow, or that is read-only. */
class RecordTroubleTest {
  private static final int UUID_LENGTH = 36;

  @TempDir Path folder;

  private Path record() {
    return folder.resolve("record");
  }

  private int run(List<String> command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said").toFile())
        .start()
        .waitFor();
  }

  private List<String> said() throws IOException {
    return Files.readAllLines(folder.resolve("said"));
  }

  /** A shell that prepares the record's folder and then runs what follows; skipped without one. */
  private List<String> prepared(String script, String... wrapper) throws Exception {
    List<String> shell = new ArrayList<>(List.of(wrapper));
    shell.addAll(List.of("sh", "-c", script, record().toString()));
    List<String> probe = new ArrayList<>(shell);
    probe.add("true");
    try {
      assumeTrue(run(probe) == 0, "this cannot be prepared here");
    } catch (IOException e) {
      assumeTrue(false, "this cannot be prepared here");
    }
    return shell;
  }

  private static List<String> writer(Path record) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        // No file of its own, which the limit would stop.
        "-XX:-UsePerfData",
        "-cp",
        System.getProperty("java.class.path"),
        Writer.class.getName(),
        record.toString());
  }

  /** Appends until that fails; prints the id of each line once it is acknowledged, and why. */
  static final class Writer {
    public static void main(String[] args) {
      RecordStore store = new RecordStore(new RecordFolder(Path.of(args[0])), Clock.systemUTC());
      try {
        for (int i = 0; i < 10_000; i++) {
          System.out.println(
              store.append(
                  RecordWriting.noted(
                      Entry.CLEARANCE,
                      new AthleteName("Mira Voss"),
                      LocalDate.EPOCH,
                      // Lengths of all kinds, so that the room runs out within a line.
                      Map.of("note", "x".repeat(37 * i % 500)))));
        }
      } catch (CoachException refused) {
        System.out.println(refused.getMessage());
        System.exit(refused.exitCode().number());
      }
    }
  }

  private void nothingIsLost(Path lines) throws IOException {
    List<String> acknowledged = said().stream().filter(l -> l.length() == UUID_LENGTH).toList();
    assertThat(acknowledged).hasSizeGreaterThan(10);
    RecordLines read =
        new RecordStore(new RecordFolder(lines.resolveSibling("")), Clock.systemUTC()).read();
    assertThat(read.problems()).as("nothing is half-written").isEmpty();
    assertThat(read.lines().stream().map(RecordLine::id)).containsExactlyElementsOf(acknowledged);
    assertThat(lines).content().endsWith("\n");
    assertThat(said().get(said().size() - 1))
        .contains("record.jsonl", "Nothing was added; the record is as it was");
  }

  @Test
  void aFullDiskInMidAppendLosesNothing() throws Exception {
    Files.createDirectories(record());
    Path kept = Files.createDirectories(folder.resolve("kept"));
    List<String> command =
        new ArrayList<>(
            prepared(
                "mount -t tmpfs -o size=64k none \"$0\" || exit 99; \"$@\"; code=$?; cp \"$0\"/* "
                    + kept
                    + " 2>/dev/null; exit $code",
                "unshare",
                "-m"));
    command.addAll(writer(record()));
    assertThat(run(command)).as(said().toString()).isEqualTo(2);
    nothingIsLost(kept.resolve("record.jsonl"));
  }

  @Test
  void aFileThatMayNotGrowLosesNothing() throws Exception {
    List<String> command = new ArrayList<>(prepared("ulimit -f 20 || exit 99; exec \"$@\""));
    // What is said goes through a pipe, which the limit leaves alone.
    command.addAll(writer(record()));
    assertThat(run(command)).as(said().toString()).isEqualTo(2);
    nothingIsLost(record().resolve("record.jsonl"));
    // With room again it goes on where it was.
    RecordStore store = new RecordStore(new RecordFolder(record()), Clock.systemUTC());
    int before = store.read().lines().size();
    store.append(
        RecordWriting.noted(
            Entry.CLEARANCE, new AthleteName("Mira Voss"), LocalDate.EPOCH, Map.of()));
    assertThat(store.read().lines()).hasSize(before + 1);
  }

  @Test
  void aReadOnlyRecordIsReadAndSaysWhyNothingIsAdded() throws Exception {
    Files.createDirectories(record());
    List<String> add =
        BadInputTest.program(
            ("record add Mira --record " + record() + " --leg left --step bench-bodyweight")
                .concat(" --asked-reps 8 --target upright --reps 8 --clean 8 --date 2026-03-02")
                .split(" "));
    assertThat(run(add)).as(said().toString()).isZero();
    String before = Files.readString(record().resolve("record.jsonl"));
    List<String> readOnly =
        prepared(
            "mount --bind \"$0\" \"$0\" && mount -o remount,ro,bind \"$0\" || exit 99; exec \"$@\"",
            "unshare",
            "-m");
    List<String> command = new ArrayList<>(readOnly);
    command.addAll(add);
    assertThat(run(command)).isEqualTo(2);
    assertThat(String.join("\n", said()))
        .contains("cannot write", "record.jsonl", "Nothing was added")
        .doesNotContain("Exception", "\tat ");
    command = new ArrayList<>(readOnly);
    command.addAll(BadInputTest.program("advise", "Mira", "--record", record().toString()));
    assertThat(run(command)).as("what is there can be read: " + said()).isZero();
    // By eye alone, so that no clip has to be measured.
    Path monday = Files.createDirectories(folder.resolve("monday"));
    Path sheet =
        Files.writeString(
            folder.resolve("day.csv"),
            "clip,athlete,leg,done_reps,clean_reps\n,Mira,right,8,8\n,Mira,left,8,7\n");
    command = new ArrayList<>(readOnly);
    command.addAll(
        BadInputTest.program(
            "session",
            monday.toString(),
            "--sheet",
            sheet.toString(),
            "--record",
            record().toString()));
    assertThat(run(command)).isEqualTo(2);
    assertThat(String.join("\n", said()))
        .contains("row 2", "row 3", "cannot write", "Make room or choose a folder")
        .doesNotContain("Exception", "\tat ");
    assertThat(monday.resolve("shinline-session/team.html")).exists();
    assertThat(record().resolve("record.jsonl")).hasContent(before);
  }
}
