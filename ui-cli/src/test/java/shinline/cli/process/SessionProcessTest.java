package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.place.ProgramFolder;

/** Sessions as processes that really measure: one that is killed, and one that watches. */
class SessionProcessTest {
  @TempDir Path home;
  private Path folder;
  private Path sheet;
  private byte[] rep;
  private @Nullable Process running;

  @BeforeEach
  void clips() throws IOException {
    folder = Files.createDirectory(home.resolve("monday"));
    sheet = home.resolve("day.csv");
    Path one = home.resolve("one-rep.mp4");
    Films.oneRep(one);
    rep = Files.readAllBytes(one);
  }

  @AfterEach
  void end() throws InterruptedException {
    if (running != null) {
      running.destroyForcibly().waitFor();
    }
  }

  /** Another clip of the same pictures: an empty box at its end changes nothing but its digest. */
  private byte[] clip(int number) {
    return ByteBuffer.allocate(rep.length + 12)
        .put(rep)
        .putInt(12)
        .put(new byte[] {'f', 'r', 'e', 'e'})
        .putInt(number)
        .array();
  }

  private Process start(String... more) throws IOException {
    List<String> command =
        BadInputTest.program(
            "session",
            folder.toString(),
            "--sheet",
            sheet.toString(),
            "--record",
            home.resolve("record").toString());
    command.addAll(List.of(more));
    ProcessBuilder builder = new ProcessBuilder(command).directory(home.toFile());
    builder.environment().put(ProgramFolder.VARIABLE, home.resolve("cache").toString());
    running =
        builder.redirectErrorStream(true).redirectOutput(home.resolve("said").toFile()).start();
    return running;
  }

  private String said() throws IOException {
    return Files.readString(home.resolve("said"));
  }

  /** What was found so far, with the time each was written. */
  private Map<String, FileTime> findings() throws IOException {
    Path kept = folder.resolve("shinline-session/kept");
    Map<String, FileTime> found = new TreeMap<>();
    if (Files.isDirectory(kept)) {
      try (Stream<Path> files = Files.list(kept)) {
        for (Path file : files.filter(f -> f.toString().matches(".*[0-9a-f]{64}.json")).toList()) {
          found.put(file.getFileName().toString(), Files.getLastModifiedTime(file));
        }
      }
    }
    return found;
  }

  private List<String> lines() throws IOException {
    Path record = home.resolve("record/record.jsonl");
    return Files.exists(record) ? Files.readAllLines(record) : List.of();
  }

  @Test
  void aSessionThatIsKilledLosesNothingAndRepeatsNothing() throws Exception {
    for (int i = 1; i <= 3; i++) {
      Files.write(folder.resolve("a" + i + ".mp4"), clip(i));
    }
    Files.writeString(folder.resolve("b-broken.mp4"), "no clip at all");
    Films.still(folder.resolve("c-room.mp4"), Films.noise(96, 64), 30, Films.Index.FIRST);
    Files.writeString(
        sheet,
        "clip,athlete,leg,pain\na1.mp4,Mira Solberg,left,no\na2.mp4,Mira Solberg,right,no\n"
            + "a3.mp4,Tavi Okoro,left,no\nb-broken.mp4,Tavi Okoro,right,no\n"
            + "c-room.mp4,Edda Rask,left,no\n");
    Process first = start();
    while (first.isAlive() && lines().isEmpty()) {
      Thread.sleep(20);
    }
    assertThat(first.isAlive()).as("killed in the middle: " + said()).isTrue();
    first.destroyForcibly().waitFor();
    List<String> before = lines();
    Map<String, FileTime> found = findings();
    assertThat(before).hasSizeBetween(1, 2);
    assertThat(found).isNotEmpty();

    assertThat(start().waitFor()).as("the worst of its clips: " + said()).isEqualTo(3);
    assertThat(said())
        .contains("already recorded", "b-broken.mp4", "c-room.mp4")
        .doesNotContain("Exception", "\tat ");
    assertThat(lines()).hasSize(3).startsWith(before.toArray(String[]::new));
    assertThat(findings()).as("what was found is not found again").containsAllEntriesOf(found);
    List<String> all = lines();
    Map<String, FileTime> everything = findings();
    // Three sets and an empty room; what is no clip is looked at again each time.
    assertThat(everything).hasSize(4);

    assertThat(start().waitFor()).isEqualTo(3);
    assertThat(lines()).isEqualTo(all);
    assertThat(findings()).isEqualTo(everything);
    try (Stream<Path> left = Files.list(folder.resolve("shinline-session"))) {
      assertThat(left.map(f -> f.getFileName().toString()))
          .noneMatch(name -> name.matches("\\.shinline-[0-9a-f]{16}"));
    }
  }

  @Test
  void aClipThatIsCopiedInSlowlyIsMeasuredOnceItIsWhole() throws Exception {
    Files.writeString(sheet, "clip,athlete,leg,pain\nphone.mp4,Mira Solberg,right,no\n");
    Process watching = start("--watch");
    while (watching.isAlive() && !Files.exists(folder.resolve("shinline-session/board.html"))) {
      Thread.sleep(50);
    }
    Path clip = folder.resolve("phone.mp4");
    byte[] whole = clip(1);
    int parts = 12;
    for (int i = 0; i < parts; i++) {
      int from = (int) ((long) whole.length * i / parts);
      int to = (int) ((long) whole.length * (i + 1) / parts);
      Files.write(
          clip,
          java.util.Arrays.copyOfRange(whole, from, to),
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
      Thread.sleep(400);
    }
    while (watching.isAlive() && lines().isEmpty()) {
      Thread.sleep(50);
    }
    // The board is written after the record.
    Path board = folder.resolve("shinline-session/board.html");
    while (watching.isAlive() && !Files.readString(board).contains("Mira Solberg")) {
      Thread.sleep(50);
    }
    assertThat(watching.isAlive()).as(said()).isTrue();
    assertThat(lines()).hasSize(1);
    assertThat(findings()).as("measured once").hasSize(1);
    assertThat(said()).doesNotContain("cannot", "damaged", "Exception");
  }
}
