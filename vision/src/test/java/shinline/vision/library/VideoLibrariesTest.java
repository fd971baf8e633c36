package shinline.vision.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

final class VideoLibrariesTest {
  @Test
  void whoeverComesWhileTheyAreLoadedWaits() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      Callable<VideoLibraries> load = VideoLibraries::load;
      List<Future<VideoLibraries>> loaded = threads.invokeAll(List.of(load, load, load));
      for (Future<VideoLibraries> each : loaded) {
        assertThat(each.get()).isSameAs(VideoLibraries.load());
      }
      assertThat(VideoLibraries.load().openCv()).matches("4\\.\\d+\\.\\d+");
    } finally {
      threads.shutdown();
    }
  }
}
