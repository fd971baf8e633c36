package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What Java makes of written-down classes that are not this program's, as the scripts ask it to.
 */
class SharedClassesTest {
  @TempDir Path folder;

  @Test
  void thoseOfAnotherPlaceAreLeftAlone() throws Exception {
    Path archive = folder.resolve("other.jsa");
    String jar =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(path -> path.endsWith(".jar"))
            .findFirst()
            .orElseThrow();
    java("-XX:+UseSerialGC", "-Xshare:dump", "-XX:SharedArchiveFile=" + archive, "-cp", jar);
    assertThat(archive).exists();
    assertThat(version(archive)).isEqualTo(version());
  }

  @Test
  void aFileThatHoldsNoneIsLeftAlone() throws Exception {
    byte[] noise = new byte[100_000];
    new Random(5).nextBytes(noise);
    assertThat(version(Files.write(folder.resolve("noise.jsa"), noise))).isEqualTo(version());
    assertThat(version(Files.createFile(folder.resolve("empty.jsa")))).isEqualTo(version());
  }

  private String version(Path... archive) throws IOException, InterruptedException {
    List<String> how = new ArrayList<>(List.of("-XX:+UseSerialGC", "-Xshare:auto"));
    for (Path file : archive) {
      how.addAll(List.of("-XX:SharedArchiveFile=" + file, "-Xlog:disable"));
    }
    how.addAll(
        List.of("-cp", System.getProperty("java.class.path"), "shinline.cli.Main", "--version"));
    return java(how.toArray(String[]::new));
  }

  private String java(String... how) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(how));
    Path said = Files.createTempFile(folder, "said", ".txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("has ended").isTrue();
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.exitValue()).isZero();
    return Files.readString(said, StandardCharsets.UTF_8);
  }
}
