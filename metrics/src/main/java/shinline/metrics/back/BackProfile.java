package shinline.metrics.back;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.PolynomialFit;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.Side;

/**
 * One edge of a trunk as distances from the line between hip and shoulder, place by place; shares
 * of that line's length. Size, lean and side of the picture have dropped out.
 */
final class BackProfile {
  /** Of the places, so many must have been seen both times. */
  private static final int LEAST_PLACES = 8;

  /** At either end of the stretch, so many of the first or last five: without ends no bow. */
  private static final int LEAST_AT_END = 2;

  private static final int END = 5;

  /** A place this many times the middle residual off the first fit is left out of the second. */
  private static final double FAR_OFF = 4.5;

  /** Closer than this, share of the trunk, nothing is left out: half a centimetre or so. */
  private static final double CLOSE = 0.01;

  private final double[] out;
  private final boolean[] seen;

  private BackProfile(double[] out, boolean[] seen) {
    this.out = out;
    this.seen = seen;
  }

  /**
   * The profile of one edge.
   *
   * @param toward side of the picture on which the edge lies
   */
  static BackProfile of(TrunkOutline outline, Side toward) {
    double dx = outline.shoulder().x() - outline.hip().x();
    double dy = outline.shoulder().y() - outline.hip().y();
    double square = dx * dx + dy * dy;
    double[] out = new double[TrunkOutline.PLACES];
    boolean[] seen = new boolean[TrunkOutline.PLACES];
    for (int i = 0; i < out.length; i++) {
      Optional<Point> edge = outline.edge(toward).get(i);
      if (edge.isPresent() && square > 0) {
        double ex = edge.get().x() - outline.hip().x();
        double ey = edge.get().y() - outline.hip().y();
        out[i] = Math.abs(ex * dy - ey * dx) / square;
        seen[i] = true;
      }
    }
    return new BackProfile(out, seen);
  }

  /** Place by place the median of those profiles that saw it; seen where half of them did. */
  static BackProfile middle(List<BackProfile> profiles) {
    double[] out = new double[TrunkOutline.PLACES];
    boolean[] seen = new boolean[TrunkOutline.PLACES];
    for (int i = 0; i < out.length; i++) {
      List<Double> there = new ArrayList<>();
      for (BackProfile profile : profiles) {
        if (profile.seen[i]) {
          there.add(profile.out[i]);
        }
      }
      out[i] = RobustStatistics.median(there).orElse(0);
      seen[i] = !there.isEmpty() && 2 * there.size() >= profiles.size();
    }
    return new BackProfile(out, seen);
  }

  /**
   * How much more this edge bows out than another: the parabola that fits the difference best,
   * whose rise is + when this one bulges more, − when it is hollower; empty when too few places
   * were seen both times. For a flat arc against a straight edge the rise is the sagitta, r·(1 −
   * cos θ/2).
   *
   * <p>Taking the difference place by place, whatever is there both times drops out: the shape of
   * the spine, a shirt, a belt. A parabola asks little of any one place, and a place that lies far
   * off it, where a rack or a dumbbell passed for the person, is left out.
   */
  Optional<Parabola> over(BackProfile other) {
    double[] more = new double[TrunkOutline.PLACES];
    boolean[] used = new boolean[TrunkOutline.PLACES];
    for (int i = 0; i < more.length; i++) {
      used[i] = seen[i] && other.seen[i];
      more[i] = out[i] - other.out[i];
    }
    if (!enough(used)) {
      return Optional.empty();
    }
    leaveOut(Parabola.through(more, used), more, used);
    return enough(used) ? Optional.of(Parabola.through(more, used)) : Optional.empty();
  }

  /**
   * The places of this profile on another look's trunk, from low to high.
   *
   * @param chord added to each, so that the ends meet those of a look this one was compared with
   */
  List<Point> on(TrunkOutline outline, Side toward, Parabola chord) {
    double dx = outline.shoulder().x() - outline.hip().x();
    double dy = outline.shoulder().y() - outline.hip().y();
    // Of the two ways square to the trunk, one leads to the picture's left.
    double way = (dy > 0) == (toward == Side.LEFT) ? 1 : -1;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < out.length; i++) {
      if (seen[i]) {
        double along = TrunkOutline.place(i);
        double across = way * (out[i] + chord.chordAt(i));
        points.add(outline.hip().plus(along * dx - across * dy, along * dy + across * dx));
      }
    }
    return points;
  }

  private static boolean enough(boolean[] used) {
    return count(used, 0, used.length) >= LEAST_PLACES
        && count(used, 0, END) >= LEAST_AT_END
        && count(used, used.length - END, used.length) >= LEAST_AT_END;
  }

  private static int count(boolean[] used, int from, int to) {
    return (int) IntStream.range(from, to).filter(i -> used[i]).count();
  }

  private static void leaveOut(Parabola fit, double[] values, boolean[] used) {
    double[] off =
        IntStream.range(0, used.length)
            .filter(i -> used[i])
            .mapToDouble(i -> Math.abs(values[i] - fit.at(i)))
            .toArray();
    double limit = Math.max(CLOSE, FAR_OFF * RobustStatistics.median(off).orElse(0));
    for (int i = 0; i < used.length; i++) {
      used[i] = used[i] && Math.abs(values[i] - fit.at(i)) <= limit;
    }
  }

  /** a + b·x + c·x² over the places, x from −1 at the lowest to 1 at the highest. */
  record Parabola(double a, double b, double c) {

    private static double x(int place) {
      return 2.0 * place / (TrunkOutline.PLACES - 1) - 1;
    }

    double at(int place) {
      return a + x(place) * (b + x(place) * c);
    }

    /** Height over its chord half way along. */
    double rise() {
      return -c;
    }

    /** The straight line between its ends. */
    double chordAt(int place) {
      return a + c + x(place) * b;
    }

    static Parabola through(double[] y, boolean[] used) {
      int[] places = IntStream.range(0, y.length).filter(i -> used[i]).toArray();
      double[] fit =
          new PolynomialFit(IntStream.of(places).mapToDouble(Parabola::x).toArray(), 2)
              .through(IntStream.of(places).mapToDouble(i -> y[i]).toArray());
      return new Parabola(fit[0], fit[1], fit[2]);
    }
  }
}
