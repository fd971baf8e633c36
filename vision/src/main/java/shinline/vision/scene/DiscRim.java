package shinline.vision.scene;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.stat.descriptive.rank.Median;

/**
 * A disc's rim, measured along rays from its centre.
 *
 * <p>On each ray the steepest grey step near the expected radius is placed between the samples by a
 * parabola; the step must go the same way, darker or brighter, all round. The rim is {@code r(t) =
 * r0 + a cos t + b sin t + c cos 2t + d sin 2t}: for an ellipse of small flattening, a and b are
 * the centre's offset and {@code r0 ± hypot(c, d)} the half axes. Fitted by reweighted least
 * squares (Tukey's biweight), repeated about the new centre, so that hands, shadows and neighbours
 * drop out.
 *
 * @param centreX pixels
 * @param centreY pixels
 * @param diameter longer axis, pixels
 * @param roundness shorter over longer axis
 * @param rimShare share of the rays that agree with the fitted rim
 * @param plusMinus half width of the 95 % interval of the diameter, pixels
 */
record DiscRim(
    double centreX,
    double centreY,
    double diameter,
    double roundness,
    double rimShare,
    double plusMinus) {
  private static final int UNKNOWNS = 5;

  /** Below it the rays do not tell the five numbers. */
  private static final double LEAST_PIVOT = 1e-6;

  private static final int ROUNDS = 6;
  private static final double SAMPLE_PX = 0.5;

  /**
   * Half of the band around the expected radius in which the rim is sought, first and last round.
   */
  private static final double WIDE_BAND = 0.14;

  private static final double NARROW_BAND = 0.05;

  /** What the smoothing of a step between two grey levels can shift it, pixels of radius. */
  private static final double STEP_BIAS_PX = 0.25;

  double distanceTo(DiscRim other) {
    return Math.hypot(centreX - other.centreX, centreY - other.centreY);
  }

  /** Measures the rim near a circle; empty when there is none. */
  static Optional<DiscRim> measure(
      GreyPicture picture, double x, double y, double radius, DiscFinderParameters parameters) {
    Optional<DiscRim> dark = measure(picture, x, y, radius, Step.BRIGHTER_OUTSIDE, parameters);
    Optional<DiscRim> bright = measure(picture, x, y, radius, Step.DARKER_OUTSIDE, parameters);
    if (dark.isPresent() && bright.isPresent()) {
      return dark.get().rimShare >= bright.get().rimShare ? dark : bright;
    }
    return dark.isPresent() ? dark : bright;
  }

  private static Optional<DiscRim> measure(
      GreyPicture picture,
      double x,
      double y,
      double radius,
      Step step,
      DiscFinderParameters parameters) {
    double[] shape = {radius, 0, 0, 0, 0};
    double centreX = x;
    double centreY = y;
    Fit fit = null;
    for (int round = 0; round < ROUNDS; round++) {
      double band = Math.max(3 / radius, round == 0 ? WIDE_BAND : round == 1 ? 0.09 : NARROW_BAND);
      Edges edges = edges(picture, centreX, centreY, shape, band, step, parameters);
      if (edges.count < parameters.leastRimShare() * parameters.rays()) {
        return Optional.empty();
      }
      Optional<Fit> next = Fit.of(edges, parameters);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      fit = next.get();
      centreX += fit.shape[1];
      centreY += fit.shape[2];
      shape = new double[] {fit.shape[0], 0, 0, fit.shape[3], fit.shape[4]};
    }
    if (fit == null) {
      return Optional.empty();
    }
    double flattening = Math.hypot(shape[3], shape[4]);
    double longer = shape[0] + flattening;
    double share = (double) fit.agreeing / parameters.rays();
    if (share < parameters.leastRimShare()
        || fit.scatter > Math.max(0.6, parameters.rimScatterShare() * shape[0])) {
      return Optional.empty();
    }
    double sigmaRadius = Math.hypot(2 * fit.scatter / Math.sqrt(fit.agreeing / 4.0), STEP_BIAS_PX);
    return Optional.of(
        new DiscRim(
            centreX,
            centreY,
            2 * longer,
            (shape[0] - flattening) / longer,
            share,
            2 * 1.96 * sigmaRadius));
  }

  private static double radiusAt(double[] shape, double t) {
    return shape[0]
        + shape[1] * Math.cos(t)
        + shape[2] * Math.sin(t)
        + shape[3] * Math.cos(2 * t)
        + shape[4] * Math.sin(2 * t);
  }

  private static Edges edges(
      GreyPicture picture,
      double cx,
      double cy,
      double[] shape,
      double band,
      Step step,
      DiscFinderParameters parameters) {
    Edges edges = new Edges(parameters.rays());
    for (int i = 0; i < parameters.rays(); i++) {
      double t = 2 * Math.PI * i / parameters.rays();
      double expected = radiusAt(shape, t);
      int steps = (int) Math.ceil(band * shape[0] / SAMPLE_PX);
      double best = 0;
      int at = 0;
      double[] slope = new double[2 * steps + 1];
      for (int s = -steps; s <= steps; s++) {
        double r = expected + s * SAMPLE_PX;
        double outX = cx + (r + 1) * Math.cos(t);
        double outY = cy + (r + 1) * Math.sin(t);
        double inX = cx + (r - 1) * Math.cos(t);
        double inY = cy + (r - 1) * Math.sin(t);
        if (picture.covers(outX, outY) && picture.covers(inX, inY)) {
          slope[s + steps] = step.sign * (picture.at(outX, outY) - picture.at(inX, inY));
        }
        if (slope[s + steps] > best) {
          best = slope[s + steps];
          at = s;
        }
      }
      if (best < parameters.leastContrast() || Math.abs(at) == steps) {
        continue;
      }
      double before = slope[at + steps - 1];
      double after = slope[at + steps + 1];
      double bend = before - 2 * best + after;
      double shift = bend < 0 ? 0.5 * (before - after) / bend : 0;
      edges.add(t, expected + (at + shift) * SAMPLE_PX);
    }
    return edges;
  }

  /** One rim has one kind of step all round; bricks and boxes have both. */
  private enum Step {
    BRIGHTER_OUTSIDE(1),
    DARKER_OUTSIDE(-1);

    private final int sign;

    Step(int sign) {
      this.sign = sign;
    }
  }

  /** Rim points as angle and radius. */
  private static final class Edges {
    private final double[] angle;
    private final double[] radius;
    private int count;

    Edges(int most) {
      angle = new double[most];
      radius = new double[most];
    }

    void add(double t, double r) {
      angle[count] = t;
      radius[count] = r;
      count++;
    }
  }

  /** A robust fit of the rim's five numbers. */
  private static final class Fit {
    private final double[] shape;
    private final double scatter;
    private final int agreeing;

    private Fit(double[] shape, double scatter, int agreeing) {
      this.shape = shape;
      this.scatter = scatter;
      this.agreeing = agreeing;
    }

    static Optional<Fit> of(Edges edges, DiscFinderParameters parameters) {
      double[] weights = new double[edges.count];
      Arrays.fill(weights, 1);
      double[] shape = {new Median().evaluate(edges.radius, 0, edges.count), 0, 0, 0, 0};
      for (int round = 0; round < 15; round++) {
        double[] gaps = gaps(edges, shape);
        double tuning = 4.685 * Math.max(0.15, 1.4826 * new Median().evaluate(gaps));
        for (int i = 0; i < edges.count; i++) {
          double u = gaps[i] / tuning;
          weights[i] = u < 1 ? (1 - u * u) * (1 - u * u) : 0;
        }
        Optional<double[]> next = solve(edges, weights);
        if (next.isEmpty()) {
          return Optional.empty();
        }
        shape = next.get();
      }
      double[] gaps = gaps(edges, shape);
      double limit = Math.max(1.0, parameters.rimScatterShare() * shape[0]);
      double squares = 0;
      int agreeing = 0;
      for (double gap : gaps) {
        if (gap <= limit) {
          agreeing++;
          squares += gap * gap;
        }
      }
      return agreeing <= 2 * UNKNOWNS
          ? Optional.empty()
          : Optional.of(new Fit(shape, Math.sqrt(squares / (agreeing - UNKNOWNS)), agreeing));
    }

    private static double[] gaps(Edges edges, double[] shape) {
      double[] gaps = new double[edges.count];
      for (int i = 0; i < edges.count; i++) {
        gaps[i] = Math.abs(edges.radius[i] - radiusAt(shape, edges.angle[i]));
      }
      return gaps;
    }

    private static Optional<double[]> solve(Edges edges, double[] weights) {
      double[][] normal = new double[UNKNOWNS][UNKNOWNS];
      double[] right = new double[UNKNOWNS];
      for (int i = 0; i < edges.count; i++) {
        double t = edges.angle[i];
        double[] row = {1, Math.cos(t), Math.sin(t), Math.cos(2 * t), Math.sin(2 * t)};
        for (int a = 0; a < UNKNOWNS; a++) {
          for (int b = 0; b < UNKNOWNS; b++) {
            normal[a][b] += weights[i] * row[a] * row[b];
          }
          right[a] += weights[i] * row[a] * edges.radius[i];
        }
      }
      DecompositionSolver solver =
          new LUDecomposition(new Array2DRowRealMatrix(normal), LEAST_PIVOT).getSolver();
      return solver.isNonSingular()
          ? Optional.of(solver.solve(new ArrayRealVector(right)).toArray())
          : Optional.empty();
    }
  }
}
