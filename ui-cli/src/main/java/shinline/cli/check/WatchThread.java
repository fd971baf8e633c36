package shinline.cli.check;

import org.bytedeco.opencv.opencv_core.Mat;

/**
 * Has each look's frame watched on a second thread, while the pose model is at the next one. Two
 * frames are held in turn.
 */
final class WatchThread implements AutoCloseable {
  private final SideThread side = new SideThread("watch");
  private Mat free = new Mat();
  private Mat watched = new Mat();
  private SideThread.Errand<Boolean> last = side.begin(() -> true);

  /** A buffer for the next frame; its picture stays until the second {@link #watch} from now. */
  Mat free() {
    return free;
  }

  /**
   * Has the frame in the free buffer watched, when the one before it is done with.
   *
   * @param watching in the order given, and never two at once
   */
  void watch(Runnable watching) {
    finish();
    last =
        side.begin(
            () -> {
              watching.run();
              return true;
            });
    Mat next = watched;
    watched = free;
    free = next;
  }

  /** Waits for the last frame given, and throws what went wrong with it. */
  void finish() {
    last.result();
  }

  /** Waits, and frees the buffers. */
  @Override
  public void close() {
    side.close();
    free.close();
    watched.close();
  }
}
