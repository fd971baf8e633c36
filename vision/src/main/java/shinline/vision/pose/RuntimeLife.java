package shinline.vision.pose;

import ai.onnxruntime.OrtEnvironment;
import ai.onnxruntime.OrtLoggingLevel;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * Keeps what the runtime needs alive for as long as a thread is at work in it. A process may end at
 * any moment (the coach calls it off) and the runtime does not wait for its own threads: it closes
 * what all models share in a shutdown hook, and the rest as its library goes. A thread that loads a
 * model meanwhile reads what is gone and takes Java down with it.
 */
final class RuntimeLife {
  /** The largest model loads in a second on a slow laptop. */
  private static final int LONGEST_WAIT_SECONDS = 10;

  private static final ReadWriteLock LIFE = new ReentrantReadWriteLock();

  private static boolean guarded;

  private RuntimeLife() {}

  /** Held by every thread while it is at work in the runtime; the end of the process waits. */
  static Lock use() {
    return LIFE.readLock();
  }

  /**
   * From here on the end waits.
   *
   * @throws IllegalStateException when the process is ending already
   */
  static synchronized void guard() {
    if (!guarded) {
      Runtime.getRuntime().addShutdownHook(new Thread(RuntimeLife::end, "end-model-runtime"));
      hold();
      guarded = true;
    }
  }

  /** Waits for those at work, and lets nobody begin any more: it is not unlocked again. */
  private static void end() {
    try {
      if (!LIFE.writeLock().tryLock(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Holds what all models share. Hooks run side by side, so the runtime's own may come before the
   * one above; but the runtime counts holders. It offers no second one, hence the way around; where
   * a version does not have it, the first holder is the only one.
   */
  private static void hold() {
    OrtEnvironment first = OrtEnvironment.getEnvironment();
    try {
      Field functions =
          Class.forName("ai.onnxruntime.OnnxRuntime").getDeclaredField("ortApiHandle");
      functions.setAccessible(true);
      Method create =
          first.getClass().getDeclaredMethod("createHandle", long.class, int.class, String.class);
      create.setAccessible(true);
      create.invoke(
          null,
          functions.getLong(null),
          OrtLoggingLevel.ORT_LOGGING_LEVEL_WARNING.getValue(),
          "shinline");
    } catch (ReflectiveOperationException | RuntimeException e) {
      return;
    }
  }
}
