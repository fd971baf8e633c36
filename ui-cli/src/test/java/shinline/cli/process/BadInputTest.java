package shinline.cli.process;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.ResultSchema;
import shinline.cli.context.CommandContext;

/**
 * The command fed with what a coach's folder may hold: in this process, but as its own where the
 * process itself matters, or what the decoder says past the program.
 */
class BadInputTest {
  /** What the process left behind. */
  private record Ran(int code, String out, String err) {
    String all() {
      return out + err;
    }
  }

  @TempDir Path folder;

  /** In this process, with the checker that is shipped; names are those of the folder's files. */
  private Ran check(String... words) throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandContext context = PlainContext.of(out, err);
    String[] there =
        Stream.concat(Stream.of("check"), Stream.of(words).map(this::inFolder))
            .toArray(String[]::new);
    int code = Main.standard(context).run(there);
    return tidy(new Ran(code, out.toString(), err.toString()));
  }

  private String inFolder(String word) {
    boolean option = word.startsWith("-") || word.matches("[0-9.]+");
    return option ? word : folder.resolve(word).toString();
  }

  /** As a process of its own, in the folder. */
  private Ran checkAlone(String... words) throws IOException, InterruptedException {
    return run(command(words));
  }

  static List<String> command(String... words) {
    List<String> command = program("check");
    command.addAll(List.of(words));
    return command;
  }

  /** The program in a process of its own. */
  static List<String> program(String... words) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(words));
    return command;
  }

  private Ran run(List<String> command) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    int code =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start()
            .waitFor();
    Ran ran =
        new Ran(
            code,
            Files.readString(out, StandardCharsets.UTF_8),
            Files.readString(err, StandardCharsets.UTF_8));
    Files.delete(out);
    Files.delete(err);
    return tidy(ran);
  }

  /** Whatever happened: no trace, and no file half written. */
  private Ran tidy(Ran ran) throws IOException {
    assertThat(ran.all()).doesNotContain("Exception").doesNotContain("\tat ");
    try (var files = Files.walk(folder)) {
      assertThat(files.map(p -> p.getFileName().toString())).noneMatch(n -> n.endsWith(".part"));
    }
    return ran;
  }

  /** A clip that cannot be read: code 3, its name, what is wrong, what to do, and no file. */
  private void unreadable(String clip, String reason) throws IOException {
    unreadable(clip, reason, check(clip, "--json", "result.json"));
  }

  private void unreadable(String clip, String reason, Ran ran) {
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains(clip).containsIgnoringCase(reason).contains("What to do: ");
    assertThat(folder.resolve("result.json")).doesNotExist();
  }

  /** A clip without a set: code 4, its name, what is wrong, what to do, all of it in the JSON. */
  private Ran notMeasured(String clip, String kind) throws IOException {
    return notMeasured(clip, kind, check(asking(clip)));
  }

  private static String[] asking(String clip) {
    return new String[] {clip, "--json", "result.json", "--series", "series.csv"};
  }

  private Ran notMeasured(String clip, String kind, Ran ran) throws IOException {
    assertThat(ran.code()).isEqualTo(4);
    assertThat(ran.err()).contains(clip, "Not measured: ", "What to do: ");
    String json = Files.readString(folder.resolve("result.json"));
    assertThat(ResultSchema.complaints(json)).isEmpty();
    assertThat(new ObjectMapper().readTree(json).at("/notMeasured/kind").asText()).isEqualTo(kind);
    assertThat(Files.readAllLines(folder.resolve("series.csv"))).hasSize(1);
    return ran;
  }

  @Test
  void missingFile() throws Exception {
    unreadable("nowhere.mp4", "no such file");
  }

  @Test
  void folderInsteadOfClip() throws Exception {
    Files.createDirectory(folder.resolve("clips"));
    unreadable("clips", "folder");
  }

  @Test
  void emptyFile() throws Exception {
    Files.createFile(folder.resolve("empty.mp4"));
    unreadable("empty.mp4", "empty");
  }

  @Test
  void textNamedMp4() throws Exception {
    Files.writeString(folder.resolve("notes.mp4"), "Monday: 3 sets of 8\n".repeat(50));
    unreadable("notes.mp4", "text");
  }

  @Test
  void audioOnly() throws Exception {
    Films.sound(folder.resolve("voice.mp4"));
    unreadable("voice.mp4", "sound");
  }

  @Test
  void truncatedBeforeTheIndex() throws Exception {
    Path clip = folder.resolve("cut.mp4");
    Films.still(clip, Films.athlete(), 30, Films.Index.LAST);
    Films.cut(clip, 0.6);
    unreadable("cut.mp4", "cut off", checkAlone("cut.mp4", "--json", "result.json"));
  }

  @Test
  void truncatedAfterTheIndex() throws Exception {
    Path clip = folder.resolve("cut.mp4");
    Films.still(clip, Films.noise(320, 240), 60, Films.Index.FIRST);
    Films.cut(clip, 0.6);
    assertThat(notMeasured("cut.mp4", "nobody", checkAlone(asking("cut.mp4"))).err())
        .contains("ends early");
  }

  @Test
  void damagedMiddle() throws Exception {
    Path clip = folder.resolve("damaged.mp4");
    Films.still(clip, Films.noise(320, 240), 60, Films.Index.LAST);
    Films.damage(clip, 0.4, 0.5);
    assertThat(notMeasured("damaged.mp4", "nobody", checkAlone(asking("damaged.mp4"))).err())
        .contains("damaged");
  }

  @Test
  void nobodyInIt() throws Exception {
    Films.still(folder.resolve("noise.mp4"), Films.noise(320, 240), 30, Films.Index.LAST);
    notMeasured("noise.mp4", "nobody");
  }

  @Test
  void standingStill() throws Exception {
    Films.still(folder.resolve("still.mp4"), Films.athlete(), 60, Films.Index.LAST);
    notMeasured("still.mp4", "no-rep");
  }

  @Test
  void twoPeople() throws Exception {
    Films.still(folder.resolve("two.mp4"), Films.twoAthletes(), 30, Films.Index.LAST);
    assertThat(notMeasured("two.mp4", "no-rep").err()).contains("more than one person");
  }

  @Test
  void onePersonIsNotTwo() throws Exception {
    Films.still(folder.resolve("one.mp4"), Films.athlete(), 30, Films.Index.LAST);
    assertThat(notMeasured("one.mp4", "no-rep").err()).doesNotContain("more than one person");
  }

  @Test
  void fiveFrames() throws Exception {
    Films.still(folder.resolve("five.mp4"), Films.athlete(), 5, Films.Index.LAST);
    notMeasured("five.mp4", "too-short");
  }

  /** A whole set, but filmed from straight ahead. */
  @Test
  void filmedFromTheFront() throws Exception {
    try (InputStream film = BadInputTest.class.getResourceAsStream("front-view.mp4")) {
      Files.copy(requireNonNull(film), folder.resolve("front.mp4"));
    }
    Ran ran = notMeasured("front.mp4", "not-side-view", checkAlone(asking("front.mp4")));
    assertThat(ran.err()).contains("not a side view", "Film from the side");
    try (var files = Files.list(folder)) {
      assertThat(files.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("front.mp4", "front-shinline", "result.json", "series.csv");
    }
    String page = Files.readString(folder.resolve("front-shinline/report.html"));
    assertThat(page).contains("not a side view");
    assertThat(page.strip()).endsWith("</html>");
  }

  @Test
  void sixteenPixels() throws Exception {
    Mat picture = Films.noise(16, 16);
    Films.still(folder.resolve("tiny.mp4"), picture, 30, Films.Index.LAST);
    notMeasured("tiny.mp4", "nobody");
  }

  @Test
  void aBadClipDoesNotStopTheNext() throws Exception {
    Films.still(folder.resolve("tiny.mp4"), Films.noise(16, 16), 10, Films.Index.LAST);
    Ran ran = checkAlone("nowhere.mp4", "tiny.mp4", "--out", "results");
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains("nowhere.mp4", "tiny.mp4");
    assertThat(folder.resolve("results/tiny.json")).exists();
    assertThat(folder.resolve("results/nowhere.json")).doesNotExist();
  }

  @Test
  void outputInAPlaceThatCannotBe() throws Exception {
    Files.writeString(folder.resolve("file"), "mine");
    Ran ran = check("nowhere.mp4", "--out", "file/results");
    assertThat(ran.code()).isEqualTo(2);
    // Said before the clip is looked at.
    assertThat(ran.err()).contains(folder.resolve("file").toString()).doesNotContain("nowhere.mp4");
    assertThat(folder.resolve("file")).hasContent("mine");
  }

  @Test
  void outputThatMayNotBeWritten() throws Exception {
    Path locked = Files.createDirectory(folder.resolve("locked"));
    assumeTrue(
        locked.toFile().setWritable(false) && !Files.isWritable(locked),
        "this user may write everywhere");
    Ran ran = check("nowhere.mp4", "--out", "locked");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("locked", "may not be written");
  }

  @Test
  void fullDisk() throws Exception {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "this system has no device that is always full");
    Films.still(folder.resolve("tiny.mp4"), Films.noise(16, 16), 10, Films.Index.LAST);
    Ran ran = checkAlone("tiny.mp4", "--json", full.toString());
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err()).contains("cannot write /dev/full").containsIgnoringCase("no space");
  }

  /** Its own first pictures are fine; then the clock jumps. */
  @Test
  void timesTwoMinutesApart() throws Exception {
    Films.at(folder.resolve("gap.mp4"), Films.noise(64, 48), 0, 0.1, 0.2, 120, 120.1);
    unreadable("gap.mp4", "from one picture to the next");
    Ran ran = check("gap.mp4", "--limit-gap", "121");
    assertThat(ran.code()).isEqualTo(4);
  }

  @Test
  void timesTwoHundredHoursApart() throws Exception {
    Path clip = folder.resolve("hours.mkv");
    Films.at(clip, Films.noise(64, 48), 0, 0.1, 0.2, 720_000, 720_000.1);
    unreadable("hours.mkv", "12000 minutes");
    Ran ran = check("hours.mkv", "--limit-length", "1440");
    assertThat(ran.code()).isEqualTo(3);
  }

  @Test
  void moreDotsThanAllowed() throws Exception {
    Films.still(folder.resolve("wide.mp4"), Films.noise(640, 480), 5, Films.Index.LAST);
    Ran ran = check("wide.mp4", "--limit-pixels", "0.2");
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains("640 x 480", "--limit-pixels");
  }

  /** What an earlier run wrote goes when the clip has broken since; what others wrote stays. */
  @Test
  void aClipThatBrokeSinceKeepsNoOldResult() throws Exception {
    Path clip = folder.resolve("set.mp4");
    Films.still(clip, Films.noise(16, 16), 10, Films.Index.LAST);
    String[] asked = {
      "set.mp4", "--out", "results", "--json", "r.json", "--series", "s.csv", "--csv", "c.csv"
    };
    assertThat(check(asked).code()).isEqualTo(4);
    Path results = folder.resolve("results");
    Files.writeString(results.resolve("notes.json"), "mine");
    assertThat(results.resolve("set.json")).exists();
    Path aside = folder.resolve("set.aside");
    Files.move(clip, aside);
    Ran missing = check(asked);
    assertThat(missing.code()).isEqualTo(3);
    assertThat(missing.err()).contains("set.json is of an earlier run");
    assertThat(results.resolve("set.json")).exists();
    Files.move(aside, clip);
    Films.cut(clip, 0.5);
    assertThat(check(asked).code()).isEqualTo(3);
    try (var files = Files.list(results)) {
      assertThat(files.map(p -> p.getFileName().toString())).containsOnly("notes.json");
    }
    for (String named : List.of("r.json", "s.csv", "c.csv")) {
      assertThat(folder.resolve(named)).doesNotExist();
    }
  }

  @Test
  void aFileThatIsNoResultIsNotTakenAway() throws Exception {
    Files.writeString(folder.resolve("list.json"), "[\"mine\"]");
    Files.createFile(folder.resolve("empty.mp4"));
    Ran ran = check("empty.mp4", "--json", "list.json");
    assertThat(ran.code()).isEqualTo(3);
    assertThat(folder.resolve("list.json")).hasContent("[\"mine\"]");
    assertThat(ran.err()).contains("list.json is of an earlier run");
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "\u00e9"})
  void nameOf235Bytes(String letter) throws Exception {
    String name = letter.repeat(231 / letter.getBytes(StandardCharsets.UTF_8).length) + ".mp4";
    Films.still(folder.resolve(name), Films.noise(16, 16), 10, Films.Index.LAST);
    assertThat(check(name, "--out", "results").code()).isEqualTo(4);
    try (var files = Files.list(folder.resolve("results"))) {
      assertThat(files.filter(p -> p.toString().endsWith(".json"))).hasSize(1);
    }
    assertThat(check(name).code()).isEqualTo(4);
  }

  @Test
  void ordersToTheTerminalInAName() throws Exception {
    String name = "a\u001b[2Jb\rc\nd.mp4";
    Films.still(folder.resolve(name), Films.noise(16, 16), 10, Films.Index.LAST);
    Ran ran = checkAlone(name, "--out", "results");
    assertThat(ran.code()).isEqualTo(4);
    assertThat(ran.all()).doesNotContain("\u001b").doesNotContain("\r").contains("b\ufffdc\ufffdd");
  }

  /** A folder from an old card may have names in another encoding; the shell hands them on. */
  @Test
  void aNameThatIsNotUtf8() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
    List<String> command = new ArrayList<>(List.of("/bin/sh", "-c"));
    command.add(
        "printf film >\"$(printf 'caf\\351.mp4')\"; exec '"
            + String.join("' '", command("caf"))
            + "'\"$(printf '\\351.mp4')\"");
    Ran ran = run(command);
    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).contains("Rename the clip");
  }

  @Test
  void twoClipsOfOneName() throws Exception {
    Films.still(folder.resolve("a.mp4"), Films.noise(16, 16), 10, Films.Index.LAST);
    Files.copy(folder.resolve("a.mp4"), folder.resolve("a.mov"));
    assertThat(check("a.mp4", "a.mov", "--out", "results").code()).isEqualTo(4);
    assertThat(folder.resolve("results/a-mp4.json")).exists();
    assertThat(folder.resolve("results/a-mov.json")).exists();
    // One after the other is the same as both at once.
    assertThat(check("a.mov").code()).isEqualTo(4);
    assertThat(folder.resolve("a-mov-shinline/report.html")).exists();
  }

  @Test
  void pipeInsteadOfClip() throws Exception {
    Path pipe = folder.resolve("pipe.mp4");
    assumeTrue(
        Files.isExecutable(Path.of("/usr/bin/mkfifo"))
            && new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0,
        "no pipes on this system");
    // Nobody ever writes into it.
    unreadable("pipe.mp4", "pipe");
  }

  @Test
  void playlistThatNamesAClip() throws Exception {
    Films.still(folder.resolve("tiny.mp4"), Films.noise(16, 16), 10, Films.Index.LAST);
    Files.writeString(folder.resolve("list.mp4"), "ffconcat version 1.0\nfile tiny.mp4\n");
    unreadable("list.mp4", "text");
  }
}
