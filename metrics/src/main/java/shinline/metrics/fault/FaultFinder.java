package shinline.metrics.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import shinline.metrics.result.FlagKind;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.track.RobustStatistics;

/**
 * Points at faults: each rep against fixed limits and against the set's own first reps.
 * Definitions, sources and blind spots are in docs/measures.md.
 */
public final class FaultFinder {
  private final FaultLimits limits;
  private final TempoTarget tempo;
  private final double tempoMarginS;

  public FaultFinder(FaultLimits limits, TempoTarget tempo, double tempoMarginS) {
    this.limits = limits;
    this.tempo = tempo;
    this.tempoMarginS = tempoMarginS;
  }

  /** A fault before its frame is looked up. {@code shareOfStature} values wait for a scale. */
  public record Fault(
      FlagKind kind,
      double atS,
      double value,
      double limit,
      MeasureUnit unit,
      boolean shareOfStature) {

    /** How far beyond the limit, 0.5 at the limit to 1 at half as much again. */
    public double confidence() {
      double beyond = Math.abs(value - limit) / Math.max(1e-9, Math.abs(limit));
      return Math.min(1, 0.5 + beyond);
    }
  }

  /** Faults of each rep, in the order of the reps. */
  public List<List<Fault>> find(List<RepEvidence> reps) {
    List<List<Fault>> all = new ArrayList<>();
    for (RepEvidence rep : reps) {
      List<Fault> faults = new ArrayList<>();
      back(rep, reps, faults);
      foot(rep, reps, faults);
      rangeAndTempo(rep, reps, faults);
      all.add(faults);
    }
    return all;
  }

  private void back(RepEvidence rep, List<RepEvidence> reps, List<Fault> faults) {
    RepEvidence first = reps.get(0);
    if (rep.leanBottomDeg().isPresent() && first.leanBottomDeg().isPresent()) {
      double growth = rep.leanBottomDeg().getAsDouble() - first.leanBottomDeg().getAsDouble();
      if (growth > limits.leanGrowthDeg()) {
        faults.add(degrees(FlagKind.LEAN_GROWS, rep.bottomS(), growth, limits.leanGrowthDeg()));
      } else if (rep.leanTopDeg().isPresent()) {
        double change = rep.leanBottomDeg().getAsDouble() - rep.leanTopDeg().getAsDouble();
        if (change > limits.leanChangeDeg()) {
          faults.add(degrees(FlagKind.LEAN_GROWS, rep.bottomS(), change, limits.leanChangeDeg()));
        }
      }
    }
    above(rep.leanGainDriveDeg(), limits.hipsFirstDeg())
        .ifPresent(
            v ->
                faults.add(
                    degrees(FlagKind.HIPS_FIRST, rep.leanGainAtS(), v, limits.hipsFirstDeg())));
    hinge(rep, first, faults);
    round(rep, faults);
  }

  /**
   * Hips go back while the knee stays: shin more upright and trunk no longer about parallel to it.
   */
  private void hinge(RepEvidence rep, RepEvidence first, List<Fault> faults) {
    if (rep.leanBottomDeg().isEmpty()
        || rep.shinDeg().isEmpty()
        || rep.hipAhead().isEmpty()
        || first.leanBottomDeg().isEmpty()
        || first.shinDeg().isEmpty()
        || first.hipAhead().isEmpty()) {
      return;
    }
    double opened =
        (rep.leanBottomDeg().getAsDouble() - rep.shinDeg().getAsDouble())
            - (first.leanBottomDeg().getAsDouble() - first.shinDeg().getAsDouble());
    double back = first.hipAhead().getAsDouble() - rep.hipAhead().getAsDouble();
    if (opened > limits.hingeDeg() && back > limits.hipBackShare()) {
      faults.add(degrees(FlagKind.HINGE_SHIFT, rep.bottomS(), opened, limits.hingeDeg()));
    }
  }

  private void round(RepEvidence rep, List<Fault> faults) {
    if (rep.back().isEmpty()) {
      return;
    }
    double rounder = rep.back().get().more();
    if (rounder > limits.roundShare()) {
      faults.add(
          percent(FlagKind.BACK_ROUNDS, rep.back().get().atS(), rounder, limits.roundShare()));
    } else if (-rounder > limits.archShare()) {
      faults.add(
          percent(FlagKind.BACK_ARCHES, rep.back().get().atS(), -rounder, limits.archShare()));
    }
  }

  private void foot(RepEvidence rep, List<RepEvidence> reps, List<Fault> faults) {
    above(rep.heelRise(), limits.heelRiseShare())
        .ifPresent(
            v -> faults.add(share(FlagKind.HEEL_RISE, rep.heelAtS(), v, limits.heelRiseShare())));
    above(rep.forefootRise(), limits.forefootRiseShare())
        .ifPresent(
            v ->
                faults.add(
                    share(
                        FlagKind.FOREFOOT_RISE, rep.forefootAtS(), v, limits.forefootRiseShare())));
    OptionalDouble usualOpen = middle(reps, RepEvidence::rearOpenDeg);
    if (rep.rearOpenDeg().isPresent() && usualOpen.isPresent()) {
      double more = rep.rearOpenDeg().getAsDouble() - usualOpen.getAsDouble();
      if (more > limits.rearPushDeg()) {
        faults.add(degrees(FlagKind.REAR_PUSH, rep.bottomEndS(), more, limits.rearPushDeg()));
      }
    }
    OptionalDouble usualWobble = middle(reps, RepEvidence::wobble);
    if (rep.wobble().isPresent() && usualWobble.isPresent()) {
      double limit = Math.max(limits.wobbleShare(), 1.8 * usualWobble.getAsDouble());
      if (rep.wobble().getAsDouble() > limit) {
        faults.add(share(FlagKind.WOBBLE, rep.bottomS(), rep.wobble().getAsDouble(), limit));
      }
    }
  }

  private void rangeAndTempo(RepEvidence rep, List<RepEvidence> reps, List<Fault> faults) {
    double deepest =
        reps.stream()
            .limit(Math.max(2, reps.size() / 2))
            .mapToDouble(RepEvidence::travel)
            .max()
            .orElse(0);
    double depth = rep.travel() / deepest;
    if (depth < limits.shallowShare()) {
      faults.add(percent(FlagKind.SHALLOW, rep.bottomS(), depth, limits.shallowShare()));
    }
    double slowest = reps.stream().mapToDouble(RepEvidence::loweringS).max().orElse(0);
    double lowering =
        limit(tempo.lowering().map(p -> p.minS() - tempoMarginS), slowest, limits.rushedShare());
    if (rep.loweringS() < lowering || rep.loweringS() < limits.rushedS()) {
      faults.add(
          seconds(
              FlagKind.LOWERING_RUSHED,
              (rep.startS() + rep.bottomStartS()) / 2,
              rep.loweringS(),
              Math.max(lowering, limits.rushedS())));
    }
    double longest = reps.stream().mapToDouble(RepEvidence::holdS).max().orElse(0);
    double hold =
        limit(
            tempo.hold().map(p -> p.minS() - tempoMarginS),
            longest >= limits.realHoldS() ? longest : 0,
            limits.holdShare());
    if (rep.holdS() < hold) {
      faults.add(seconds(FlagKind.HOLD_SKIPPED, rep.bottomS(), rep.holdS(), hold));
    }
    double quickest = reps.stream().mapToDouble(RepEvidence::driveS).min().orElse(0);
    double best =
        reps.stream()
            .map(RepEvidence::driveSpeed)
            .flatMapToDouble(OptionalDouble::stream)
            .max()
            .orElse(0);
    if (rep.driveSpeed().isPresent() && best > 0) {
      double speed = rep.driveSpeed().getAsDouble() / best;
      // A shallow rep is slower over a shorter way: only a drive that also takes longer is slow.
      if (speed < limits.driveShare() && rep.driveS() > quickest / limits.driveShare()) {
        faults.add(
            percent(
                FlagKind.DRIVE_SLOW,
                (rep.bottomEndS() + rep.endS()) / 2,
                speed,
                limits.driveShare()));
      }
    }
  }

  private static double limit(Optional<Double> asked, double ofSet, double share) {
    return asked.map(a -> Math.max(0, a)).orElse(ofSet * share);
  }

  private static Optional<Double> above(OptionalDouble value, double limit) {
    return value.isPresent() && value.getAsDouble() > limit
        ? Optional.of(value.getAsDouble())
        : Optional.empty();
  }

  private static OptionalDouble middle(
      List<RepEvidence> reps, Function<RepEvidence, OptionalDouble> of) {
    return RobustStatistics.median(
        reps.stream().map(of).flatMapToDouble(OptionalDouble::stream).toArray());
  }

  private static Fault degrees(FlagKind kind, double atS, double value, double limit) {
    return new Fault(kind, atS, value, limit, MeasureUnit.DEGREES, false);
  }

  private static Fault seconds(FlagKind kind, double atS, double value, double limit) {
    return new Fault(kind, atS, value, limit, MeasureUnit.SECONDS, false);
  }

  private static Fault percent(FlagKind kind, double atS, double share, double limit) {
    return new Fault(kind, atS, 100 * share, 100 * limit, MeasureUnit.PERCENT, false);
  }

  private static Fault share(FlagKind kind, double atS, double value, double limit) {
    return new Fault(kind, atS, value, limit, MeasureUnit.CENTIMETRES, true);
  }
}
