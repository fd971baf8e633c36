package shinline.vision.pose;

import ai.djl.engine.Engine;
import java.util.concurrent.locks.Lock;

/** The runtime that computes the models; see {@link OnnxModel}. */
public final class ModelRuntime {

  static {
    // Before any other call: otherwise DJL asks the network who and where it is.
    System.setProperty("ai.djl.offline", "true");
    System.setProperty("OPT_OUT_TRACKING", "true");
  }

  static final String NAME = "OnnxRuntime";

  private ModelRuntime() {}

  /**
   * Loads its libraries, as loading a model would.
   *
   * @throws RuntimeException or LinkageError when it does not run here
   */
  public static void load() {
    Lock use = RuntimeLife.use();
    use.lock();
    try {
      Engine.getEngine(NAME);
      RuntimeLife.guard();
    } finally {
      use.unlock();
    }
  }
}
