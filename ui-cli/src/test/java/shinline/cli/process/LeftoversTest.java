package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.place.ProgramFolder;

/** The folders a run works in: missing, full, and after a run that was called off or killed. */
class LeftoversTest {
  private static final int FRAMES_OF_A_LONG_WORK = 600;

  @TempDir Path folder;
  private Path cache;

  @BeforeEach
  void clips() throws IOException {
    cache = folder.resolve("cache");
    Films.still(folder.resolve("tiny.mp4"), Films.noise(16, 16), 10, Films.Index.LAST);
  }

  private ProcessBuilder builder(List<String> command) {
    ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
    builder.environment().put(ProgramFolder.VARIABLE, cache.toString());
    return builder.redirectErrorStream(true).redirectOutput(folder.resolve("said").toFile());
  }

  private int run(List<String> command) throws IOException, InterruptedException {
    int code = builder(command).start().waitFor();
    assertThat(folder.resolve("said")).content().doesNotContain("Exception", "\tat ");
    return code;
  }

  /** Works for long enough to be stopped in the middle, in both its folders. */
  private Process inTheMiddle() throws Exception {
    Path clip = folder.resolve("long.mp4");
    Films.still(clip, Films.athlete(), FRAMES_OF_A_LONG_WORK, Films.Index.LAST);
    Process process = builder(BadInputTest.command("long.mp4", "--out", "results")).start();
    while (process.isAlive() && (left("results").isEmpty() || left("cache/runs").isEmpty())) {
      Thread.sleep(20);
    }
    assertThat(process.isAlive()).as("stopped in the middle").isTrue();
    return process;
  }

  /** Folders of runs. */
  private List<Path> left(String place) throws IOException {
    if (!Files.isDirectory(folder.resolve(place))) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder.resolve(place))) {
      return files
          .filter(Files::isDirectory)
          .filter(f -> f.getFileName().toString().matches("\\.shinline-[0-9a-f]+|run-.*"))
          .toList();
    }
  }

  @Test
  void aKilledRunIsTidiedUpByTheNext() throws Exception {
    inTheMiddle().destroyForcibly().waitFor();
    assertThat(left("results")).isNotEmpty();
    assertThat(left("cache/runs")).isNotEmpty();
    assertThat(run(BadInputTest.command("tiny.mp4", "--out", "results"))).isEqualTo(4);
    assertThat(left("results")).isEmpty();
    assertThat(left("cache/runs")).isEmpty();
  }

  @Test
  void aRunThatIsCalledOffTidiesUpItself() throws Exception {
    Process process = inTheMiddle();
    process.destroy();
    process.waitFor();
    assertThat(left("results")).isEmpty();
    assertThat(left("cache/runs")).isEmpty();
  }

  @Test
  void noTemporaryFolder() throws Exception {
    List<String> command = BadInputTest.command("tiny.mp4", "--no-report");
    command.add(1, "-Djava.io.tmpdir=" + folder.resolve("nowhere"));
    assertThat(run(command)).isEqualTo(2);
    assertThat(folder.resolve("said")).content().contains("temporary folder", "nowhere");
  }

  @Test
  void noPlaceToUnpack() throws Exception {
    Files.writeString(cache, "a file in its place");
    assertThat(run(BadInputTest.command("tiny.mp4"))).isEqualTo(2);
    assertThat(folder.resolve("said")).content().contains("cache", ProgramFolder.VARIABLE);
  }

  @Test
  void tooLittleRoomToUnpack() throws Exception {
    Files.createDirectory(cache);
    List<String> inSmallRoom =
        List.of(
            "unshare",
            "-m",
            "sh",
            "-c",
            "mount -t tmpfs -o size=4m none \"$0\" && exec \"$@\"",
            cache.toString());
    List<String> probe = new ArrayList<>(inSmallRoom);
    probe.add("true");
    try {
      assumeTrue(builder(probe).start().waitFor() == 0, "nothing may be mounted here");
    } catch (IOException e) {
      assumeTrue(false, "nothing can be mounted here");
    }
    List<String> command = new ArrayList<>(inSmallRoom);
    command.addAll(BadInputTest.command("tiny.mp4"));
    assertThat(run(command)).isEqualTo(2);
    assertThat(folder.resolve("said")).content().contains("MB are free", ProgramFolder.VARIABLE);
  }

  /** Those of OpenCV need GTK, without which no clip could be measured. */
  @Test
  void nothingForWindowsIsLoaded() throws Exception {
    Films.still(folder.resolve("still.mp4"), Films.athlete(), 30, Films.Index.LAST);
    assertThat(run(BadInputTest.command("still.mp4", "--no-report"))).isEqualTo(4);
    try (Stream<Path> unpacked = Files.walk(cache.resolve("libraries"))) {
      assertThat(unpacked.map(p -> p.getFileName().toString()))
          .as("the optical flow's, and not the windows'")
          .anyMatch(name -> name.contains("jniopencv_video."))
          .noneMatch(name -> name.contains("jniopencv_highgui."));
    }
  }

  @Test
  void tidyTakesAwayWhatWasUnpacked() throws Exception {
    assertThat(run(BadInputTest.command("tiny.mp4", "--out", "results"))).isEqualTo(4);
    assertThat(cache.resolve("libraries")).isNotEmptyDirectory();
    List<String> tidy = BadInputTest.command();
    tidy.set(tidy.size() - 1, "tidy");
    assertThat(run(tidy)).isZero();
    assertThat(cache).doesNotExist();
    assertThat(folder.resolve("results/tiny.json")).exists();
  }
}
