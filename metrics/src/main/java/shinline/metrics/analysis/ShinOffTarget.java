package shinline.metrics.analysis;

import java.util.Map;
import java.util.Optional;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;

/** How far a shin lies outside the asked-for band by more than the margin and its own ±. */
record ShinOffTarget(double value, double limit, MeasureUnit unit, double confidence) {

  static Optional<ShinOffTarget> of(
      ShinTarget target, Target.Margin margin, Map<Measure, Reading> atBottom) {
    return target.fold(
        band ->
            beyond(
                atBottom.get(Measure.SHIN),
                band.minDeg(),
                band.maxDeg(),
                margin.deg(),
                MeasureUnit.DEGREES),
        band ->
            beyond(
                atBottom.get(Measure.KNEE_PAST_TOE),
                band.minCm(),
                band.maxCm(),
                margin.cm(),
                MeasureUnit.CENTIMETRES));
  }

  private static Optional<ShinOffTarget> beyond(
      @org.jspecify.annotations.Nullable Reading reading,
      double min,
      double max,
      double margin,
      MeasureUnit unit) {
    if (reading == null) {
      return Optional.empty();
    }
    return reading
        .measured()
        .flatMap(
            m -> {
              double over = Math.max(min - m.value(), m.value() - max);
              if (over <= Math.max(margin, m.plusMinus() / 2)) {
                return Optional.empty();
              }
              return Optional.of(
                  new ShinOffTarget(
                      m.value(),
                      m.value() > max ? max : min,
                      unit,
                      Math.min(1, 0.5 + (over - margin) / (2 * m.plusMinus() + 1e-9))));
            });
  }
}
