package shinline.cli.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Core time of this process's threads by their names, looked at again and again: they end. */
final class ThreadTimes {
  private static final int EVERY_MS = 50;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final Map<String, Long> latestNs = new ConcurrentHashMap<>();

  private ThreadTimes() {}

  static ThreadTimes watch() {
    ThreadTimes times = new ThreadTimes();
    Thread looking = new Thread(times::keepLooking, "thread-times");
    looking.setDaemon(true);
    looking.start();
    return times;
  }

  /** Seconds, some {@value EVERY_MS} ms at the thread's end left out; 0 when it never was. */
  double coreS(String name) {
    return latestNs.getOrDefault(name, 0L) / 1e9;
  }

  private void keepLooking() {
    try {
      while (true) {
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
          if (thread != null) {
            latestNs.merge(
                thread.getThreadName(), threads.getThreadCpuTime(thread.getThreadId()), Math::max);
          }
        }
        Thread.sleep(EVERY_MS);
      }
    } catch (InterruptedException called) {
      Thread.currentThread().interrupt();
    }
  }
}
