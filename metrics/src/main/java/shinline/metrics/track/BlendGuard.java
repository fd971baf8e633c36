package shinline.metrics.track;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Drops sightings that are a mixture of both legs. Where the model cannot decide which leg is which
 * it answers with places between them, so the two knees come nearer to each other than they were a
 * moment before and will be a moment later; a mixture never pulls them apart. Knees that come
 * nearer because the athlete drives up do so for good, and are kept.
 *
 * @param windowS time to either side that is compared, seconds
 * @param leastShare share that a true sighting keeps of the upper envelope of the distance, on the
 *     side, before or after, where it is lower
 * @param envelope quantile that is taken for the envelope, so that one stray far sighting does not
 *     set it
 */
record BlendGuard(double windowS, double leastShare, double envelope) {
  /** That of a calibration. */
  static BlendGuard of(Calibration calibration) {
    return new BlendGuard(
        calibration.value(CalibrationKey.BLEND_WINDOW),
        calibration.value(CalibrationKey.BLEND_LEAST),
        calibration.value(CalibrationKey.BLEND_ENVELOPE));
  }

  LegIdentity.Pair clean(LegIdentity.Pair pair, double[] timeS) {
    int n = timeS.length;
    PointPath front = pair.front();
    PointPath rear = pair.rear();
    PointPath.Builder f = PointPath.ofSize(n);
    PointPath.Builder r = PointPath.ofSize(n);
    int from = 0;
    for (int i = 0; i < n; i++) {
      while (timeS[i] - timeS[from] > windowS) {
        from++;
      }
      if (!front.seen(i) || !rear.seen(i)) {
        f.put(i, front);
        r.put(i, rear);
        continue;
      }
      int to = i;
      while (to + 1 < n && timeS[to + 1] - timeS[i] <= windowS) {
        to++;
      }
      OptionalDouble before = envelope(front, rear, from, i - 1);
      OptionalDouble after = envelope(front, rear, i + 1, to);
      // Knees that pass each other in a quick drive were farther apart before, or are after; only
      // a mixture is a dip between the two.
      double apart = Math.min(before.orElse(Double.MAX_VALUE), after.orElse(Double.MAX_VALUE));
      boolean alone = before.isEmpty() && after.isEmpty();
      if (alone || front.distance(rear, i) >= leastShare * apart) {
        f.put(i, front);
        r.put(i, rear);
      }
    }
    return new LegIdentity.Pair(f.build(), r.build());
  }

  private OptionalDouble envelope(PointPath front, PointPath rear, int from, int to) {
    List<Double> around = new ArrayList<>();
    for (int k = from; k <= to; k++) {
      if (front.seen(k) && rear.seen(k)) {
        around.add(front.distance(rear, k));
      }
    }
    return RobustStatistics.quantile(around, envelope);
  }
}
