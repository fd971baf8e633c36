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

  /** Whether the model had the legs exchanged, frame by frame. */
  boolean[] swapped() {
    // The front leg is asked for once: it is a sum over all frames.
    double claimed = frontLeg() == Side.LEFT ? 1 : -1;
    boolean[] swapped = new boolean[leftOverRight.length];
    for (int i = 0; i < swapped.length; i++) {
      swapped[i] = claimed * leftOverRight[i] < 0;
    }
    return swapped;
  }

  double swappedShare() {
    int count = 0;
    for (boolean swapped : swapped()) {
      count += swapped ? 1 : 0;
    }
    return leftOverRight.length == 0 ? 0 : count / (double) leftOverRight.length;
  }
}
