package shinline.metrics.track;

import java.util.ArrayList;
import java.util.List;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * Drops sightings that are a mixture of both legs. Where the model cannot decide which leg is which
 * it answers with places between them, so the two knees come nearer to each other than they were a
 * moment before and will be a moment later; a mixture never pulls them apart.
 *
 * @param windowS time to either side that is compared, seconds
 * @param leastShare share of the upper envelope of the distance that a true sighting keeps
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
      List<Double> around = new ArrayList<>();
      for (int k = from; k < n && timeS[k] - timeS[i] <= windowS; k++) {
        if (front.seen(k) && rear.seen(k)) {
          around.add(front.distance(rear, k));
        }
      }
      double most = RobustStatistics.quantile(around, envelope).orElse(0);
      if (front.distance(rear, i) >= leastShare * most) {
        f.put(i, front);
        r.put(i, rear);
      }
    }
    return new LegIdentity.Pair(f.build(), r.build());
  }
}
