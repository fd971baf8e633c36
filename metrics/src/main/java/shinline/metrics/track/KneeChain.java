package shinline.metrics.track;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Gives each frame's two knee sightings to the front and the rear leg: the cheapest chain of
 * choices over the clip (Viterbi). A choice costs by how far it makes a shank longer or shorter
 * than it is, by knees in the wrong order, by a leg left without a knee, and by a knee that jumps.
 */
record KneeChain(PointPath front, PointPath rear) {

  /** What the two sightings, labelled left and right, may be. */
  private enum Choice {
    LEFT_IS_FRONT,
    RIGHT_IS_FRONT,
    BOTH_FRONT,
    BOTH_REAR
  }

  private static final double WRONG_ORDER = 6;
  private static final double NO_KNEE = 4;
  private static final double APART_YET_ONE = 8;
  private static final double CHANGE = 0.5;
  private static final double CAP = 9;
  // A knee moves at most about one stature a second, even in a fast drive.
  private static final double FASTEST = 1.0;

  static KneeChain solve(
      PointPath left,
      PointPath right,
      FootPlants ankles,
      @Nullable PointPath frontAnkle,
      @Nullable PointPath rearAnkle,
      double[] timeS,
      double bodyPx,
      LegIdentityParameters parameters,
      LegVotes votes) {
    if (frontAnkle == null || rearAnkle == null) {
      throw new IllegalArgumentException("ankles come before knees");
    }
    int n = left.size();
    double frontShank = shank(left, right, frontAnkle, true, bodyPx, parameters);
    double rearShank = shank(left, right, rearAnkle, false, bodyPx, parameters);
    Choice[] choices = Choice.values();
    double[][] cost = new double[n][choices.length];
    int[][] from = new int[n][choices.length];
    PointPath[][] frontOf = new PointPath[n][choices.length];
    PointPath[][] rearOf = new PointPath[n][choices.length];
    for (int i = 0; i < n; i++) {
      for (Choice choice : choices) {
        int c = choice.ordinal();
        double own = 0;
        if (left.seen(i) && right.seen(i)) {
          double lf = stretch(left, frontAnkle, i, frontShank, bodyPx, parameters);
          double rf = stretch(right, frontAnkle, i, frontShank, bodyPx, parameters);
          double lr = stretch(left, rearAnkle, i, rearShank, bodyPx, parameters);
          double rr = stretch(right, rearAnkle, i, rearShank, bodyPx, parameters);
          boolean apart = left.distance(right, i) > parameters.apart() * bodyPx;
          double one = NO_KNEE + (apart ? APART_YET_ONE : 0);
          switch (choice) {
            case LEFT_IS_FRONT -> {
              own = lf + rr + order(left, right, i, bodyPx);
              frontOf[i][c] = left;
              rearOf[i][c] = right;
            }
            case RIGHT_IS_FRONT -> {
              own = rf + lr + order(right, left, i, bodyPx);
              frontOf[i][c] = right;
              rearOf[i][c] = left;
            }
            case BOTH_FRONT -> {
              own = Math.min(lf, rf) + one;
              frontOf[i][c] = lf <= rf ? left : right;
            }
            case BOTH_REAR -> {
              own = Math.min(lr, rr) + one;
              rearOf[i][c] = lr <= rr ? left : right;
            }
          }
        }
        double best = Double.POSITIVE_INFINITY;
        for (int p = 0; p < choices.length; p++) {
          double step = i == 0 ? 0 : cost[i - 1][p] + (p == c ? 0 : CHANGE);
          if (i > 0) {
            step += jump(frontOf[i - 1][p], i - 1, frontOf[i][c], i, timeS, bodyPx);
            step += jump(rearOf[i - 1][p], i - 1, rearOf[i][c], i, timeS, bodyPx);
          }
          if (step < best) {
            best = step;
            from[i][c] = p;
          }
        }
        cost[i][c] = best + own;
      }
    }
    PointPath.Builder front = PointPath.ofSize(n);
    PointPath.Builder rear = PointPath.ofSize(n);
    int c = n == 0 ? 0 : cheapest(cost[n - 1]);
    for (int i = n - 1; i >= 0; i--) {
      PointPath f = frontOf[i][c];
      PointPath r = rearOf[i][c];
      if (f != null && fits(f, frontAnkle, ankles.front(), i, frontShank, bodyPx, parameters)) {
        front.put(i, f);
      }
      if (r != null
          && (!rearAnkle.seen(i)
              || fits(r, rearAnkle, ankles.rear(), i, rearShank, bodyPx, parameters))) {
        rear.put(i, r);
      }
      if (f != null && r != null) {
        votes.add(i, f == left ? Side.LEFT : Side.RIGHT, f.distance(r, i) / bodyPx);
      }
      c = from[i][c];
    }
    return new KneeChain(front.build(), rear.build());
  }

  private static boolean fits(
      PointPath knee,
      PointPath ankle,
      Point plant,
      int i,
      double length,
      double bodyPx,
      LegIdentityParameters parameters) {
    Point foot = ankle.seen(i) ? ankle.at(i) : plant;
    return Math.abs(knee.at(i).distanceTo(foot) - length) <= parameters.offLength() * bodyPx;
  }

  private static int cheapest(double[] costs) {
    int best = 0;
    for (int k = 1; k < costs.length; k++) {
      if (costs[k] < costs[best]) {
        best = k;
      }
    }
    return best;
  }

  /**
   * A shank's length: from the knee that is ahead (front) or behind (rear) where both are apart.
   */
  private static double shank(
      PointPath left,
      PointPath right,
      PointPath ankle,
      boolean ahead,
      double bodyPx,
      LegIdentityParameters parameters) {
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < left.size(); i++) {
      if (left.seen(i)
          && right.seen(i)
          && ankle.seen(i)
          && Math.abs(left.x(i) - right.x(i)) > parameters.apart() * bodyPx) {
        PointPath knee = left.x(i) > right.x(i) == ahead ? left : right;
        lengths.add(knee.distance(ankle, i));
      }
    }
    return RobustStatistics.median(lengths).orElse(0.245 * bodyPx);
  }

  private static double stretch(
      PointPath knee,
      PointPath ankle,
      int i,
      double length,
      double bodyPx,
      LegIdentityParameters parameters) {
    if (!ankle.seen(i)) {
      return 1;
    }
    double z = (knee.distance(ankle, i) - length) / (parameters.lengthSpread() * bodyPx);
    return Math.min(CAP, z * z / 2);
  }

  private static double order(PointPath front, PointPath rear, int i, double bodyPx) {
    return front.x(i) < rear.x(i) - 0.01 * bodyPx ? WRONG_ORDER : 0;
  }

  private static double jump(
      @Nullable PointPath before,
      int i,
      @Nullable PointPath after,
      int j,
      double[] timeS,
      double bodyPx) {
    if (before == null || after == null) {
      return 0;
    }
    double way = Math.hypot(after.x(j) - before.x(i), after.y(j) - before.y(i));
    double z = way / (FASTEST * bodyPx * (timeS[j] - timeS[i]) + 0.01 * bodyPx);
    return Math.min(CAP, z * z / 2);
  }
}
