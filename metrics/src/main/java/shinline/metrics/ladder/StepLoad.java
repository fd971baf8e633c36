package shinline.metrics.ladder;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** How a step is loaded: with what, from where, and by how much a week. */
public sealed interface StepLoad {

  LoadKind kind();

  /** Body mass only. */
  record Unloaded() implements StepLoad {
    @Override
    public LoadKind kind() {
      return LoadKind.NONE;
    }
  }

  /**
   * A load that goes up by a fixed amount.
   *
   * @param weekly raise in each unit
   * @param first where it starts
   */
  record Weekly(LoadKind kind, Map<MassUnit, Mass> weekly, FirstLoad first) implements StepLoad {
    public Weekly {
      weekly = Map.copyOf(weekly);
      if (kind == LoadKind.NONE || weekly.size() != MassUnit.values().length) {
        throw new IllegalArgumentException("weekly raise of " + weekly + ", " + kind.word());
      }
    }

    /** The weekly raise in a unit. */
    public Mass weekly(MassUnit unit) {
      Mass raise = weekly.get(unit);
      if (raise == null) {
        throw new IllegalStateException("checked on construction: " + unit);
      }
      return raise;
    }
  }

  /**
   * Shares of the full-range three-rep maximum, for adults with the coach's word.
   *
   * @param release name of the release that has to be on record
   * @param maximumDays the maximum has to come from a set at most so many days old
   * @param fromPct where it starts
   * @param weeklyPct raise
   * @param shares sets and reps up to each share, ascending; the last is the end
   */
  record OfThreeRepMaximum(
      LoadKind kind,
      String release,
      int maximumDays,
      BigDecimal fromPct,
      BigDecimal weeklyPct,
      List<Share> shares)
      implements StepLoad {
    public OfThreeRepMaximum {
      shares = List.copyOf(shares);
      if (shares.isEmpty() || kind == LoadKind.NONE) {
        throw new IllegalArgumentException("shares " + shares + ", " + kind.word());
      }
    }

    /** The share beyond which no load is prescribed. */
    public BigDecimal mostPct() {
      return shares.get(shares.size() - 1).upToPct();
    }
  }

  /** Sets and reps up to a share of the three-rep maximum. */
  record Share(Scheme scheme, BigDecimal upToPct) {}

  /** Where a load starts. */
  sealed interface FirstLoad {
    /** A share of body mass in each hand where that is known, else the lightest at hand. */
    record OfBodyMass(BigDecimal pct) implements FirstLoad {}

    /** A share of what both hands held in the step before, at least the lightest at hand. */
    record OfBothHands(BigDecimal pct) implements FirstLoad {}
  }
}
