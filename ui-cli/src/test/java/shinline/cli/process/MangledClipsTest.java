package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bytedeco.ffmpeg.global.avcodec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged clips of each kind of film by the hundred: no crash, no hang, no trace, and memory that
 * does not grow. Longer: {@code -Dshinline.mangled=3000}, {@code -Dshinline.mangled.seed=2}; go on
 * where an earlier run stopped with {@code -Dshinline.mangled.from=1200}.
 */
class MangledClipsTest {
  private static final int FEW = 120;
  private static final int OF_A_PROCESS = 300;

  /**
   * What a process may grow by. The most it may hold at all is set; a clip whose head promises
   * large pictures takes some, and the system does not get every piece back. A leak of one picture
   * of these tiny clips for each would show as more over 3,000.
   */
  private static final int GROWTH_MB = 100;

  @TempDir Path folder;

  @Test
  void noDamageStopsTheReading() throws Exception {
    Path whole = Files.createDirectories(folder.resolve("whole"));
    Films.still(whole.resolve("front.mp4"), Films.noise(96, 64), 20, Films.Index.FIRST);
    Films.still(whole.resolve("back.mov"), Films.noise(96, 64), 20, Films.Index.LAST);
    Films.as(whole.resolve("film.mkv"), "matroska", avcodec.AV_CODEC_ID_MPEG4);
    Films.as(whole.resolve("film.webm"), "webm", avcodec.AV_CODEC_ID_VP9);
    int from = Integer.getInteger("shinline.mangled.from", 0);
    int to = from + Integer.getInteger("shinline.mangled", FEW);
    WatchedWorker worker = new WatchedWorker(MangledClips.class, folder);
    worker.over(
        from,
        to,
        OF_A_PROCESS,
        List.of(
            whole.toString(),
            Files.createDirectories(folder.resolve("scratch")).toString(),
            Long.getLong("shinline.mangled.seed", 1).toString()));
    System.out.printf(
        "mangled clips read: %d, from number %d; failures: %d; a process held %d MB at most and"
            + " grew by %d MB%n",
        to - from, from, worker.failures().size(), worker.most(), worker.mostGrowth());
    assertThat(worker.failures()).isEmpty();
    assertThat(worker.mostGrowth()).as("megabytes more").isLessThan(GROWTH_MB);
  }
}
