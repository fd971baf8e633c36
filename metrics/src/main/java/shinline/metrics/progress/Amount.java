package shinline.metrics.progress;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A value of one set or session with what is known of its error; half widths that hold the true
 * value 95 times in 100, in the unit of the value.
 *
 * @param plusMinus with the body's own bias
 * @param within without it: that bias is the same in each session of one athlete and cancels
 */
public record Amount(double value, OptionalDouble plusMinus, OptionalDouble within) {

  public Amount {
    if (!Double.isFinite(value) || plusMinus.orElse(0) < 0 || within.orElse(0) < 0) {
      throw new IllegalArgumentException(value + " +- " + plusMinus + " or " + within);
    }
  }

  /** A value nothing is known of besides. */
  public static Amount bare(double value) {
    return new Amount(value, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** What counts between two sessions of one leg: without the body's bias where that is known. */
  public OptionalDouble forChange() {
    return within.isPresent() ? within : plusMinus;
  }

  /** What counts between two legs: another leg seen from another side has another bias. */
  public OptionalDouble forSides() {
    return plusMinus.isPresent() ? plusMinus : within;
  }

  /**
   * Mean over the sets of a session. The ± is the mean of theirs and no smaller: sets of a session
   * share camera and scale, so their errors are not independent.
   *
   * @param sets at least one; a ± that one of them lacks is lacking
   */
  static Amount mean(List<Amount> sets) {
    return new Amount(
        sets.stream().mapToDouble(Amount::value).average().orElseThrow(),
        mean(sets.stream().map(Amount::plusMinus).toList(), sets.size()),
        mean(sets.stream().map(Amount::within).toList(), sets.size()));
  }

  private static OptionalDouble mean(List<OptionalDouble> widths, int all) {
    List<OptionalDouble> known = widths.stream().filter(OptionalDouble::isPresent).toList();
    return known.size() < all
        ? OptionalDouble.empty()
        : known.stream().mapToDouble(OptionalDouble::getAsDouble).average();
  }
}
