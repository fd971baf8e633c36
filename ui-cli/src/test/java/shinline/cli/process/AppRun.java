package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.place.ProgramFolder;
import shinline.vision.clip.FileDigest;

/**
 * The Linux app as a coach gets it: out of its zip, in a folder with a blank in its name that may
 * not be written to, with nothing on the PATH. Runs with {@code mvn -B verify -Papp} alone.
 */
class AppRun {
  private static final String CLIP = "sample-clips/plain1-bench-shallow.mp4";

  @TempDir Path folder;
  private Path app;
  private Path work;

  @BeforeEach
  void unzip() throws IOException {
    String built = System.getProperty("shinline.app", "target");
    String name = "shinline-" + System.getProperty("shinline.app.version", "") + "-linux-x64";
    Path zip = Path.of(built, name + ".zip");
    assumeTrue(Files.isRegularFile(zip), "no app was built for this system");
    Path place = Files.createDirectories(folder.resolve("a coach's folder"));
    Map<String, String> how = Map.of("enablePosixFileAttributes", "true");
    try (FileSystem archive = FileSystems.newFileSystem(zip, how)) {
      for (Path file : walk(archive.getPath("/" + name))) {
        Path to = place.resolve(file.toString().substring(1));
        Files.copy(file, to);
        permissions(to, permissions(file));
      }
    }
    app = place.resolve(name);
    assumeTrue(Files.isExecutable(app.resolve("runtime/bin/java")), "built on another system");
    work = Files.createDirectories(folder.resolve("work"));
    for (Path file : walk(app)) {
      Set<PosixFilePermission> fewer = new HashSet<>(permissions(file));
      fewer.removeIf(p -> p.name().endsWith("_WRITE"));
      permissions(file, fewer);
    }
  }

  /** So that the temporary folder can be removed. */
  @AfterEach
  void letGo() throws IOException {
    if (app != null && Files.exists(app)) {
      for (Path file : walk(app)) {
        Set<PosixFilePermission> more = new HashSet<>(permissions(file));
        more.add(PosixFilePermission.OWNER_WRITE);
        permissions(file, more);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static Set<PosixFilePermission> permissions(Path file) throws IOException {
    String attribute = file.getFileSystem().provider().getScheme().equals("jar") ? "zip" : "posix";
    return (Set<PosixFilePermission>) Files.getAttribute(file, attribute + ":permissions");
  }

  private static void permissions(Path file, Set<PosixFilePermission> permissions)
      throws IOException {
    Files.setPosixFilePermissions(file, permissions);
  }

  private static List<Path> walk(Path from) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      return files.toList();
    }
  }

  private Path said() {
    return folder.resolve("said");
  }

  private int run(List<String> before, String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(before);
    command.add(app.resolve("shinline").toString());
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).directory(work.toFile());
    builder.environment().clear();
    builder.environment().put("PATH", folder.resolve("nothing here").toString());
    builder.environment().put(ProgramFolder.VARIABLE, folder.resolve("cache").toString());
    builder.environment().put("LANG", "C.UTF-8");
    return builder.redirectErrorStream(true).redirectOutput(said().toFile()).start().waitFor();
  }

  /** Names and digests of all files of the app. */
  private Set<String> content() throws IOException {
    Set<String> content = new TreeSet<>();
    for (Path file : walk(app)) {
      content.add(
          app.relativize(file)
              + (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                  ? " " + FileDigest.of(file).sha256()
                  : ""));
    }
    return content;
  }

  /** Without a network too, where it may be taken away. */
  private List<String> withoutNetwork() throws IOException, InterruptedException {
    Path unshare = Path.of("/usr/bin/unshare");
    List<String> alone = List.of(unshare.toString(), "-n");
    return Files.isExecutable(unshare)
            && new ProcessBuilder(unshare.toString(), "-n", "/bin/true").start().waitFor() == 0
        ? alone
        : List.of();
  }

  @Test
  void measuresAClip() throws Exception {
    Set<String> before = content();
    int code =
        run(
            withoutNetwork(),
            "check",
            app.resolve(CLIP).toString(),
            "--height",
            "178cm",
            "--out",
            "a result",
            "--annotated",
            "film.mp4");
    assertThat(said()).content().contains("reps measured").doesNotContain("Exception");
    assertThat(code).isZero();
    Path results = work.resolve("a result");
    assertThat(results.resolve("plain1-bench-shallow.html")).content().contains("data:image/jpeg");
    assertThat(results.resolve("plain1-bench-shallow.json")).isNotEmptyFile();
    assertThat(work.resolve("film.mp4")).isNotEmptyFile();
    assertThat(content()).isEqualTo(before);
    // Where docs/privacy.md says.
    assertThat(folder.resolve("cache/libraries")).isNotEmptyDirectory();
    assertThat(folder.resolve("cache/runs")).isDirectoryNotContaining("glob:**run-*");
  }

  @Test
  void doctorFindsAllItNeeds() throws Exception {
    int code = run(withoutNetwork(), "doctor");
    assertThat(said()).content().doesNotContain("Exception");
    assertThat(code).as(Files.readString(said())).isZero();
  }

  @Test
  void tidyRemovesWhatARunUnpacked() throws Exception {
    assertThat(run(List.of(), "--version")).isZero();
    assertThat(said()).content().startsWith("shinline ").doesNotContain("not from a jar");
    run(List.of(), "doctor");
    assertThat(folder.resolve("cache/libraries")).isNotEmptyDirectory();
    assertThat(run(List.of(), "tidy")).isZero();
    assertThat(folder.resolve("cache")).doesNotExist();
  }
}
