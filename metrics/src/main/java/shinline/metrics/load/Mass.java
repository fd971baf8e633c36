package shinline.metrics.load;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A mass in the unit it was written in, in decimals: 2.5 kg is 2.5 kg, and 70 lb never becomes
 * 31.75 kg by the way. Order and {@link #sameAs} compare across units.
 *
 * @param value 0 or more, in the unit; trailing zeros are dropped
 */
public record Mass(BigDecimal value, MassUnit unit) implements Comparable<Mass> {

  /**
   * Kilograms are compared to this many decimals. Everything but a division is exact; a division
   * (an estimated maximum) carries 34 digits, and its last must not decide which disc to take.
   */
  private static final int COMPARED_DECIMALS = 15;

  public Mass {
    if (value.signum() < 0) {
      throw new IllegalArgumentException("mass of " + value + " " + unit.word());
    }
    value = plain(value);
  }

  public static Mass of(String value, MassUnit unit) {
    return new Mass(new BigDecimal(value), unit);
  }

  public static Mass zero(MassUnit unit) {
    return new Mass(BigDecimal.ZERO, unit);
  }

  /** Kilograms, exact. */
  public BigDecimal kg() {
    return plain(value.multiply(unit.kg()));
  }

  /** The same mass in another unit; pounds from kilograms to 34 digits. */
  public Mass in(MassUnit other) {
    return other == unit ? this : new Mass(kg().divide(other.kg(), MathContext.DECIMAL128), other);
  }

  /** The sum, in this mass's unit. */
  public Mass plus(Mass more) {
    return new Mass(value.add(more.in(unit).value), unit);
  }

  public Mass times(BigDecimal factor) {
    return new Mass(value.multiply(factor), unit);
  }

  /** Share of this mass. */
  public Mass percent(BigDecimal percent) {
    return times(percent.movePointLeft(2));
  }

  public boolean sameAs(Mass other) {
    return compareTo(other) == 0;
  }

  public boolean isZero() {
    return value.signum() == 0;
  }

  @Override
  public int compareTo(Mass other) {
    return compared().compareTo(other.compared());
  }

  private BigDecimal compared() {
    return kg().setScale(COMPARED_DECIMALS, RoundingMode.HALF_EVEN);
  }

  private static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** For example {@code 22.5 kg}. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.word();
  }
}
