package shinline.cli.check;

import java.util.ArrayDeque;
import java.util.Deque;

/** Has frames watched on a second thread, while the pose model is at the next ones. */
final class WatchThread implements AutoCloseable {
  /**
   * Frames that may wait to be watched: one takes longer than a look now and again, and the pose
   * model need not wait for it. Each keeps a picture.
   */
  private static final int MOST_WAITING = 3;

  private final SideThread side = new SideThread("watch");
  private final Deque<SideThread.Errand<Boolean>> waiting = new ArrayDeque<>();

  /**
   * Has a frame watched, when those before it are done with.
   *
   * @param watching in the order given, and never two at once
   */
  void watch(Runnable watching) {
    while (waiting.size() >= MOST_WAITING) {
      waiting.removeFirst().result();
    }
    waiting.addLast(
        side.begin(
            () -> {
              watching.run();
              return true;
            }));
  }

  /** Waits for all frames given, and throws what went wrong with one. */
  void finish() {
    while (!waiting.isEmpty()) {
      waiting.removeFirst().result();
    }
  }

  /** Waits. */
  @Override
  public void close() {
    side.close();
  }
}
