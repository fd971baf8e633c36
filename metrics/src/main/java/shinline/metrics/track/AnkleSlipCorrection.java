package shinline.metrics.track;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Puts a front ankle back that the model let slide along the shin, as it does with dark shoes on a
 * dark floor. The foot is planted and the shank keeps its length: an ankle that is off its place
 * <em>and</em> makes the shank too short or too long, where the place itself fits, was misplaced. A
 * heel that really rises keeps the shank's length and is left alone.
 *
 * @param ankle the front ankle, mended
 * @param heel the front heel, without the frames in which it slid with the ankle
 */
record AnkleSlipCorrection(PointPath ankle, PointPath heel) {
  /** Fewer sightings do not tell a shank's length. */
  private static final int FEWEST = 5;

  static AnkleSlipCorrection mend(
      PointPath ankle,
      PointPath heel,
      Point anklePlace,
      Point heelPlace,
      PointPath leftKnee,
      PointPath rightKnee,
      double bodyPx,
      Calibration calibration) {
    double slack = calibration.value(CalibrationKey.FOOT_AT_PLACE) * bodyPx;
    double sameLength = calibration.value(CalibrationKey.FOOT_SAME_LENGTH);
    double trust = calibration.value(CalibrationKey.FOOT_TRUST);
    OptionalDouble shank = shank(ankle, anklePlace, leftKnee, rightKnee, slack);
    if (shank.isEmpty()) {
      return new AnkleSlipCorrection(ankle, heel);
    }
    double length = shank.getAsDouble();
    int n = ankle.size();
    PointPath.Builder mendedAnkle = PointPath.ofSize(n);
    PointPath.Builder mendedHeel = PointPath.ofSize(n);
    for (int i = 0; i < n; i++) {
      double atPlace = misfit(leftKnee, rightKnee, anklePlace, i, length);
      boolean slid =
          ankle.seen(i)
              && ankle.at(i).distanceTo(anklePlace) > slack
              && misfit(leftKnee, rightKnee, ankle.at(i), i, length) > sameLength + atPlace;
      if (atPlace < sameLength && (slid || !ankle.seen(i))) {
        double own = ankle.seen(i) ? ankle.confidence(i) : 1;
        mendedAnkle.put(i, anklePlace.x(), anklePlace.y(), trust * own);
      } else {
        mendedAnkle.put(i, ankle);
        slid = false;
      }
      if (!slid || (heel.seen(i) && heel.at(i).distanceTo(heelPlace) <= slack)) {
        mendedHeel.put(i, heel);
      }
    }
    return new AnkleSlipCorrection(mendedAnkle.build(), mendedHeel.build());
  }

  /** The shank's length, pixels, where the ankle is at its place: with the knee that is ahead. */
  private static OptionalDouble shank(
      PointPath ankle, Point place, PointPath leftKnee, PointPath rightKnee, double slack) {
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < ankle.size(); i++) {
      if (ankle.seen(i) && ankle.at(i).distanceTo(place) <= slack) {
        PointPath knee = ahead(leftKnee, rightKnee, i);
        if (knee != null) {
          lengths.add(knee.distance(ankle, i));
        }
      }
    }
    return lengths.size() < FEWEST ? OptionalDouble.empty() : RobustStatistics.median(lengths);
  }

  /** How far a foot here is off the shank's length, share of it; large when no knee is seen. */
  private static double misfit(
      PointPath leftKnee, PointPath rightKnee, Point foot, int i, double length) {
    PointPath knee = ahead(leftKnee, rightKnee, i);
    return knee == null ? 1 : Math.abs(knee.at(i).distanceTo(foot) / length - 1);
  }

  private static @Nullable PointPath ahead(PointPath left, PointPath right, int i) {
    if (left.seen(i) && right.seen(i)) {
      return left.x(i) > right.x(i) ? left : right;
    }
    return left.seen(i) ? left : right.seen(i) ? right : null;
  }
}
