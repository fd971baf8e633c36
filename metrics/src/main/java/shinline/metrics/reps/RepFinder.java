package shinline.metrics.reps;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Finds reps and their phases in the height of mid-hip.
 *
 * <p>A rep is a descent and a return. Lows and tops are the turning points of a zigzag that ignores
 * swings smaller than the least travel, so a wobbling hold is one rep and a slow sway is none. The
 * phases are cut where the height passes five per cent of the travel from the top or the lowest,
 * linearly between samples.
 *
 * <p>The top before a rep is the highest level since the low before it. It is not always the
 * stance: an athlete who walks in or racks up stands taller than in the split stance. Where the
 * highest level lies well above the last rest before the descent, and that rest is level with the
 * top on the other side of the rep, the rest is the top; likewise for the first rest after the
 * drive.
 *
 * <p>Nothing is read across a missing stretch: a rep cut by one is not counted, with the reason.
 */
public final class RepFinder {

  /** Frame times carry rounding of a microsecond or so. */
  private static final double TIME_SLACK_S = 1e-6;

  /**
   * @param hipHeight height over time, up positive, smoothed; any unit
   * @param legLength the athlete's leg length in the same unit, above 0
   */
  public RepSearch find(Series hipHeight, double legLength) {
    if (!(legLength > 0) || !Double.isFinite(legLength)) {
      throw new IllegalArgumentException("leg length " + legLength);
    }
    List<Stretch> stretches =
        hipHeight.runs().stream()
            .map(run -> new Stretch(hipHeight.times(run), hipHeight.values(run)))
            .toList();
    double floor = RepParameters.LEAST_OF_LEG * legLength;
    double largest = 0;
    for (Stretch s : stretches) {
      for (Swing swing : s.swings(floor)) {
        largest = Math.max(largest, s.depth(swing));
      }
    }
    double least = Math.max(floor, RepParameters.LEAST_OF_LARGEST * largest);
    List<Cut> cuts = new ArrayList<>();
    List<NotCounted> not = new ArrayList<>();
    for (Stretch s : stretches) {
      List<Swing> large = s.swings(least);
      for (Swing swing : large) {
        s.cut(swing, least, cuts, not);
      }
      for (Swing small : s.swings(floor)) {
        boolean inLarge =
            large.stream().anyMatch(l -> l.fromTop <= small.low && small.low <= l.toTop);
        if (!inLarge) {
          not.add(
              new NotCounted(s.t[small.fromTop], s.t[small.toTop], NotCounted.Reason.TOO_SMALL));
        }
      }
    }
    not.sort(Comparator.comparingDouble(NotCounted::fromS));
    return new RepSearch(numbered(cuts), not);
  }

  private static List<Rep> numbered(List<Cut> cuts) {
    List<Rep> reps = new ArrayList<>();
    for (int k = 0; k < cuts.size(); k++) {
      Cut cut = cuts.get(k);
      RepTimes times = cut.times;
      OptionalDouble top = OptionalDouble.empty();
      // A rest is seen only if the film between both reps is whole.
      if (k + 1 < cuts.size() && cuts.get(k + 1).stretch == cut.stretch) {
        top = OptionalDouble.of(Math.max(0, cuts.get(k + 1).times.startS() - times.endS()));
      }
      Tempo tempo =
          new Tempo(
              times.bottomStartS() - times.startS(),
              times.bottomEndS() - times.bottomStartS(),
              times.endS() - times.bottomEndS(),
              top);
      reps.add(new Rep(k + 1, times, tempo, cut.topBefore, cut.lowest, cut.topAfter));
    }
    return reps;
  }

  /**
   * A low between two turning points, by index.
   *
   * @param fromLow the low before, or the first sample: the top lies after it
   * @param toLow the low after, or the last sample
   */
  private record Swing(int fromLow, int fromTop, int low, int toTop, int toLow) {}

  private record Cut(
      Stretch stretch, RepTimes times, double topBefore, double lowest, double topAfter) {}

  /** A top: its level, and where it is reached. */
  private record Top(int index, double level) {}

  private record Tops(Top before, Top after) {
    double apart() {
      return Math.abs(before.level - after.level);
    }
  }

  /** Samples without a gap. */
  private final class Stretch {
    private final double[] t;
    private final double[] h;

    Stretch(double[] t, double[] h) {
      this.t = t;
      this.h = h;
    }

    /**
     * Lows whose descent and return both exceed the threshold, or are cut by the stretch's ends.
     */
    List<Swing> swings(double threshold) {
      List<Integer> lows = new ArrayList<>();
      boolean falling = false;
      boolean known = false;
      int high = 0;
      int low = 0;
      for (int i = 1; i < h.length; i++) {
        if (h[i] > h[high]) {
          high = i;
        }
        if (h[i] < h[low]) {
          low = i;
        }
        if ((!known || !falling) && h[high] - h[i] >= threshold) {
          falling = true;
          known = true;
          low = i;
          high = i;
        } else if ((!known || falling) && h[i] - h[low] >= threshold) {
          lows.add(low);
          falling = false;
          known = true;
          high = i;
          low = i;
        }
      }
      if (known && falling) {
        lows.add(low);
      }
      List<Swing> swings = new ArrayList<>();
      for (int k = 0; k < lows.size(); k++) {
        int fromLow = k == 0 ? 0 : lows.get(k - 1);
        int toLow = k + 1 == lows.size() ? h.length - 1 : lows.get(k + 1);
        int at = lows.get(k);
        swings.add(new Swing(fromLow, highest(fromLow, at), at, highest(at, toLow), toLow));
      }
      return swings;
    }

    /** The smaller of descent and return. */
    double depth(Swing s) {
      return Math.min(h[s.fromTop], h[s.toTop]) - h[s.low];
    }

    private int highest(int from, int to) {
      int best = from;
      for (int i = from; i <= to; i++) {
        if (h[i] > h[best]) {
          best = i;
        }
      }
      return best;
    }

    void cut(Swing s, double least, List<Cut> cuts, List<NotCounted> not) {
      double low = h[s.low];
      if (h[s.fromTop] - low < least) {
        not.add(new NotCounted(t[s.fromLow], t[s.toTop], NotCounted.Reason.STARTS_PART_WAY));
        return;
      }
      if (h[s.toTop] - low < least) {
        not.add(new NotCounted(t[s.fromTop], t[s.toLow], NotCounted.Reason.ENDS_PART_WAY));
        return;
      }
      Tops tops = tops(s);
      Top before = tops.before;
      Top after = tops.after;
      if (partSeen(before, after, low, 0)) {
        not.add(new NotCounted(t[0], t[after.index], NotCounted.Reason.STARTS_PART_WAY));
      } else if (partSeen(after, before, low, h.length - 1)) {
        not.add(new NotCounted(t[before.index], t[h.length - 1], NotCounted.Reason.ENDS_PART_WAY));
      } else {
        cuts.add(phases(s, before, after));
      }
    }

    /**
     * Whether a top is only where the stretch begins or ends on the move: it is the outermost
     * sample, lower than the top on the other side, and the hip does not rest there.
     */
    private boolean partSeen(Top top, Top other, double low, int outermost) {
      double travel = other.level - low;
      double below = other.level - top.level;
      if (top.index != outermost || below <= RepParameters.LEVEL * travel) {
        return false;
      }
      boolean rests =
          outermost == 0
              ? restFrom(0, range(travel)) > 0
              : restTo(h.length - 1, range(travel)) < h.length - 1;
      // A very slow descent looks like rest for a moment; far from the other top it is none.
      return !rests || below > 2 * RepParameters.SAME_LEVEL * travel;
    }

    private double range(double travel) {
      return RepParameters.REST_RANGE * travel;
    }

    /** The tops before and after a low: the highest levels, or the rests next to the rep. */
    private Tops tops(Swing s) {
      Top highBefore = new Top(s.fromTop, h[s.fromTop]);
      Top highAfter = new Top(s.toTop, h[s.toTop]);
      double depth = depth(s);
      Top restBefore = orHighest(lastRest(s.fromLow, s.low, depth), highBefore, depth);
      Top restAfter = orHighest(firstRest(s.low, s.toLow, depth), highAfter, depth);
      if (Math.abs(restBefore.level - restAfter.level) <= RepParameters.SAME_LEVEL * depth) {
        return new Tops(restBefore, restAfter);
      }
      Tops best = new Tops(highBefore, highAfter);
      for (Tops other : List.of(new Tops(restBefore, highAfter), new Tops(highBefore, restAfter))) {
        if (other.apart() < best.apart() - range(depth)) {
          best = other;
        }
      }
      return best;
    }

    /** The highest level, unless there is a rest clearly below it. */
    private Top orHighest(Optional<Top> rest, Top highest, double depth) {
      return rest.filter(r -> highest.level - r.level > range(depth)).orElse(highest);
    }

    private Optional<Top> lastRest(int from, int low, double depth) {
      double least = h[low] + depth / 2;
      for (int end = low; end > from && t[end] - t[from] >= RepParameters.REST_S; end--) {
        int begin = restTo(end, range(depth));
        if (h[end] < least || begin == end || begin < from) {
          continue;
        }
        // A rest may drift: go on as long as each short stretch of it is still.
        Top best = middle(begin, end);
        for (int e = end - 1; e > from; e--) {
          int b = restTo(e, range(depth));
          if (b == e || b < from) {
            break;
          }
          best = higher(best, middle(b, e));
        }
        return Optional.of(best);
      }
      return Optional.empty();
    }

    private Optional<Top> firstRest(int low, int to, double depth) {
      double least = h[low] + depth / 2;
      for (int begin = low; begin < to && t[to] - t[begin] >= RepParameters.REST_S; begin++) {
        int end = restFrom(begin, range(depth));
        if (h[begin] < least || end == begin || end > to) {
          continue;
        }
        Top best = middle(begin, end);
        for (int b = begin + 1; b < to; b++) {
          int e = restFrom(b, range(depth));
          if (e == b || e > to) {
            break;
          }
          best = higher(best, middle(b, e));
        }
        return Optional.of(best);
      }
      return Optional.empty();
    }

    /** Median height of a rest: the tail of the step down into the stance must not raise it. */
    private Top middle(int from, int to) {
      double[] rest = Arrays.copyOfRange(h, from, to + 1);
      return new Top(highest(from, to), RobustStatistics.median(rest).orElseThrow());
    }

    private static Top higher(Top a, Top b) {
      return b.level > a.level ? b : a;
    }

    /**
     * First sample of the shortest rest that ends at a sample, or the sample itself if none does.
     */
    private int restTo(int end, double range) {
      double min = h[end];
      double max = h[end];
      for (int i = end; i >= 0; i--) {
        min = Math.min(min, h[i]);
        max = Math.max(max, h[i]);
        if (max - min > range) {
          return end;
        }
        if (t[end] - t[i] >= RepParameters.REST_S - TIME_SLACK_S) {
          return i;
        }
      }
      return end;
    }

    /**
     * Last sample of the shortest rest that begins at a sample, or the sample itself if none does.
     */
    private int restFrom(int begin, double range) {
      double min = h[begin];
      double max = h[begin];
      for (int i = begin; i < h.length; i++) {
        min = Math.min(min, h[i]);
        max = Math.max(max, h[i]);
        if (max - min > range) {
          return begin;
        }
        if (t[i] - t[begin] >= RepParameters.REST_S - TIME_SLACK_S) {
          return i;
        }
      }
      return begin;
    }

    private Cut phases(Swing s, Top before, Top after) {
      double low = bottomLevel(s, before.level);
      double topBefore = topLevel(before, low, s);
      double topAfter = topLevel(after, low, s);
      double travel = before.level - low;
      double leaves = topBefore - RepParameters.LEVEL * (topBefore - low);
      double bottom = low + RepParameters.LEVEL * travel;
      double arrives = topAfter - RepParameters.LEVEL * (topAfter - low);
      int a = s.low - 1;
      while (a > before.index && !(h[a] >= leaves && leaves > h[a + 1])) {
        a--;
      }
      int b = a + 1;
      while (h[b] > bottom) {
        b++;
      }
      int d = s.low;
      while (d + 1 < after.index && !(h[d] < arrives && arrives <= h[d + 1])) {
        d++;
      }
      int c = Math.min(d + 1, after.index);
      while (h[c] > bottom) {
        c--;
      }
      RepTimes times =
          new RepTimes(
              crossing(a, a + 1, leaves),
              crossing(b - 1, b, bottom),
              t[s.low],
              crossing(c, c + 1, bottom),
              crossing(d, d + 1, arrives));
      return new Cut(this, times, before.level, low, after.level);
    }

    /**
     * The lowest level, told from the whole hold: the lowest sample of many noisy ones lies below
     * where the hip ever was, and would move both ends of the hold.
     */
    private double bottomLevel(Swing s, double top) {
      double near = h[s.low] + RepParameters.NEAR_EXTREME * (top - h[s.low]);
      double[] hold = around(s.low, s.fromTop, s.toTop, height -> height <= near);
      return RobustStatistics.quantile(hold, RepParameters.BEYOND_LEVEL).orElseThrow();
    }

    /**
     * The level of a top, told from all of it in the same way: with the highest of many noisy
     * samples, lowering and drive would come out long. The level of a rest is its middle already.
     */
    private double topLevel(Top top, double low, Swing s) {
      double near = top.level - RepParameters.NEAR_EXTREME * (top.level - low);
      double[] rest = around(top.index, s.fromLow, s.toLow, height -> height >= near);
      return Math.min(
          top.level, RobustStatistics.quantile(rest, 1 - RepParameters.BEYOND_LEVEL).orElseThrow());
    }

    /** The heights on both sides of a sample, itself included, as far as each of them belongs. */
    private double[] around(int at, int first, int last, DoublePredicate belongs) {
      int from = at;
      while (from > first && belongs.test(h[from - 1])) {
        from--;
      }
      int to = at;
      while (to < last && belongs.test(h[to + 1])) {
        to++;
      }
      return Arrays.copyOfRange(h, from, to + 1);
    }

    /** Time at which the height passes a level between two samples, linear between them. */
    private double crossing(int i, int j, double level) {
      return h[j] == h[i] ? t[i] : t[i] + (t[j] - t[i]) * (level - h[i]) / (h[j] - h[i]);
    }
  }
}
