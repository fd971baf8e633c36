package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.accuracy.ClipScore.Deviation;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.interval.IntervalModel;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Fits the parts of the ± to errors of clips that the offsets were not fitted on.
 *
 * <p>The square of a ± is a sum of independent parts, one of which grows with the square of the
 * value looked for. Measured with that value at nothing and at a step, a rep tells how large it has
 * to be for the ± to reach the rep's error; the value that reaches 95 of 100 errors is taken.
 */
final class IntervalFitting {
  private static final double NINETY_FIVE = 0.95;

  private final Calibration base;

  IntervalFitting(Calibration base) {
    this.base = base;
  }

  /** What is fitted to the errors of a measure or a phase. */
  private static Optional<CalibrationKey> key(Scored scored) {
    return switch (scored) {
      case LOWERING, HOLD, DRIVE -> Optional.of(CalibrationKey.INTERVAL_PHASE_LEVEL);
      case DRIVE_SPEED -> Optional.of(CalibrationKey.INTERVAL_SPEED);
      // Too few clips have a bar.
      case BAR_SPEED -> Optional.empty();
      default -> scored.measure().map(IntervalModel::body);
    };
  }

  /** Values are rounded up to a multiple of this; also the step that they are tried with. */
  private static double step(CalibrationKey key) {
    return switch (key) {
      case INTERVAL_PHASE_LEVEL -> 0.001;
      case INTERVAL_SPEED -> 0.005;
      default -> 0.05;
    };
  }

  /** Nothing from fewer than two clips. */
  Map<CalibrationKey, Double> over(List<KnownClip> clips) {
    if (clips.size() < 2) {
      return Map.of();
    }
    Map<CalibrationKey, Double> none = new EnumMap<>(CalibrationKey.class);
    Map<CalibrationKey, Double> some = new EnumMap<>(CalibrationKey.class);
    for (Scored scored : Scored.values()) {
      key(scored)
          .ifPresent(
              key -> {
                none.put(key, 0.0);
                some.put(key, step(key));
              });
    }
    Map<CalibrationKey, List<Double>> needed = new EnumMap<>(CalibrationKey.class);
    for (KnownClip clip : clips) {
      List<KnownClip> others = clips.stream().filter(c -> c != clip).toList();
      Calibration offsets =
          base.trying(
              CalibrationFit.sensible(
                  OffsetFitting.over(others, base), new EnumMap<>(CalibrationKey.class)));
      Map<Place, Deviation> wide = new HashMap<>();
      clip.measured(offsets.trying(some)).deviations().forEach(d -> wide.put(Place.of(d), d));
      for (Deviation narrow : clip.measured(offsets.trying(none)).deviations()) {
        Deviation with = wide.get(Place.of(narrow));
        Optional<CalibrationKey> of = key(narrow.scored());
        if (with != null && of.isPresent()) {
          CalibrationKey key = of.get();
          needed
              .computeIfAbsent(key, k -> new ArrayList<>())
              .add(needed(narrow, with.plusMinus(), step(key)));
        }
      }
    }
    Map<CalibrationKey, Double> fitted = new EnumMap<>(CalibrationKey.class);
    needed.forEach((key, values) -> fitted.put(key, enough(values, step(key))));
    return fitted;
  }

  private record Place(Scored scored, int rep) {
    static Place of(Deviation deviation) {
      return new Place(deviation.scored(), deviation.rep());
    }
  }

  /** The value with which the ± just reaches the error. */
  private static double needed(Deviation narrow, double wide, double step) {
    double rest = narrow.plusMinus() * narrow.plusMinus();
    double missing = narrow.error() * narrow.error() - rest;
    double grown = wide * wide - rest;
    return missing <= 0 || grown <= 0 ? 0 : step * Math.sqrt(missing / grown);
  }

  private static double enough(List<Double> needed, double step) {
    double most = RobustStatistics.quantile(needed, NINETY_FIVE).orElseThrow();
    double steps = Math.max(1, Math.ceil(most / step - 1e-9));
    // A division gives the nearest number to a short decimal, where a product would not.
    return steps / Math.round(1 / step);
  }
}
