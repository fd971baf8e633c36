package shinline.cli.accuracy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.StatUtils;
import shinline.cli.accuracy.ClipScore.Deviation;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Errors of one measure over many reps, in its own unit.
 *
 * @param bias mean error, + told too large
 * @param sd standard deviation of the error
 * @param meanAbsolute mean absolute error
 * @param p95 absolute error that 95 % of the reps stay within
 * @param coverage share of the reps whose true value lies inside the told ±
 */
record Spread(
    int n,
    double bias,
    double sd,
    double meanAbsolute,
    double p95,
    double medianPlusMinus,
    double coverage) {

  /** Empty without a single value. */
  static Optional<Spread> of(List<Deviation> all) {
    int n = all.size();
    if (n == 0) {
      return Optional.empty();
    }
    double[] error = all.stream().mapToDouble(Deviation::error).toArray();
    double[] absolute = Arrays.stream(error).map(Math::abs).toArray();
    double[] plusMinus = all.stream().mapToDouble(Deviation::plusMinus).toArray();
    return Optional.of(
        new Spread(
            n,
            StatUtils.mean(error),
            Math.sqrt(StatUtils.variance(error)),
            StatUtils.mean(absolute),
            RobustStatistics.quantile(absolute, 0.95).orElseThrow(),
            RobustStatistics.median(plusMinus).orElseThrow(),
            all.stream().filter(Deviation::covered).count() / (double) n));
  }
}
