package shinline.cli.format;

import java.util.Optional;
import shinline.metrics.result.Measure;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

/** What was asked for; what is empty is not judged. */
public record ResultTarget(
    Optional<String> shin,
    Optional<ShinBand> shinBand,
    String depth,
    DepthLimits depthLimits,
    Tempo tempo,
    Optional<Band> trunkLeanDeg,
    Target.Margin margin) {
  public record ShinBand(String measure, Optional<Double> min, Optional<Double> max) {
    private static ShinBand of(Measure measure, double min, double max) {
      Band band = Band.of(min, max);
      return new ShinBand(measure.jsonName(), band.min(), band.max());
    }
  }

  public record DepthLimits(
      Optional<Double> maxThighDeg,
      Optional<Double> maxRearKneeCm,
      Optional<Double> minHipTravelCm,
      boolean shortRange) {}

  public record Tempo(
      Optional<Band> loweringS, Optional<Band> holdS, Optional<Band> driveS, Optional<Band> topS) {}

  /** An open end is infinite in a target and empty here: JSON has no infinity. */
  public record Band(Optional<Double> min, Optional<Double> max) {
    private static Band of(double min, double max) {
      return new Band(
          Optional.of(min).filter(Double::isFinite), Optional.of(max).filter(Double::isFinite));
    }

    private static Band of(TempoTarget.Phase phase) {
      return of(phase.minS(), phase.maxS());
    }
  }

  static ResultTarget of(Target target) {
    DepthTarget depth = target.depth();
    TempoTarget tempo = target.tempo();
    return new ResultTarget(
        target.shin().map(ShinTarget::name),
        target
            .shin()
            .map(
                shin ->
                    shin.fold(
                        a -> ShinBand.of(Measure.SHIN, a.minDeg(), a.maxDeg()),
                        d -> ShinBand.of(Measure.KNEE_PAST_TOE, d.minCm(), d.maxCm()))),
        depth.name(),
        new DepthLimits(
            depth.maxThighDeg(),
            depth.maxRearKneeCm(),
            depth.minHipTravelCm(),
            depth.shortRangeAsked()),
        new Tempo(
            tempo.lowering().map(Band::of),
            tempo.hold().map(Band::of),
            tempo.drive().map(Band::of),
            tempo.top().map(Band::of)),
        target.trunk().map(t -> Band.of(t.minDeg(), t.maxDeg())),
        target.margin());
  }
}
