package shinline.metrics.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

/**
 * One thing a target asks for. Verdicts, the columns of tables and the words for a target all
 * follow from the one list, so that nothing is judged that is not told.
 */
public sealed interface Asked {

  /** A value within limits. */
  record Within(Limit limit) implements Asked {}

  /** A rep of that range. */
  record OfRange(Finding.Range range) implements Asked {}

  default <T> T fold(Function<Within, T> within, Function<OfRange, T> ofRange) {
    return this instanceof Within w ? within.apply(w) : ofRange.apply((OfRange) this);
  }

  /** What a limit is set on; empty for the range. */
  default Optional<Aspect> aspect() {
    return fold(within -> Optional.of(within.limit().aspect()), range -> Optional.empty());
  }

  /** All that a target asks for, in the order in which it is told; empty for measuring alone. */
  static List<Asked> of(Target target) {
    List<Asked> asked = new ArrayList<>();
    target
        .shin()
        .ifPresent(
            shin ->
                asked.add(
                    shin.fold(
                        band ->
                            degrees(
                                target,
                                Aspect.SHIN,
                                Optional.of(band.name()),
                                band.minDeg(),
                                band.maxDeg()),
                        band ->
                            centimetres(
                                target,
                                Aspect.KNEE,
                                Optional.of(band.name()),
                                band.minCm(),
                                band.maxCm()))));
    depth(target, asked);
    target
        .trunk()
        .ifPresent(
            band ->
                asked.add(
                    degrees(target, Aspect.TRUNK, Optional.empty(), band.minDeg(), band.maxDeg())));
    phase(target, Aspect.LOWERING, target.tempo().lowering(), asked);
    phase(target, Aspect.HOLD, target.tempo().hold(), asked);
    phase(target, Aspect.DRIVE, target.tempo().drive(), asked);
    phase(target, Aspect.TOP, target.tempo().top(), asked);
    return List.copyOf(asked);
  }

  private static void depth(Target target, List<Asked> asked) {
    DepthTarget depth = target.depth();
    if (depth.shortRangeAsked()) {
      asked.add(new OfRange(Finding.Range.SHORT));
    }
    // A coach's own depth limits speak for themselves: only the house's "full" rules out short
    // range as such.
    if (depth.equals(DepthTarget.full())) {
      asked.add(new OfRange(Finding.Range.FULL));
    }
    double open = Double.POSITIVE_INFINITY;
    depth
        .maxThighDeg()
        .ifPresent(max -> asked.add(degrees(target, Aspect.THIGH, Optional.empty(), -open, max)));
    depth
        .maxRearKneeCm()
        .ifPresent(
            max -> asked.add(centimetres(target, Aspect.REAR_KNEE, Optional.empty(), -open, max)));
    depth
        .minHipTravelCm()
        .ifPresent(
            min -> asked.add(centimetres(target, Aspect.HIP_TRAVEL, Optional.empty(), min, open)));
  }

  private static void phase(
      Target target, Aspect aspect, Optional<TempoTarget.Phase> phase, List<Asked> asked) {
    phase.ifPresent(
        p ->
            asked.add(
                new Within(
                    new Limit(
                        aspect,
                        Optional.empty(),
                        // No phase lasts less than nothing, so a lower end of 0 is an open one.
                        p.minS() > 0 ? p.minS() : Double.NEGATIVE_INFINITY,
                        p.maxS(),
                        target.margin().s(),
                        MeasureUnit.SECONDS))));
  }

  private static Asked degrees(
      Target target, Aspect aspect, Optional<String> band, double min, double max) {
    return new Within(
        new Limit(aspect, band, min, max, target.margin().deg(), MeasureUnit.DEGREES));
  }

  private static Asked centimetres(
      Target target, Aspect aspect, Optional<String> band, double min, double max) {
    return new Within(
        new Limit(aspect, band, min, max, target.margin().cm(), MeasureUnit.CENTIMETRES));
  }
}
