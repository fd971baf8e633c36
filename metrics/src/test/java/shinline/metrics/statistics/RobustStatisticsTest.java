package shinline.metrics.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** By hand: the least value that enough do not exceed; a tie is halved. */
  @Test
  void quantiles() {
    List<Double> ten = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0);
    assertThat(RobustStatistics.quantile(ten, 0.01)).hasValue(1);
    assertThat(RobustStatistics.quantile(ten, 0.75)).hasValue(8);
    assertThat(RobustStatistics.quantile(ten, 0.8)).hasValue(8.5);
    assertThat(RobustStatistics.quantile(ten, 1)).hasValue(10);
    assertThat(RobustStatistics.quantile(List.of(), 0.5)).isEmpty();
  }

  /**
   * Reference: Apache Commons Math 3.6.1; and, since Hipparchus grew out of it, the definition
   * itself by counting.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void quantilesOfTheReferenceLibrary(long seed) {
    Random random = new Random(seed);
    double[] values = random.doubles(1 + random.nextInt(60), -5, 5).toArray();
    assertThat(RobustStatistics.median(values).orElseThrow())
        .isCloseTo(new Median().evaluate(values), within(1e-12));
    for (double p : new double[] {0.05, 0.1, 0.5, 0.683, 0.8, 0.95, 1}) {
      double found = RobustStatistics.quantile(values, p).orElseThrow();
      assertThat(found)
          .isEqualTo(
              new Percentile(100 * p)
                  .withEstimationType(Percentile.EstimationType.R_2)
                  .evaluate(values));
      long below = Arrays.stream(values).filter(v -> v <= found).count();
      long farBelow = Arrays.stream(values).filter(v -> v < found).count();
      assertThat((double) below).isGreaterThanOrEqualTo(p * values.length - 1e-9);
      assertThat((double) farBelow).isLessThanOrEqualTo(p * values.length + 1e-9);
    }
  }
}
