package shinline.metrics.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.Side;

/** Outlines of trunks whose shape is known. */
public final class BackMaker {
  private BackMaker() {}

  /**
   * An outline whose back edge runs at a given distance from the line between hip and shoulder.
   *
   * @param leanRad of the trunk, + forward
   * @param out distance at each share of the line, in trunk lengths
   */
  public static TrunkOutline outline(
      double timeS, Side facing, double trunkPx, double leanRad, DoubleUnaryOperator out) {
    int forward = facing == Side.RIGHT ? 1 : -1;
    Point hip = new Point(500, 300);
    double ux = forward * Math.sin(leanRad);
    double uy = Math.cos(leanRad);
    List<Optional<Point>> back = new ArrayList<>();
    for (int i = 0; i < TrunkOutline.PLACES; i++) {
      double s = TrunkOutline.place(i);
      double d = out.applyAsDouble(s);
      back.add(
          Optional.of(
              hip.plus(
                  trunkPx * (s * ux - forward * d * uy), trunkPx * (s * uy + forward * d * ux))));
    }
    List<Optional<Point>> front = Collections.nCopies(TrunkOutline.PLACES, Optional.empty());
    return new TrunkOutline(
        (int) Math.round(30 * timeS),
        timeS,
        hip,
        hip.plus(trunkPx * ux, trunkPx * uy),
        facing == Side.RIGHT ? back : front,
        facing == Side.RIGHT ? front : back);
  }

  /** The same without the places that a test hides. */
  public static TrunkOutline hiding(TrunkOutline whole, java.util.function.IntPredicate hidden) {
    return new TrunkOutline(
        whole.frame(),
        whole.timeS(),
        whole.hip(),
        whole.shoulder(),
        hiding(whole.left(), hidden),
        hiding(whole.right(), hidden));
  }

  private static List<Optional<Point>> hiding(
      List<Optional<Point>> edge, java.util.function.IntPredicate hidden) {
    List<Optional<Point>> left = new ArrayList<>();
    for (int i = 0; i < edge.size(); i++) {
      left.add(hidden.test(i) ? Optional.empty() : edge.get(i));
    }
    return left;
  }

  /**
   * The arc of a circle that rises over its chord by {@code rise}, from the lowest to the highest
   * place; a straight edge for 0, hollow below it.
   */
  public static DoubleUnaryOperator arc(double away, double rise) {
    double half = (TrunkOutline.place(TrunkOutline.PLACES - 1) - TrunkOutline.place(0)) / 2;
    double middle = TrunkOutline.place(0) + half;
    if (rise == 0) {
      return s -> away;
    }
    double h = Math.abs(rise);
    double radius = (half * half + h * h) / (2 * h);
    return s ->
        away
            + Math.signum(rise)
                * (Math.sqrt(radius * radius - (s - middle) * (s - middle)) - (radius - h));
  }

  /** One look in standing and one at the bottom of each rep of a set, with its back faults. */
  public static List<TrunkOutline> of(SplitSquat motion, Side facing) {
    List<TrunkOutline> looks = new ArrayList<>();
    for (int k = 0; k < motion.reps().size(); k++) {
      RepPlan rep = motion.reps().get(k);
      double startS = motion.repStartS(k);
      double rise = rep.amount(FlagKind.BACK_ROUNDS) - rep.amount(FlagKind.BACK_ARCHES);
      looks.add(outline(startS - 0.1, facing, 130, 0.1, arc(0.2, -0.06)));
      looks.add(
          outline(
              startS + rep.loweringS() + rep.holdS() / 2,
              facing,
              120,
              Math.toRadians(rep.trunkDeg()),
              arc(0.2, -0.06 + rise)));
    }
    return looks;
  }
}
