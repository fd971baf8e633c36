package shinline.cli.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A process that works through numbers and is watched: whoever watches knows at which number it
 * died or hung, goes on behind it with another, and sees whether its memory grows. A native call
 * that hangs can only be ended with its process.
 */
final class WatchedWorker {
  private static final String BEGIN = "begin ";
  private static final String DONE = "done ";
  private static final String MEMORY = " megabytes ";

  /** For each number, many times what the slowest takes; only a hang gets there. */
  private static final long PATIENCE_S = 5;

  private static final long START_S = 30;

  /** Until then pools fill and classes load. */
  private static final int SETTLED_AFTER = 60;

  private final Class<?> worker;
  private final Path folder;
  private final List<String> failures = new ArrayList<>();
  private int mostGrowth;
  private int most;

  /**
   * @param worker its main method takes the words given, the first number, and the one behind the
   *     last
   * @param folder for what it says
   */
  WatchedWorker(Class<?> worker, Path folder) {
    this.worker = worker;
    this.folder = folder;
  }

  /** Said by the worker. */
  static void begin(int number) {
    System.out.println(BEGIN + number);
  }

  /** Said by the worker. */
  static void done(int number, String how) throws IOException {
    System.out.println(DONE + number + " " + how + MEMORY + megabytes());
  }

  /** What this process holds in memory, 0 where the system does not say. */
  private static long megabytes() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return 0;
    }
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(l -> l.startsWith("VmRSS:"))
          .mapToLong(l -> Long.parseLong(l.replaceAll("\\D", "")) / 1024)
          .findFirst()
          .orElse(0);
    }
  }

  /** Works through all numbers, so many with one process. */
  void over(int from, int to, int ofOneProcess, List<String> words)
      throws IOException, InterruptedException {
    int next = from;
    while (next < to) {
      next = run(next, Math.min(to, next + ofOneProcess), words);
    }
  }

  /** What went wrong, each with its number. */
  List<String> failures() {
    return List.copyOf(failures);
  }

  /** By how many megabytes a process grew after its first numbers, at most. */
  int mostGrowth() {
    return mostGrowth;
  }

  /** The most megabytes any process held. */
  int most() {
    return most;
  }

  /**
   * @return the number to go on with
   */
  private int run(int from, int to, List<String> words) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmx128m",
                "-Djava.awt.headless=true",
                "-Dorg.bytedeco.javacpp.maxPhysicalBytes=900m",
                "-XX:ErrorFile=" + folder.resolve("crash.txt"),
                "-cp",
                System.getProperty("java.class.path"),
                worker.getName()));
    command.addAll(words);
    command.addAll(List.of(Integer.toString(from), Integer.toString(to)));
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = process.waitFor(START_S + PATIENCE_S * (to - from), TimeUnit.SECONDS);
    process.destroyForcibly().waitFor();
    List<String> lines = Files.readAllLines(said);
    lines.stream().filter(l -> !l.startsWith(BEGIN) && !l.startsWith(DONE)).forEach(failures::add);
    remember(lines);
    if (ended && process.exitValue() == 0) {
      return to;
    }
    int at =
        lines.stream()
            .filter(l -> l.startsWith(BEGIN))
            .mapToInt(l -> Integer.parseInt(l.substring(BEGIN.length())))
            .max()
            .orElse(from);
    failures.add("number " + at + (ended ? ": exit " + process.exitValue() : ": hangs"));
    return at + 1;
  }

  private void remember(List<String> lines) {
    int[] held =
        lines.stream()
            .filter(l -> l.startsWith(DONE))
            .mapToInt(l -> Integer.parseInt(l.substring(l.indexOf(MEMORY) + MEMORY.length())))
            .toArray();
    most = Math.max(most, Arrays.stream(held).max().orElse(0));
    if (held.length > SETTLED_AFTER) {
      int settled = Arrays.stream(held).limit(SETTLED_AFTER).max().orElse(0);
      int later = Arrays.stream(held).skip(SETTLED_AFTER).max().orElse(0);
      mostGrowth = Math.max(mostGrowth, later - settled);
    }
  }
}
