package shinline.vision.pose;

/** The logistic function, from a logit to a probability. */
final class Sigmoid {
  private Sigmoid() {}

  static double of(double logit) {
    return 1 / (1 + Math.exp(-logit));
  }
}
