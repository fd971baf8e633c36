package shinline.metrics.track;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/** Which leg is in front: which of the model's names sat on it, and which knee was hidden. */
final class LegVotes {
  private final double[] leftOverRight;
  private final Optional<Side> told;
  private final Side near;
  private final Calibration calibration;
  private OptionalDouble farHidden = OptionalDouble.empty();

  /**
   * @param near the side the camera sees
   * @param told the front leg, where somebody who was there says it
   */
  LegVotes(int frames, Side near, Optional<Side> told, Calibration calibration) {
    leftOverRight = new double[frames];
    this.near = near;
    this.told = told;
    this.calibration = calibration;
  }

  /** The label {@code side} was found on the front leg in frame {@code i}. */
  void add(int i, Side side, double weight) {
    leftOverRight[i] += side == Side.LEFT ? weight : -weight;
  }

  /**
   * Takes the knees as a second witness: the far one is behind the near leg and its weights at
   * times, and the model says so in the trust it has in it, whatever name it gives it.
   *
   * @param apartPx knees nearer to each other than this may be one and the same
   */
  void knees(PointPath front, PointPath rear, double apartPx) {
    double less = calibration.value(CalibrationKey.LEGS_HIDDEN);
    int both = 0;
    int hidden = 0;
    for (int i = 0; i < front.size(); i++) {
      if (front.seen(i) && rear.seen(i) && front.distance(rear, i) > apartPx) {
        both++;
        hidden += front.confidence(i) < rear.confidence(i) - less ? 1 : 0;
      }
    }
    farHidden = both == 0 ? OptionalDouble.empty() : OptionalDouble.of(hidden / (double) both);
  }

  private double sum(int sign) {
    double sum = 0;
    for (double v : leftOverRight) {
      sum += Math.max(0, sign * v);
    }
    return sum;
  }

  Side frontLeg() {
    return told.orElseGet(this::shownFrontLeg);
  }

  /** The front leg by the evidence alone. */
  Side shownFrontLeg() {
    return farShare() > 0.5 ? near.other() : near;
  }

  /** Whether the evidence alone leaves no doubt of it. */
  boolean shownClear() {
    return Math.max(farShare(), 1 - farShare()) >= calibration.value(CalibrationKey.LEGS_CLEAR);
  }

  /** Whether the evidence leaves no doubt of the front leg. */
  boolean clear() {
    return agreement() >= calibration.value(CalibrationKey.LEGS_CLEAR);
  }

  /** Share of the evidence for the front leg, 0…1. */
  double agreement() {
    if (told.isPresent()) {
      return 1;
    }
    return frontLeg() == near ? 1 - farShare() : farShare();
  }

  /**
   * Share of the evidence for a far front leg. Names alone do not tell it: where the near leg hides
   * the far one the model names legs at random, in clips from the wished side most of all.
   */
  private double farShare() {
    double named = share(near.other());
    // Names weigh a little more, so that all of them stand against knees that show nothing hidden.
    double names = calibration.value(CalibrationKey.LEGS_NAMES);
    return farHidden.isPresent() ? names * named + (1 - names) * farHidden.getAsDouble() : named;
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
