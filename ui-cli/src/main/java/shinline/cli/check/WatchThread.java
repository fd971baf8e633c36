package shinline.cli.check;

/** Has each look's frame watched on a second thread, while the pose model is at the next one. */
final class WatchThread implements AutoCloseable {
  private final SideThread side = new SideThread("watch");
  private SideThread.Errand<Boolean> last = side.begin(() -> true);

  /**
   * Has a frame watched, when the one before it is done with.
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
  }

  /** Waits for the last frame given, and throws what went wrong with it. */
  void finish() {
    last.result();
  }

  /** Waits. */
  @Override
  public void close() {
    side.close();
  }
}
