package shinline.metrics.progress;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.load.Comparison;
import shinline.metrics.track.Side;
import shinline.metrics.training.RecordedSet;

/**
 * Left against right, in the latest session of each leg with the same asked for.
 *
 * @param left of the left leg
 * @param right of the right leg
 */
public record Sides(Followed followed, SessionValue left, SessionValue right) {
  /**
   * Left against right times 100 beyond which a rear-foot-elevated five-rep maximum may truly
   * differ, per cent (Helme 2019, JSCR 33:3269-3275). For nothing else.
   */
  public static final double FIVE_REP_LOW_PCT = 96.54;

  /** As {@link #FIVE_REP_LOW_PCT}, the upper end. */
  public static final double FIVE_REP_HIGH_PCT = 103.46;

  /** Empty where a leg has no value, or the two were asked for something else. */
  static Optional<Sides> of(Followed followed, LegProgress left, LegProgress right) {
    Optional<Stretch> one = left.latest(followed);
    Optional<Stretch> other = right.latest(followed);
    return one.isPresent() && other.isPresent() && one.get().asking().equals(other.get().asking())
        ? Optional.of(new Sides(followed, one.get().last(), other.get().last()))
        : Optional.empty();
  }

  /** Left less right. */
  public double difference() {
    return left.value() - right.value();
  }

  /**
   * Smallest difference between the legs that is real with 95 % confidence, from the whole ± of
   * both: the two legs are seen from different sides, so the body's bias does not cancel. Empty for
   * masses and where a ± is lacking.
   */
  public OptionalDouble realDifference() {
    OptionalDouble one = left.amount().forSides();
    OptionalDouble other = right.amount().forSides();
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(Math.hypot(one.getAsDouble(), other.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * Weaker as per cent of the stronger (weak/strong x 100), for what is a strength: masses and
   * speeds.
   */
  public OptionalDouble weakerPct() {
    boolean strength =
        followed.isMass() || followed == Followed.DRIVE_SPEED || followed == Followed.BAR_SPEED;
    return strength && Math.max(left.value(), right.value()) > 0
        ? OptionalDouble.of(Comparison.weakerOfStrongerPct(left.value(), right.value()))
        : OptionalDouble.empty();
  }

  /** The side with less; empty when they are equal. */
  public Optional<Side> weaker() {
    return difference() == 0
        ? Optional.empty()
        : Optional.of(difference() < 0 ? Side.LEFT : Side.RIGHT);
  }

  /**
   * Five-rep tests of both legs in the same step, the one setting Helme's limits were found in if
   * the rear foot was raised.
   *
   * @param leftOfRightPct left as per cent of right
   */
  public record FiveRepTest(RecordedSet left, RecordedSet right, double leftOfRightPct) {
    public boolean beyondLimits() {
      return leftOfRightPct < FIVE_REP_LOW_PCT || leftOfRightPct > FIVE_REP_HIGH_PCT;
    }

    public double weakerPct() {
      return Comparison.weakerOfStrongerPct(leftOfRightPct, 100);
    }
  }

  static Optional<FiveRepTest> fiveRepTest(LegProgress left, LegProgress right) {
    Optional<RecordedSet> one = left.fiveRepTest();
    Optional<RecordedSet> other = right.fiveRepTest();
    return one.isPresent()
            && other.isPresent()
            && one.get().entry().step().equals(other.get().entry().step())
        ? Optional.of(
            new FiveRepTest(one.get(), other.get(), 100 * kg(one.get()) / kg(other.get())))
        : Optional.empty();
  }

  private static double kg(RecordedSet set) {
    return set.entry().load().orElseThrow().mass().kg().doubleValue();
  }
}
