package shinline.cli.check;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A second thread beside the one of the pose model, which leaves half of two cores free. It does
 * one thing after another, in the order in which they were given to it.
 */
final class SideThread implements Executor, AutoCloseable {
  private final ExecutorService thread;

  /**
   * @param name as debuggers show it
   */
  SideThread(String name) {
    thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread made = new Thread(work, name);
              made.setDaemon(true);
              return made;
            });
  }

  /** Something the thread was given to do. */
  static final class Errand<T> {
    private final CompletableFuture<T> result;

    private Errand(CompletableFuture<T> result) {
      this.result = result;
    }

    /** Waits until it is done, and goes on with what came of it, unless it threw something. */
    void ifGood(Consumer<T> next) {
      if (result.handle((good, fault) -> fault == null).join()) {
        next.accept(result.join());
      }
    }

    /** Waits until it is done, and gives what came of it or throws what it threw. */
    T result() {
      try {
        return result.join();
      } catch (CompletionException e) {
        if (e.getCause() instanceof Error error) {
          throw error;
        }
        if (e.getCause() instanceof RuntimeException fault) {
          throw fault;
        }
        throw e;
      }
    }
  }

  @Override
  public void execute(Runnable work) {
    thread.execute(work);
  }

  <T> Errand<T> begin(Supplier<T> work) {
    return new Errand<>(CompletableFuture.supplyAsync(work, thread));
  }

  /** Waits until all is done. */
  @Override
  public void close() {
    CompletableFuture.runAsync(() -> {}, thread).join();
    thread.shutdown();
  }
}
