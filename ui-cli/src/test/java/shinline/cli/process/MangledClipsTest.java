package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged clips by the hundred: no crash, no hang, no trace, and no more memory than a worker is
 * given. Longer: {@code -Dshinline.mangled=3000}, {@code -Dshinline.mangled.seed=2}; go on where an
 * earlier run stopped with {@code -Dshinline.mangled.from=1200}.
 */
class MangledClipsTest {
  private static final int FEW = 120;

  /** Clips of one worker; a native call that hangs can only be ended with its process. */
  private static final int OF_A_WORKER = 300;

  /** For each clip, many times what the slowest takes; only a hang gets there. */
  private static final long PATIENCE_S = 5;

  @TempDir Path folder;

  @Test
  void noDamageStopsTheReading() throws Exception {
    Path film = folder.resolve("whole.mp4");
    Films.still(film, Films.noise(96, 64), 20, Films.Index.FIRST);
    int from = Integer.getInteger("shinline.mangled.from", 0);
    int to = from + Integer.getInteger("shinline.mangled", FEW);
    List<String> failures = new ArrayList<>();
    int next = from;
    while (next < to) {
      next = work(film, next, Math.min(to, next + OF_A_WORKER), failures);
    }
    assertThat(failures).isEmpty();
    System.out.println("mangled clips read: " + (to - from) + ", from number " + from);
  }

  /**
   * @return the number to go on with
   */
  private int work(Path film, int from, int to, List<String> failures)
      throws IOException, InterruptedException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-Xmx128m",
            "-Dorg.bytedeco.javacpp.maxPhysicalBytes=900m",
            "-XX:ErrorFile=" + folder.resolve("crash.txt"),
            "-cp",
            System.getProperty("java.class.path"),
            MangledClips.class.getName(),
            film.toString(),
            folder.toString(),
            Long.getLong("shinline.mangled.seed", 1).toString(),
            Integer.toString(from),
            Integer.toString(to));
    Path said = folder.resolve("said");
    Process worker =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = worker.waitFor(30 + PATIENCE_S * (to - from), TimeUnit.SECONDS);
    worker.destroyForcibly().waitFor();
    List<String> lines = Files.readAllLines(said);
    lines.stream()
        .filter(l -> !l.startsWith("begin ") && !l.startsWith("done "))
        .forEach(failures::add);
    if (ended && worker.exitValue() == 0) {
      return to;
    }
    int at =
        lines.stream()
            .filter(l -> l.startsWith("begin "))
            .mapToInt(l -> Integer.parseInt(l.substring("begin ".length())))
            .max()
            .orElse(from);
    failures.add("number " + at + (ended ? ": exit " + worker.exitValue() : ": hangs"));
    return at + 1;
  }
}
