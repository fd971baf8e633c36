package shinline.vision.clip;

import java.util.List;
import java.util.function.Function;

/** How the reading of a clip came to its end. Seconds are after the slow-motion factor. */
public sealed interface ClipEnding {

  /**
   * Every promised picture was read.
   *
   * @param framesRead pictures read
   */
  record Complete(int framesRead) implements ClipEnding {}

  /**
   * The last part is missing. Pictures before it are good, unless gaps are listed.
   *
   * @param framesExpected pictures the file promised; 0 when only a length was promised
   * @param secondsRead from the first picture to the last one read
   * @param secondsExpected from the first picture to the end the file promised
   * @param gaps damage before the early end, often none
   */
  record EndedEarly(
      int framesRead,
      int framesExpected,
      double secondsRead,
      double secondsExpected,
      List<Gap> gaps)
      implements ClipEnding {
    public EndedEarly {
      gaps = List.copyOf(gaps);
    }
  }

  /** The end was reached, but pictures inside could not be decoded. */
  record Damaged(int framesRead, int framesExpected, List<Gap> gaps) implements ClipEnding {
    public Damaged {
      gaps = List.copyOf(gaps);
    }
  }

  /**
   * Reading stopped for a cause outside the file's own bytes: the disk went away, memory ran out.
   *
   * @param framesRead pictures read before
   */
  record Stopped(int framesRead, StopCause cause) implements ClipEnding {}

  /** What stopped the reading. */
  enum StopCause {
    /** A picture could not be converted, most likely for want of memory. */
    PICTURE_FAILED,
    /** The time from one picture to the next is longer than is allowed. */
    GAP,
    /** The pictures go on for longer than is allowed. */
    LENGTH,
    /** The reading thread was told to stop. */
    CALLED_OFF,
    /** FFmpeg failed. */
    LIBRARY_FAILED
  }

  /**
   * A hole in the pictures.
   *
   * @param fromS time of the last good picture before the hole; 0 when it begins the clip
   * @param toS time of the first good picture after it
   * @param framesMissing promised pictures that lie between
   */
  record Gap(double fromS, double toS, int framesMissing) {}

  /** Pictures handed out. */
  int framesRead();

  default <T> T fold(
      Function<Complete, T> complete,
      Function<EndedEarly, T> endedEarly,
      Function<Damaged, T> damaged,
      Function<Stopped, T> stopped) {
    if (this instanceof Complete c) {
      return complete.apply(c);
    }
    if (this instanceof EndedEarly e) {
      return endedEarly.apply(e);
    }
    return this instanceof Damaged d ? damaged.apply(d) : stopped.apply((Stopped) this);
  }
}
