package shinline.metrics.track;

/** Which of the model's labels sat on the front leg, frame by frame and over the clip. */
final class LegVotes {
  /**
   * Least share of the votes for a front leg that is the far one. Where the near leg hides the far
   * one the model names legs at random, in clips from the wished side most of all; on clips whose
   * front leg was the far one its names were right nearly always.
   */
  static final double CLEAR = 0.75;

  private final double[] leftOverRight;
  private final Side near;

  /**
   * @param near the side the camera sees
   */
  LegVotes(int frames, Side near) {
    leftOverRight = new double[frames];
    this.near = near;
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
    return share(near.other()) >= CLEAR ? near.other() : near;
  }

  /** Share of the votes for the front leg, 0…1. */
  double agreement() {
    return share(frontLeg());
  }

  private double share(Side side) {
    double total = sum(1) + sum(-1);
    return total == 0 ? 0.5 : sum(side == Side.LEFT ? 1 : -1) / total;
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
