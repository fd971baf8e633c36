package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/**
 * A run of {@link SpeedProbe}, with the options of the start script.
 *
 * @param told what the probe measured
 * @param wallS seconds from the start of the process to its end
 * @param firstOutputS seconds from the start of the process to its first byte on the error stream;
 *     as {@code wallS} when there was none
 */
record SpeedRun(Map<String, Double> told, double wallS, double firstOutputS) {
  /** As in the start scripts. */
  static final List<String> JAVA_OPTIONS =
      List.of(
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-Xshare:auto",
          "-Xms32m",
          "-Xmn16m",
          "-Djdk.util.jar.enableMultiRelease=false");

  /** What the start script runs. */
  static final Path JAR = Path.of("target", "shinline.jar");

  /** What it has Java share between runs. */
  static final Path SHARED_CLASSES = Path.of("target", "shared-classes.jsa");

  /** As the start scripts for a shell set it. */
  static final Map<String, String> ENVIRONMENT = Map.of("MALLOC_ARENA_MAX", "1");

  /** Work is shared among the cores that are there. */
  static SpeedRun of(Object... args) throws IOException, InterruptedException {
    return start(JAVA_OPTIONS, args);
  }

  /** Work is shared as on a machine with so many cores. */
  static SpeedRun asOn(int cores, Object... args) throws IOException, InterruptedException {
    List<String> options = new ArrayList<>(JAVA_OPTIONS);
    options.add("-XX:ActiveProcessorCount=" + cores);
    return start(options, args);
  }

  private static SpeedRun start(List<String> options, Object... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(
        List.of("-XX:SharedArchiveFile=" + SHARED_CLASSES.toRealPath(), "-Xlog:disable"));
    // Java shares classes when the class path begins as it did where they were written down.
    command.addAll(
        List.of(
            "-cp", JAR.toRealPath() + File.pathSeparator + System.getProperty("java.class.path")));
    command.add(SpeedProbe.class.getName());
    for (Object arg : args) {
      command.add(arg.toString());
    }
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().putAll(ENVIRONMENT);
    long start = System.nanoTime();
    Process process = builder.start();
    CompletableFuture<Errors> errors =
        CompletableFuture.supplyAsync(() -> Errors.of(process.getErrorStream()));
    Map<String, Double> told = new HashMap<>();
    try (var lines = process.inputReader(StandardCharsets.UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        int at = line.indexOf('=');
        if (at > 0) {
          told.put(line.substring(0, at), Double.valueOf(line.substring(at + 1)));
        }
      }
    }
    int code = process.waitFor();
    double wallS = (System.nanoTime() - start) / 1e9;
    Errors said = errors.join();
    assertThat(code).as("exit code of a probe that says: %s", said.text()).isZero();
    // Of a check: that of the program.
    assertThat(told.getOrDefault("code", 0.0)).as("the check says: %s", said.text()).isZero();
    double firstS = said.text().isEmpty() ? wallS : (said.firstNs() - start) / 1e9;
    return new SpeedRun(told, wallS, firstS);
  }

  double get(String name) {
    Double value = told.get(name);
    assertThat(value).as("the probe tells %s", name).isNotNull();
    return value;
  }

  /** What came out on the error stream, and when the first of it. */
  private record Errors(long firstNs, String text) {
    static Errors of(InputStream stream) {
      try (stream) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        int first = stream.read();
        long firstNs = System.nanoTime();
        if (first >= 0) {
          all.write(first);
          stream.transferTo(all);
        }
        return new Errors(firstNs, all.toString(StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
