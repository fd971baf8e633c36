package shinline.metrics.track;

/** Which of the model's labels sat on the front leg, frame by frame and over the clip. */
final class LegVotes {
  private final double[] leftOverRight;

  LegVotes(int frames) {
    leftOverRight = new double[frames];
  }

  /** The label {@code side} was found on the front leg in frame {@code i}. */
  void add(int i, Side side, double weight) {
    leftOverRight[i] += side == Side.LEFT ? weight : -weight;
  }

  private double sum(int sign) {
    double sum = 0;
    for (double v : leftOverRight) {
      sum += Math.max(0, sign * v);
    }
    return sum;
  }

  Side frontLeg() {
    return sum(1) >= sum(-1) ? Side.LEFT : Side.RIGHT;
  }

  double agreement() {
    double total = sum(1) + sum(-1);
    return total == 0 ? 0.5 : Math.max(sum(1), sum(-1)) / total;
  }

  /** Whether the model had the legs exchanged in frame {@code i}. */
  boolean swapped(int i) {
    double v = leftOverRight[i];
    return frontLeg() == Side.LEFT ? v < 0 : v > 0;
  }

  double swappedShare() {
    int swapped = 0;
    for (int i = 0; i < leftOverRight.length; i++) {
      swapped += swapped(i) ? 1 : 0;
    }
    return leftOverRight.length == 0 ? 0 : swapped / (double) leftOverRight.length;
  }
}
