package shinline.cli.format;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Fixed rounding, so that the same clip gives the same bytes on every machine. */
final class Decimals {
  private Decimals() {}

  /** Rounded half to even, without trailing zeros, never negative zero. */
  static BigDecimal round(double value, int places) {
    BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  /** As {@link #round} with every place written. */
  static String fixed(double value, int places) {
    BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
    return rounded.toPlainString();
  }
}
