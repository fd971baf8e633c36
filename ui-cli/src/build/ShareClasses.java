import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Build step, run from source: has Java write down the classes that a check needs, as they are once
 * they are loaded, so that the start script's runs need not read and verify them one by one. It
 * holds for this Java and for this place of the jars; Java itself sees to it that it is used for no
 * other. A build without it is whole: a check then starts half a second later.
 *
 * <p>Arguments: the jar, the folder of the libraries, a clip that a check measures, the file to
 * write.
 */
public final class ShareClasses {
  private static final long LONGEST_S = 300;

  /** As the start script has it: another collector or class path is another archive. */
  private static final List<String> OPTIONS =
      List.of("-XX:+UseSerialGC", "-Djdk.util.jar.enableMultiRelease=false");

  private ShareClasses() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    // The script starts its own folder's jar, without links on the way.
    Path jar = Path.of(args[0]).toRealPath();
    Path clip = Path.of(args[2]).toRealPath();
    Path archive = Path.of(args[3]).toAbsolutePath();
    if (isNewer(archive, jar, Path.of(args[1]))) {
      return;
    }
    Path work = Files.createTempDirectory(archive.getParent(), "classes-");
    try {
      write(jar, clip, work, archive);
    } catch (IOException e) {
      System.out.println("Classes are not shared between runs: " + e.getMessage());
      // One of other jars would cost more than none.
      Files.deleteIfExists(archive);
    } finally {
      remove(work);
    }
  }

  private static boolean isNewer(Path archive, Path jar, Path libraries) throws IOException {
    try (Stream<Path> files = Files.list(libraries)) {
      FileTime made = Files.getLastModifiedTime(archive);
      for (Path file : Stream.concat(Stream.of(jar), files).toList()) {
        if (Files.getLastModifiedTime(file).compareTo(made) >= 0) {
          return false;
        }
      }
      return true;
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private static void write(Path jar, Path clip, Path work, Path archive)
      throws IOException, InterruptedException {
    Path loaded = work.resolve("loaded.txt");
    Path shared = work.resolve("shared.txt");
    Path made = work.resolve("made.jsa");
    java(
        work,
        List.of(
            "-XX:TieredStopAtLevel=1",
            "-XX:DumpLoadedClassList=" + loaded,
            "-jar",
            jar.toString(),
            "check",
            clip.toString(),
            "--model",
            "quick",
            "--out",
            work.resolve("out").toString()));
    // Of classes made while running some are listed twice, over which Java 17 may crash.
    Files.write(
        shared,
        Files.readAllLines(loaded, StandardCharsets.UTF_8).stream()
            .distinct()
            .toList(),
        StandardCharsets.UTF_8);
    java(
        work,
        List.of(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + shared,
            "-XX:SharedArchiveFile=" + made,
            "-cp",
            jar.toString()));
    Files.move(made, archive, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Runs this Java; what it says is shown only when it fails. */
  private static void java(Path work, List<String> how) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(OPTIONS);
    command.addAll(how);
    File said = work.resolve("said.txt").toFile();
    Process run =
        new ProcessBuilder(command)
            .directory(work.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said)
            .start();
    boolean ended = run.waitFor(LONGEST_S, TimeUnit.SECONDS);
    if (!ended) {
      run.destroyForcibly().waitFor();
    }
    if (!ended || run.exitValue() != 0) {
      List<String> lines = Files.readAllLines(said.toPath(), StandardCharsets.UTF_8);
      throw new IOException(
          String.join("\n", lines.subList(Math.max(0, lines.size() - 10), lines.size())));
    }
  }

  private static void remove(Path folder) throws IOException {
    List<Path> inside;
    try (Stream<Path> files = Files.walk(folder)) {
      inside = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : inside) {
      Files.delete(file);
    }
  }
}
