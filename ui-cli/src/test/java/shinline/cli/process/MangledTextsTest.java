package shinline.cli.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged sheets, workbooks, target files, ladders, records and results by the hundred: each ends
 * in words and a code, without a trace. Longer, elsewhere and other damage as for {@link
 * MangledClipsTest}, with {@code shinline.mangled.texts} for the number.
 */
class MangledTextsTest {
  private static final int FEW = 240;
  private static final int OF_A_PROCESS = 2000;

  /** The Java heap of a process ends at 128 MB, and grows towards it. */
  private static final int GROWTH_MB = 150;

  @TempDir Path folder;

  @Test
  void noDamageIsTooMuch() throws Exception {
    int from = Integer.getInteger("shinline.mangled.from", 0);
    int to = from + Integer.getInteger("shinline.mangled.texts", FEW);
    WatchedWorker worker = new WatchedWorker(MangledTexts.class, folder);
    worker.over(
        from,
        to,
        OF_A_PROCESS,
        List.of(folder.toString(), Long.getLong("shinline.mangled.seed", 1).toString()));
    System.out.printf(
        "mangled texts read: %d, from number %d; failures: %d; a process held %d MB at most and"
            + " grew by %d MB%n",
        to - from, from, worker.failures().size(), worker.most(), worker.mostGrowth());
    assertThat(worker.failures()).isEmpty();
    assertThat(worker.mostGrowth()).as("megabytes more").isLessThan(GROWTH_MB);
  }
}
