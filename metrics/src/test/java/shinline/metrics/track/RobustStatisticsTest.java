package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class RobustStatisticsTest {
  @Test
  void medianOfOddAndEvenCounts() {
    assertThat(RobustStatistics.median(List.of(9.0, 1.0, 5.0))).hasValue(5);
    assertThat(RobustStatistics.median(new double[] {4, 1, 3, 2})).hasValue(2.5);
    assertThat(RobustStatistics.median(new double[0])).isEmpty();
  }

  @Test
  void medianLeavesItsInputAsItIs() {
    double[] values = {3, 1, 2};
    assertThat(RobustStatistics.median(values)).hasValue(2);
    assertThat(values).containsExactly(3, 1, 2);
  }

  @Test
  void modeIsWhereTheValuesLieDensest() {
    // Half of 9 values: the five closest are 10.0 to 10.4; of these the three closest, and so on.
    assertThat(
            RobustStatistics.mode(List.of(0.0, 2.0, 4.0, 10.0, 10.1, 10.15, 10.4, 30.0, 60.0))
                .getAsDouble())
        .isBetween(10.0, 10.2);
    assertThat(RobustStatistics.mode(List.of(7.0))).hasValue(7);
    assertThat(RobustStatistics.mode(List.of())).isEmpty();
  }

  @Test
  void quantileByNearestRank() {
    List<Double> ten = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0);
    assertThat(RobustStatistics.quantile(ten, 0)).hasValue(1);
    assertThat(RobustStatistics.quantile(ten, 0.8)).hasValue(9);
    assertThat(RobustStatistics.quantile(ten, 1)).hasValue(10);
    assertThat(RobustStatistics.quantile(List.of(), 0.5)).isEmpty();
  }
}
