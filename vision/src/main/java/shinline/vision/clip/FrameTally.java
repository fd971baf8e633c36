package shinline.vision.clip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shinline.vision.clip.ClipEnding.StopCause;

/**
 * Keeps count of what a file promised and what came out of it, to tell at the end whether something
 * is missing. Truncated and damaged films end without any error from the decoder, so the two lists
 * of times are the only witness. A long interval alone proves nothing: in a variable-frame-rate
 * clip it is normal. A promised picture that did not come out does.
 *
 * <p>Times are in the film's own ticks. Sixteen bytes a picture are kept.
 */
final class FrameTally {

  /**
   * Promised pictures that may be missing at the very end before the clip counts as cut: some
   * phones index a last picture that they never finished. One picture is 1/30 s.
   */
  private static final int TAIL_TOLERANCE_FRAMES = 1;

  /**
   * Where only a length is promised, the last picture may be this far from it: a sound track often
   * runs on for a part of a second.
   */
  private static final double LENGTH_TOLERANCE_S = 1.0;

  private final double secondsPerTick;
  private final ClipLimits limits;
  private @Nullable StopCause breach;
  private long firstTick;
  private long lastTick;
  private final Ticks promised = new Ticks();

  /** Promised, and no other picture is decoded from them. */
  private final Ticks unreferenced = new Ticks();

  /** Read, and decoded from nothing else: what follows them is sound again. */
  private final Ticks keys = new Ticks();

  /** Read, and not decoded from a later one. */
  private final Ticks anchors = new Ticks();

  private final Ticks read = new Ticks();

  /**
   * @param secondsPerTick true seconds, the slow-motion factor included
   */
  FrameTally(double secondsPerTick, ClipLimits limits) {
    this.secondsPerTick = secondsPerTick;
    this.limits = limits;
  }

  /** The file holds a picture to be shown at this time. */
  void promise(long tick) {
    promised.add(tick);
  }

  /** No other picture is decoded from the promised one of this time. */
  void unreferenced(long tick) {
    unreferenced.add(tick);
  }

  /** The good picture of this time is decoded from nothing else. */
  void key(long tick) {
    keys.add(tick);
  }

  /** The good picture of this time is not decoded from any that is shown later. */
  void anchor(long tick) {
    anchors.add(tick);
  }

  /** A good picture with this time came out of the decoder. */
  void good(long tick) {
    if (read.size == 0) {
      firstTick = tick;
      lastTick = tick;
    }
    // As doubles, which do not overflow: the times of a damaged film may be anything.
    double gapS = ((double) tick - lastTick) * secondsPerTick;
    double lengthS = ((double) tick - firstTick) * secondsPerTick;
    if (gapS > limits.longestGapS() || gapS < 0) {
      breach = StopCause.GAP;
    } else if (lengthS > limits.longestS()) {
      breach = StopCause.LENGTH;
    }
    lastTick = tick;
    read.add(tick);
  }

  /** What of the limits a good picture's time went over; nothing after it is of use. */
  Optional<StopCause> breach() {
    return Optional.ofNullable(breach);
  }

  /** Forgets all, for a film that is read anew from its beginning. */
  void restart() {
    promised.clear();
    unreferenced.clear();
    keys.clear();
    anchors.clear();
    read.clear();
    breach = null;
  }

  /**
   * @param indexedFrames pictures the file's index lists, 0 without an index
   * @param expectedS seconds the file promises, 0 when it does not say
   */
  ClipEnding ending(int indexedFrames, double expectedS) {
    long[] good = read.sorted();
    long[] wanted = promised.sorted();
    int expected = Math.max(indexedFrames, wanted.length);
    List<ClipEnding.Gap> gaps = new ArrayList<>();
    long first = good.length > 0 ? good[0] : wanted.length > 0 ? wanted[0] : 0;
    int next = 0;
    int pending = 0;
    long lastGood = first;
    for (long tick : wanted) {
      while (next < good.length && good[next] < tick) {
        lastGood = good[next];
        next++;
      }
      if (next < good.length && good[next] == tick) {
        if (pending > 0) {
          gaps.add(new ClipEnding.Gap(seconds(lastGood - first), seconds(tick - first), pending));
          pending = 0;
        }
        lastGood = tick;
        next++;
      } else {
        pending++;
      }
    }
    // What is left over lies after the last good picture, read from the file or only listed.
    int tail = pending + Math.max(0, indexedFrames - wanted.length);
    double readS = good.length > 0 ? seconds(good[good.length - 1] - first) : 0;
    boolean cut =
        indexedFrames > 0
            ? tail > TAIL_TOLERANCE_FRAMES
            : tail > TAIL_TOLERANCE_FRAMES || expectedS - readS > LENGTH_TOLERANCE_S;
    if (cut) {
      int said = indexedFrames > 0 ? expected : 0;
      return new ClipEnding.EndedEarly(good.length, said, readS, Math.max(expectedS, readS), gaps);
    }
    return gaps.isEmpty()
        ? new ClipEnding.Complete(good.length)
        : new ClipEnding.Damaged(good.length, expected, gaps);
  }

  /**
   * Where pictures came out of the decoder that rest on one that did not: the decoder patches what
   * is missing from others, and goes on from there without a further complaint, to the next picture
   * that rests on nothing.
   */
  List<DoubtfulPictures> doubtful() {
    long[] good = read.sorted();
    if (good.length == 0) {
      return List.of();
    }
    long[] alone = unreferenced.sorted();
    long[] sound = keys.sorted();
    long[] before = anchors.sorted();
    long last = good[good.length - 1];
    List<DoubtfulPictures> spans = new ArrayList<>();
    long until = Long.MIN_VALUE;
    for (long tick : promised.sorted()) {
      boolean missing = Arrays.binarySearch(good, tick) < 0 && tick < last;
      if (!missing || tick < until || Arrays.binarySearch(alone, tick) >= 0) {
        continue;
      }
      int anchor = -Arrays.binarySearch(before, tick) - 2;
      int key = -Arrays.binarySearch(sound, tick) - 1;
      long from = Math.max(until, anchor >= 0 ? before[anchor] : good[0]);
      until = key < sound.length ? sound[key] : last;
      spans.add(new DoubtfulPictures(seconds(from - good[0]), seconds(until - good[0])));
    }
    return spans;
  }

  private double seconds(long ticks) {
    return ticks * secondsPerTick;
  }

  /** A growing list of times. */
  private static final class Ticks {
    private long[] values = new long[256];
    private int size;

    void add(long value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, 2 * size);
      }
      values[size] = value;
      size++;
    }

    void clear() {
      size = 0;
    }

    long[] sorted() {
      long[] copy = Arrays.copyOf(values, size);
      Arrays.sort(copy);
      return copy;
    }
  }
}
