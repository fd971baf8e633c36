package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a check takes, and how much memory. Not among the tests of a build, as its name does not
 * end like theirs; it asks for nothing but that every clip is measured. Run it on a quiet machine:
 *
 * <pre>
 * mvn -B -pl ui-cli -am test -Dtest=SpeedBenchmark -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * It prints a page of Markdown, writes it to ui-cli/target/performance.md and, with {@code
 * -Dshinline.docs=true}, to docs/performance.md. {@code -Dshinline.speed.minutes=0} leaves the long
 * clip out.
 */
class SpeedBenchmark {
  private static final Path SAMPLE = Path.of("..", "sample-clips", "gym1-bench-clean.mp4");
  private static final double NOISE = 3;

  /** As in the start scripts. */
  static final List<String> JAVA_OPTIONS =
      List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-Xms32m", "-Xmn16m");

  private static final SpeedClip SMALL = new SpeedClip("540p, 30 a second", 1, 1, 1, 0);
  private static final SpeedClip HD30 = new SpeedClip("1080p, 30 a second", 2, 1, 1, NOISE);
  private static final SpeedClip HD60 = new SpeedClip("1080p, 60 a second", 2, 2, 1, NOISE);

  /** Seconds the sample plays. */
  private static final double SAMPLE_S = 767 / 30.0;

  @TempDir Path folder;

  private final List<String> page = new ArrayList<>();

  @Test
  void measure() throws IOException, InterruptedException {
    facts();
    List<SpeedClip> clips = new ArrayList<>(List.of(SMALL, HD30, HD60));
    int minutes = Integer.getInteger("shinline.speed.minutes", 10);
    if (minutes > 0) {
      clips.add(
          new SpeedClip(
              "540p, 30 a second, long", 1, 1, (int) Math.ceil(60 * minutes / SAMPLE_S), 0));
    }
    table("clip", "plays, s", "whole check, s", "of the playing time", "core time, s", "peak, MB");
    for (SpeedClip clip : clips) {
      Path file =
          folder.resolve(clip.perPicture() + "-" + clip.scale() + "-" + clip.rounds() + ".mp4");
      clip.write(SAMPLE, file);
      whole(clip, file);
    }
    page.add("");
    page.add(
        "Core time of each part on one thread, with the model loaded and every other thing left"
            + " out. Frames are sampled for the pose model 15 times a second whatever the clip's"
            + " rate; the others are decoded but not converted.");
    page.add("");
    table(
        "clip",
        "pictures",
        "sampled frames",
        "load models, s",
        "decode, s",
        "decode and convert all, s",
        "pose, s",
        "analysis, s",
        "pictures and page, s");
    for (SpeedClip clip : List.of(SMALL, HD30, HD60)) {
      Path file =
          folder.resolve(clip.perPicture() + "-" + clip.scale() + "-" + clip.rounds() + ".mp4");
      parts(clip, file);
    }
    page.forEach(System.out::println);
    write(Path.of("target", "performance.md"));
    if (Boolean.getBoolean("shinline.docs")) {
      write(Path.of("..", "docs", "performance.md"));
    }
  }

  private void write(Path file) throws IOException {
    Files.write(file, page, StandardCharsets.UTF_8);
  }

  private void facts() throws IOException {
    var system = ManagementFactory.getOperatingSystemMXBean();
    page.add("# Performance");
    page.add("");
    page.add(
        "Made by `SpeedBenchmark` ([DEVELOPERS.md](../DEVELOPERS.md) has the command); no figure"
            + " here is typed by hand. The clips are made from a sample clip by this project's own"
            + " writer, scaled up and with noise added, so that decoding costs about what a"
            + " phone's clip costs; a phone's own coder makes smaller files that are somewhat"
            + " dearer to decode.");
    page.add("");
    page.add(
        String.format(
            Locale.ROOT,
            "Machine: %s%d cores, %s %s, Java %s; %.1f processes at work when the run began (0 on a"
                + " quiet machine). The accurate pose model, the default.",
            processor(),
            system.getAvailableProcessors(),
            system.getName(),
            system.getArch(),
            System.getProperty("java.version"),
            Math.max(0, system.getSystemLoadAverage())));
    if (system.getSystemLoadAverage() > system.getAvailableProcessors() / 2.0) {
      page.add("");
      page.add(
          "The machine was not quiet: the times of the whole check are too long, and core time is"
              + " what to read.");
    }
    page.add("");
    page.add(
        "Whole check: from the start of the program to its end, with page, pictures and tables."
            + " Below 100 % it runs faster than the clip plays. Core time: all threads together."
            + " Peak: most memory the process held.");
    page.add("");
  }

  private static String processor() throws IOException {
    Path file = Path.of("/proc/cpuinfo");
    return !Files.isReadable(file)
        ? ""
        : Files.readAllLines(file).stream()
            .filter(line -> line.startsWith("model name"))
            .map(line -> line.substring(line.indexOf(':') + 1).strip() + ", ")
            .findFirst()
            .orElse("");
  }

  private void table(String... headings) {
    page.add("| " + String.join(" | ", headings) + " |");
    page.add("| --- |" + " ---: |".repeat(headings.length - 1));
  }

  private void whole(SpeedClip clip, Path file) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Map<String, Double> cost = probe("check", file.toString(), folder.resolve("out").toString());
    double wallS = (System.nanoTime() - start) / 1e9;
    assertThat(cost.get("code")).as("exit code of the check of " + file.getFileName()).isZero();
    double playsS = clip.rounds() * SAMPLE_S;
    page.add(
        String.format(
            Locale.ROOT,
            "| %s | %.1f | %.1f | %.0f %% | %.1f | %s |",
            clip.words(),
            playsS,
            wallS,
            100 * wallS / playsS,
            cost.get("coreS"),
            cost.get("peakMb") == 0
                ? "–"
                : String.format(Locale.ROOT, "%.0f", cost.get("peakMb"))));
  }

  private void parts(SpeedClip clip, Path file) throws IOException, InterruptedException {
    Map<String, Double> cost = probe("parts", file.toString());
    page.add(
        String.format(
            Locale.ROOT,
            "| %s | %.0f | %.0f | %.2f | %.2f | %.2f | %.2f | %.2f | %.2f |",
            clip.words(),
            cost.get("pictures"),
            cost.get("looks"),
            cost.get("loadS"),
            cost.get("decodeS"),
            cost.get("allPicturesS"),
            cost.get("poseS"),
            cost.get("analysisS"),
            cost.get("pageS")));
  }

  private static Map<String, Double> probe(String... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(JAVA_OPTIONS);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(SpeedProbe.class.getName());
    command.addAll(List.of(args));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    Map<String, Double> told = new HashMap<>();
    try (var lines = process.inputReader(StandardCharsets.UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        int at = line.indexOf('=');
        if (at > 0) {
          told.put(line.substring(0, at), Double.valueOf(line.substring(at + 1)));
        }
      }
    }
    assertThat(process.waitFor()).isZero();
    return told;
  }
}
