package shinline.cli.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shinline.cli.words.Words;

/** How long the clips that are left will take, by the size of those that are done. */
final class TimeLeft {
  private final List<Path> clips;
  private final Clock clock;
  private final Instant start;
  private final Set<Path> behind = new HashSet<>();
  private long measuredBytes;

  TimeLeft(List<Path> clips, Clock clock) {
    this.clips = clips;
    this.clock = clock;
    start = clock.instant();
  }

  void skip(Path clip) {
    behind.add(clip);
  }

  void done(Path clip) {
    behind.add(clip);
    measuredBytes += size(clip);
  }

  /** For the line of progress. */
  String label(int number, int of, Path clip) {
    String name = SessionFolder.fileName(clip);
    if (measuredBytes == 0) {
      return Words.say("session.progress", number, of, name);
    }
    long left = clips.stream().filter(c -> !behind.contains(c)).mapToLong(TimeLeft::size).sum();
    Duration spent = Duration.between(start, clock.instant());
    long minutes = Math.round(spent.toMillis() / 60_000.0 * left / measuredBytes);
    return Words.say("session.progress.left", number, of, name, Math.max(1, minutes));
  }

  private static long size(Path clip) {
    try {
      return Math.max(1, Files.size(clip));
    } catch (IOException gone) {
      return 1;
    }
  }
}
