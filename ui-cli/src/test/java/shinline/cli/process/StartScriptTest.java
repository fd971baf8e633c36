package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script with tools that only pretend: what it does about builds that died. */
class StartScriptTest {
  /** What the script uses besides its own tools; flock is left out on purpose. */
  private static final List<String> TOOLS =
      List.of(
          "dirname",
          "readlink",
          "sed",
          "head",
          "find",
          "mkdir",
          "rm",
          "mv",
          "touch",
          "sleep",
          "cat",
          "locale",
          "chmod");

  @TempDir Path folder;
  private Path home;
  private Path bin;

  @BeforeEach
  void aProjectThatWasNeverBuilt() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
    home = Files.createDirectories(folder.resolve("a home"));
    bin = Files.createDirectories(folder.resolve("bin"));
    Files.copy(Path.of("..", "shinline"), home.resolve("shinline"));
    Files.createFile(home.resolve("pom.xml"));
    for (String module : List.of(".mvn", "vision", "metrics", "ui-cli/target")) {
      Files.createDirectories(home.resolve(module));
    }
    for (String tool : TOOLS) {
      for (String place : List.of("/usr/bin", "/bin")) {
        Path there = Path.of(place, tool);
        if (Files.exists(there) && !Files.exists(bin.resolve(tool))) {
          tool(tool, "exec " + there + " \"$@\"");
        }
      }
    }
    tool(
        "java",
        "case $1 in -version) echo 'openjdk version \"17.0.1\"' >&2 ;; *) echo started ;; esac");
    tool("javac", "exit 0");
    tool("npm", "exit 0");
    tool(
        "mvn",
        "case $1 in -v) echo 'Apache Maven 3.8.7' ;; *) echo built >ui-cli/target/shinline.jar ;; esac");
  }

  private void tool(String name, String does) throws IOException {
    tool(bin.resolve(name), does);
  }

  private static void tool(Path at, String does) throws IOException {
    Path file = Files.writeString(at, "#!/bin/sh\n" + does + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** In a file beside it, which is sooner read than Java is started. */
  @Test
  void whatJavaTellsOfItsVersion() throws Exception {
    Files.delete(bin.resolve("java"));
    Path jdk = Files.createDirectories(folder.resolve("a jdk/bin")).getParent();
    Files.createSymbolicLink(bin.resolve("java"), jdk.resolve("bin/java"));
    tool(jdk.resolve("bin/java"), "case $1 in -version) echo asked ;; *) echo started ;; esac");
    Files.writeString(jdk.resolve("release"), "IMPLEMENTOR=\"any\"\nJAVA_VERSION=\"21.0.2\"\n");
    assertThat(runs(0)).contains("started").doesNotContain("asked");
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
    assertThat(runs(1)).contains("Java 1 is too old").doesNotContain("started");
    Files.writeString(jdk.resolve("release"), "tells nothing\n");
    assertThat(runs(1)).contains("Java of unknown age is too old");
  }

  private String runs() throws IOException, InterruptedException {
    return runs(0);
  }

  private String runs(int code) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder("/bin/sh", home.resolve("shinline").toString(), "--version");
    builder.environment().put("PATH", bin.toString());
    builder.environment().remove("JAVA_HOME");
    Path said = folder.resolve("said");
    Process process = builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).as("still waiting").isTrue();
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.exitValue()).isEqualTo(code);
    return Files.readString(said);
  }

  private void builds() throws IOException, InterruptedException {
    assertThat(runs()).contains("building (once", "started");
    assertThat(home.resolve(".build-turn")).doesNotExist();
  }

  /** Where the build could not write them down, Java is not told of a file that is not there. */
  @Test
  void classesAreSharedWhereTheBuildWroteThemDown() throws Exception {
    tool(
        "java",
        "case $1 in -version) echo 'openjdk version \"17.0.1\"' >&2 ;; *) echo started \"$@\" ;; esac");
    assertThat(runs()).contains("started").doesNotContain("SharedArchiveFile");
    Path shared = Files.createFile(home.resolve("ui-cli/target/shared-classes.jsa"));
    assertThat(runs())
        .contains("-XX:SharedArchiveFile=" + shared.toRealPath() + " -Xlog:disable -jar");
  }

  /** Process 1 is always there; an older script waited for it for ever. */
  @Test
  void aLockWithTheNumberOfALivingProcess() throws Exception {
    Files.createDirectory(home.resolve(".build-lock"));
    Files.writeString(home.resolve(".build-lock/pid"), "1\n");
    builds();
  }

  @Test
  void aLockThatNobodyTouchesAnyMore() throws Exception {
    Path left = Files.createDirectory(home.resolve(".build-turn"));
    Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofMinutes(3))));
    builds();
  }

  @Test
  void theSystemsLockIsFreeOnceItsOwnerIsDead() throws Exception {
    Path flock = Path.of("/usr/bin/flock");
    assumeTrue(Files.isExecutable(flock), "no flock here");
    tool("flock", "exec " + flock + " \"$@\"");
    Files.createFile(home.resolve(".build-lock"));
    Process owner =
        new ProcessBuilder("flock", "-o", home.resolve(".build-lock").toString(), "sleep", "100")
            .start();
    owner.destroyForcibly().waitFor();
    builds();
  }
}
