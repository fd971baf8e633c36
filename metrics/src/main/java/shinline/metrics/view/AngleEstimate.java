package shinline.metrics.view;

/**
 * An angle and how sure it is.
 *
 * @param deg degrees
 * @param sigmaDeg standard deviation, degrees, 0 or more
 */
public record AngleEstimate(double deg, double sigmaDeg) {
  public AngleEstimate {
    if (!Double.isFinite(deg) || !(sigmaDeg >= 0)) {
      throw new IllegalArgumentException("angle of " + deg + " degrees, sigma " + sigmaDeg);
    }
  }

  /** Both taken together as independent tellings of one angle, weighted by their precision. */
  AngleEstimate with(AngleEstimate other) {
    double own = 1 / (sigmaDeg * sigmaDeg);
    double its = 1 / (other.sigmaDeg * other.sigmaDeg);
    return new AngleEstimate(
        (own * deg + its * other.deg) / (own + its), Math.sqrt(1 / (own + its)));
  }
}
