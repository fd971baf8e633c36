package shinline.metrics.result;

import java.util.Optional;
import java.util.function.Function;

/** A value with its interval, or the reason why there is none. */
public sealed interface Reading {

  /**
   * @param value in the unit of the measure
   * @param plusMinus half width of the interval that holds the true value 95 times in 100; > 0
   * @param plusMinusWithin the same without what one body differs from another by, which cancels
   *     between reps and sessions of one athlete; at most {@code plusMinus}
   */
  record Measured(double value, double plusMinus, double plusMinusWithin) implements Reading {
    public Measured {
      if (!Double.isFinite(value)
          || !Double.isFinite(plusMinus)
          || !(plusMinusWithin >= 0)
          || !(plusMinusWithin <= plusMinus)) {
        throw new IllegalArgumentException(value + " +- " + plusMinus + " is no measurement");
      }
    }
  }

  record NotMeasured(Gap gap) implements Reading {}

  /** A value that bodies do not bias, such as a time. */
  static Reading of(double value, double plusMinus) {
    return new Measured(value, plusMinus, plusMinus);
  }

  static Reading of(double value, double plusMinus, double plusMinusWithin) {
    return new Measured(value, plusMinus, plusMinusWithin);
  }

  static Reading missing(Gap gap) {
    return new NotMeasured(gap);
  }

  default <T> T fold(Function<Measured, T> measured, Function<NotMeasured, T> missing) {
    return this instanceof Measured m ? measured.apply(m) : missing.apply((NotMeasured) this);
  }

  default Optional<Measured> measured() {
    return this instanceof Measured m ? Optional.of(m) : Optional.empty();
  }
}
