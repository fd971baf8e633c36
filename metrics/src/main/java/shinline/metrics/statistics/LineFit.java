package shinline.metrics.statistics;

import org.hipparchus.stat.regression.SimpleRegression;

/** The straight line nearest to points by least squares. */
public final class LineFit {
  private final SimpleRegression points = new SimpleRegression();

  public void add(double x, double y) {
    points.addData(x, y);
  }

  public long count() {
    return points.getN();
  }

  /** Not a number without two places. */
  public double slope() {
    return points.getSlope();
  }

  /** Pearson's coefficient, -1…1; not a number where one of the two does not vary. */
  public double correlation() {
    return points.getR();
  }
}
