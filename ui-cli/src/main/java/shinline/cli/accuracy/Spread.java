package shinline.cli.accuracy;

import java.util.List;
import java.util.Optional;
import shinline.cli.accuracy.ClipScore.Deviation;

/**
 * Errors of one measure over many reps, in its own unit.
 *
 * @param bias mean error, + told too large
 * @param sd standard deviation of the error
 * @param meanAbsolute mean absolute error
 * @param p95 absolute error that 95 % of the reps stay within (nearest rank)
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
    double bias = all.stream().mapToDouble(Deviation::error).average().orElseThrow();
    double[] absolute = all.stream().mapToDouble(d -> Math.abs(d.error())).sorted().toArray();
    double[] plusMinus = all.stream().mapToDouble(Deviation::plusMinus).sorted().toArray();
    double squares = all.stream().mapToDouble(d -> (d.error() - bias) * (d.error() - bias)).sum();
    return Optional.of(
        new Spread(
            n,
            bias,
            n > 1 ? Math.sqrt(squares / (n - 1)) : 0,
            java.util.Arrays.stream(absolute).average().orElseThrow(),
            absolute[Math.min(n - 1, (int) Math.ceil(0.95 * n) - 1)],
            (plusMinus[(n - 1) / 2] + plusMinus[n / 2]) / 2,
            all.stream().filter(Deviation::covered).count() / (double) n));
  }
}
