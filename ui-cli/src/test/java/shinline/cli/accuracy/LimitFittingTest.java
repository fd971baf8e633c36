package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.fault.LimitSearch.Side;

class LimitFittingTest {
  private static LimitFitting above(List<Double> clean, List<Double> faulty) {
    return new LimitFitting(
        FlagKind.HIPS_FIRST, CalibrationKey.HIPS_FIRST_LIMIT, Side.ABOVE, clean, faulty);
  }

  @Test
  void betweenTheCleanAndTheFaulty() {
    LimitFitting fit = above(List.of(1.0, 3.0, 2.0), List.of(9.0, 7.0));
    assertThat(fit.nearestClean()).isEqualTo(3);
    assertThat(fit.nearestFaulty()).isEqualTo(7);
    assertThat(fit.limit()).isEqualTo(5);
  }

  @Test
  void belowTheLimitIsTheFault() {
    LimitFitting fit =
        new LimitFitting(
            FlagKind.SHALLOW,
            CalibrationKey.SHALLOW_LIMIT,
            Side.BELOW,
            List.of(0.95, 0.9, 1.0),
            List.of(0.6, 0.7));
    assertThat(fit.nearestClean()).isEqualTo(0.9);
    assertThat(fit.nearestFaulty()).isEqualTo(0.7);
    assertThat(fit.limit()).isEqualTo(0.8);
  }

  /** No clean rep was ever near: whatever the limit, none would be flagged. */
  @Test
  void withoutACleanRepNearTheRangeEndsThere() {
    LimitFitting fit = above(List.of(), List.of(6.0));
    assertThat(fit.nearestClean()).isZero();
    assertThat(fit.limit()).isEqualTo(3);
  }

  /**
   * One clean rep at 8 is like the faulty ones: a limit below them is wrong once, above it twice.
   */
  @Test
  void whereTheyOverlapTheFewestAreWrong() {
    assertThat(above(List.of(1.0, 2.0, 8.0), List.of(6.0, 7.0, 9.0)).limit()).isEqualTo(4);
  }

  /** Missing one and flagging one falsely are one wrong each: the false flag is worse. */
  @Test
  void inDoubtRatherMissedThanFalse() {
    assertThat(above(List.of(1.0, 6.0), List.of(5.0, 9.0)).limit()).isEqualTo(7.5);
  }

  @Test
  void threeDigitsThatStayBetween() {
    assertThat(above(List.of(1.23456), List.of(2.34567)).limit()).isEqualTo(1.79);
    assertThat(above(List.of(4.0001), List.of(4.0002)).limit()).isBetween(4.0001, 4.0002);
  }
}
