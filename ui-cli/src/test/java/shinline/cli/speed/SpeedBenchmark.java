package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long a check takes beside decoding alone and the pose model alone, and how much memory. Not
 * among the tests of a build, as its name does not end like theirs; it asks for nothing but that
 * every clip is measured. Run it on a quiet machine:
 *
 * <pre>
 * ./shinline --version
 * mvn -B -pl ui-cli -am test -Dtest=SpeedBenchmark -Dsurefire.failIfNoSpecifiedTests=false
 * </pre>
 *
 * It prints a page of Markdown, writes it to ui-cli/target/performance.md and, with {@code
 * -Dshinline.docs=true}, to docs/performance.md. {@code -Dshinline.speed.minutes=0} leaves the long
 * clip out; {@code -Dshinline.speed.clip=FILE} adds a clip, of which the page does not tell the
 * name.
 */
class SpeedBenchmark {
  private static final Path SAMPLE = Path.of("..", "sample-clips", "gym1-bench-clean.mp4");
  private static final double NOISE = 3;

  /** Seconds the sample plays. */
  private static final double SAMPLE_S = 767 / 30.0;

  private static final List<SpeedClip> MADE =
      List.of(
          new SpeedClip("made", 1, 1, 1, 0),
          new SpeedClip("made", 2, 1, 1, NOISE),
          new SpeedClip("made", 2, 2, 1, NOISE));

  @TempDir Path folder;

  @Test
  void measure() throws IOException, InterruptedException {
    assertThat(SpeedRun.SHARED_CLASSES)
        .as("what the start script builds: run ./shinline --version first")
        .exists();
    List<ClipCost> costs = new ArrayList<>();
    SpeedPage page = new SpeedPage();
    page.heading("Performance");
    // Before the run itself makes the machine busy.
    page.machine();
    for (SpeedClip clip : MADE) {
      costs.add(ClipCost.measure(clip.words(), written(clip), folder, ClipCost.Depth.PARTS));
    }
    String given = System.getProperty("shinline.speed.clip", "");
    if (!given.isEmpty()) {
      Path file = Path.of(given);
      assertThat(Files.isReadable(file)).as("the clip given can be read").isTrue();
      costs.add(ClipCost.measure("a clip given", file, folder, ClipCost.Depth.PARTS));
    }
    int minutes = Integer.getInteger("shinline.speed.minutes", 10);
    if (minutes > 0) {
      int rounds = (int) Math.ceil(60 * minutes / SAMPLE_S);
      Path file = written(new SpeedClip("made, long", 1, 1, rounds, 0));
      costs.add(ClipCost.measure("made, long", file, folder, ClipCost.Depth.WHOLE));
    }
    new SpeedTables(page, costs).add();
    System.out.println(page);
    page.write(Path.of("target", "performance.md"));
    if (Boolean.getBoolean("shinline.docs")) {
      page.write(Path.of("..", "docs", "performance.md"));
    }
  }

  private Path written(SpeedClip clip) throws IOException {
    Path file =
        folder.resolve(clip.perPicture() + "-" + clip.scale() + "-" + clip.rounds() + ".mp4");
    clip.write(SAMPLE, file);
    return file;
  }
}
