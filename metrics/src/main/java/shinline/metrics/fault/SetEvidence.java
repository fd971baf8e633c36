package shinline.metrics.fault;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.target.TempoTarget;

/**
 * What a rep is held against: the set's own reps, the limits of a calibration, and the tempo asked
 * for.
 *
 * @param reps at least one, in their order
 * @param tempoMarginS an asked-for time may be missed by as much
 * @param pitchDeg how far the camera looked down, minus for up
 */
record SetEvidence(
    List<RepEvidence> reps,
    Calibration calibration,
    TempoTarget tempo,
    double tempoMarginS,
    double pitchDeg) {
  SetEvidence {
    reps = List.copyOf(reps);
  }

  /** A limit, in its key's unit. */
  double limit(CalibrationKey key) {
    return calibration.value(key);
  }

  RepEvidence first() {
    return reps.get(0);
  }

  /** The middle one of what was seen; empty when nothing was. */
  OptionalDouble median(Function<RepEvidence, OptionalDouble> of) {
    return RobustStatistics.median(
        reps.stream().map(of).flatMapToDouble(OptionalDouble::stream).toArray());
  }

  /** The greatest of the set. */
  double most(ToDoubleFunction<RepEvidence> of) {
    return reps.stream().mapToDouble(of).max().orElse(0);
  }

  /** The second most of three reps or more: one rep whose begin was misread sets no measure. */
  double usualMost(ToDoubleFunction<RepEvidence> of) {
    double[] rising = reps.stream().mapToDouble(of).sorted().toArray();
    return rising.length < 3 ? most(of) : rising[rising.length - 2];
  }

  double quickestDriveS() {
    return reps.stream().mapToDouble(RepEvidence::driveS).min().orElse(0);
  }

  /** The greatest hip travel of the set's first half, and of two reps at least. */
  double deepestAtFirst() {
    return reps.stream()
        .limit(Math.max(2, reps.size() / 2))
        .mapToDouble(RepEvidence::travel)
        .max()
        .orElse(0);
  }
}
