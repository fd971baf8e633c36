package shinline.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import shinline.cli.words.Words;
import shinline.metrics.result.MeasureUnit;

/** Numbers in sentences: as many digits as a coach can use, never more than were measured. */
final class Amount {
  private Amount() {}

  /** A distance: whole from 10 on, one decimal below that, two for times under a second. */
  static String of(double amount, MeasureUnit unit) {
    double size = Math.abs(amount);
    int decimals = size >= 10 ? 0 : unit == MeasureUnit.SECONDS && size < 1 ? 2 : 1;
    BigDecimal rounded = rounded(size, decimals);
    // "0 deg outside" would read as a mistake, so the smallest amount is named as what it is.
    return rounded.signum() == 0 && size > 0
        ? Words.say("amount.less-than", withUnit(BigDecimal.ONE.movePointLeft(decimals), unit))
        : withUnit(rounded, unit);
  }

  /** A limit, as the coach wrote it. */
  static String signed(double value, MeasureUnit unit) {
    return withUnit(rounded(value, 2), unit);
  }

  private static BigDecimal rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  private static String withUnit(BigDecimal number, MeasureUnit unit) {
    String plain = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    return plain + (unit == MeasureUnit.DEGREES ? "°" : " " + unit.symbol());
  }
}
