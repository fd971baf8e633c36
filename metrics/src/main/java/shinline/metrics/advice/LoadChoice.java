package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.Optional;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Rack;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.TrainingHistory;

/** Chooses loads among those at hand. */
record LoadChoice(Ladder ladder) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** A share of a load, rounded down to what is at hand, at least the lightest. */
  TrainingLoad shareOf(TrainingLoad load, BigDecimal pct) {
    Rack rack = rack(load);
    return load.with(rack.atMost(load.mass().percent(pct)).orElse(rack.lightest()));
  }

  /** A share of a load as {@link #shareOf}; empty when that is no lower. */
  Optional<TrainingLoad> lower(TrainingLoad load, BigDecimal pct) {
    return Optional.of(shareOf(load, pct)).filter(l -> l.mass().compareTo(load.mass()) < 0);
  }

  /** The heaviest at hand up to a limit, when that is above the load. */
  Optional<TrainingLoad> raised(TrainingLoad load, Mass limit) {
    return rack(load).atMost(limit).filter(m -> m.compareTo(load.mass()) > 0).map(load::with);
  }

  Optional<TrainingLoad> nextAbove(TrainingLoad load) {
    return rack(load).nextAbove(load.mass()).map(load::with);
  }

  /** A mass of a kind, rounded down to what is at hand, at least the lightest. */
  TrainingLoad roundedDown(Mass mass, LoadKind kind) {
    Rack rack = ladder.atHand().of(kind, mass.unit());
    return new TrainingLoad(rack.atMost(mass).orElse(rack.lightest()), kind, Optional.empty());
  }

  /**
   * The load a step starts with.
   *
   * @param before the load in the step before, where there was one
   */
  TrainingLoad first(
      StepLoad.Weekly loading, Optional<TrainingLoad> before, TrainingHistory history) {
    MassUnit unit = before.map(l -> l.mass().unit()).orElseGet(() -> unitOf(history));
    Optional<Mass> wanted =
        loading.first() instanceof StepLoad.FirstLoad.OfBothHands hands
            ? before.map(l -> held(l).percent(hands.pct()))
            : bodyMassShare(((StepLoad.FirstLoad.OfBodyMass) loading.first()).pct(), unit, history);
    return roundedDown(wanted.orElse(Mass.zero(unit)), loading.kind());
  }

  private static Mass held(TrainingLoad load) {
    return load.kind() == LoadKind.EACH_HAND ? load.mass().times(TWO) : load.mass();
  }

  private static Optional<Mass> bodyMassShare(
      BigDecimal pct, MassUnit unit, TrainingHistory history) {
    return history.profile().bodyMass().map(m -> m.percent(pct).in(unit));
  }

  /** The unit of the athlete's last load, else the ladder's. */
  private MassUnit unitOf(TrainingHistory history) {
    return history.sets().stream()
        .map(RecordedSet::entry)
        .flatMap(e -> e.load().stream())
        .map(l -> l.mass().unit())
        .reduce((a, b) -> b)
        .orElse(ladder.unit());
  }

  private Rack rack(TrainingLoad load) {
    return ladder.atHand().of(load.kind(), load.mass().unit());
  }
}
