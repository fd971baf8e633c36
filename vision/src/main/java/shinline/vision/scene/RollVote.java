package shinline.vision.scene;

import java.util.List;

/**
 * The vote of {@link BackgroundRoll}: a full search over the roll, then reweighted least squares
 * for roll, vertical convergence k and horizontal convergence m.
 *
 * <p>No random numbers: the same lines give the same answer.
 */
final class RollVote {
  /** Step of the search; half the width of the kernel or less, so that no peak is missed. */
  private static final double STEP_RAD = Math.toRadians(0.25);

  /** How far a true vertical's lean may stray (building, lens), standard deviation. */
  private static final double VERTICAL_SIGMA_RAD = Math.toRadians(0.25);

  /** The same for lines along the wall. */
  private static final double HORIZONTAL_SIGMA_RAD = Math.toRadians(0.35);

  /** End-point error of a detected segment, in units of the longer side (about 0.7 px at 960). */
  private static final double END_ERROR = 0.0007;

  /** Largest convergence looked for: pitch of 14°, or yaw of 20°, focal length 0.9 long sides. */
  private static final double MAX_K = Math.tan(Math.toRadians(14)) / 0.9;

  private static final double MAX_M = Math.tan(Math.toRadians(20)) / 0.9;
  private static final int CONVERGENCE_STEPS = 24;

  /** Usual convergence: pitch of 5°, yaw of 8°; standard deviations of the weak priors. */
  private static final double USUAL_K = Math.tan(Math.toRadians(5)) / 0.9;

  private static final double USUAL_M = Math.tan(Math.toRadians(8)) / 0.9;

  /** A rival roll is at least this far from the best. */
  private static final double RIVAL_GAP_RAD = Math.toRadians(1.5);

  /** How far the horizon may be from the picture's centre (pitch), in long sides: one sigma. */
  private static final double HORIZON_SIGMA = 0.08;

  /** Lines of one object err together; each counts as this share of an independent one. */
  private static final double INDEPENDENCE = 0.6;

  private final BackgroundRollParameters parameters;

  RollVote(BackgroundRollParameters parameters) {
    this.parameters = parameters;
  }

  /**
   * The outcome of a vote.
   *
   * @param rollRad best roll
   * @param sigmaRad its standard deviation
   * @param verticalLength agreeing near-vertical length, long sides
   * @param horizontalLength agreeing near-horizontal length, long sides
   * @param linesUsed agreeing lines
   * @param rivalRad next best roll
   * @param rivalShare its support as a share of the best one's
   */
  record Result(
      double rollRad,
      double sigmaRad,
      double verticalLength,
      double horizontalLength,
      int linesUsed,
      double rivalRad,
      double rivalShare) {}

  Result run(List<RoomLine> lines) {
    double reach = Math.toRadians(parameters.maxRollDeg());
    int half = (int) Math.round(reach / STEP_RAD);
    Candidate[] profile = new Candidate[2 * half + 1];
    Candidate best = new Candidate(0, 0, 0, 0);
    for (int i = -half; i <= half; i++) {
      Candidate candidate = bestAt(lines, i * STEP_RAD);
      profile[i + half] = candidate;
      if (candidate.support > best.support) {
        best = candidate;
      }
    }
    double rivalRad = best.roll;
    double rivalSupport = 0;
    for (int i = 1; i < profile.length - 1; i++) {
      Candidate candidate = profile[i];
      boolean peak =
          candidate.support >= profile[i - 1].support
              && candidate.support >= profile[i + 1].support;
      if (peak
          && Math.abs(candidate.roll - best.roll) >= RIVAL_GAP_RAD
          && candidate.support > rivalSupport) {
        rivalRad = candidate.roll;
        rivalSupport = candidate.support;
      }
    }
    double rivalShare = best.support > 0 ? rivalSupport / best.support : 1;
    return refine(lines, best, rivalRad, rivalShare);
  }

  private static Candidate bestAt(List<RoomLine> lines, double roll) {
    double bestK = 0;
    double bestM = 0;
    double bestVertical = 0;
    double bestHorizontal = 0;
    for (int i = -CONVERGENCE_STEPS; i <= CONVERGENCE_STEPS; i++) {
      double share = (double) i / CONVERGENCE_STEPS;
      double vertical = support(lines, RoomLine.Kind.NEAR_VERTICAL, roll, share * MAX_K, USUAL_K);
      if (vertical > bestVertical) {
        bestVertical = vertical;
        bestK = share * MAX_K;
      }
      double horizontal =
          support(lines, RoomLine.Kind.NEAR_HORIZONTAL, roll, share * MAX_M, USUAL_M);
      if (horizontal > bestHorizontal) {
        bestHorizontal = horizontal;
        bestM = share * MAX_M;
      }
    }
    return new Candidate(roll, bestK, bestM, bestVertical + 0.5 * bestHorizontal);
  }

  /** Line length that agrees, each line by its precision, less a little for odd convergence. */
  private static double support(
      List<RoomLine> lines, RoomLine.Kind kind, double roll, double slope, double usual) {
    double sum = 0;
    for (RoomLine line : lines) {
      if (line.kind() == kind) {
        double error = residual(line, roll, slope) / (1.5 * sigma(line));
        sum += voice(line) * Math.exp(-0.5 * error * error);
      }
    }
    double odd = slope / usual;
    return sum / (1 + 0.03 * odd * odd);
  }

  /** A very long line must not outvote the rest of the room alone. */
  private static double voice(RoomLine line) {
    return Math.min(line.length(), 0.4);
  }

  private static double residual(RoomLine line, double roll, double slope) {
    double sign = line.kind() == RoomLine.Kind.NEAR_VERTICAL ? 1 : -1;
    return Math.sin(line.leanRad() - roll) - sign * slope * line.offset();
  }

  private static double sigma(RoomLine line) {
    double own =
        line.kind() == RoomLine.Kind.NEAR_VERTICAL ? VERTICAL_SIGMA_RAD : HORIZONTAL_SIGMA_RAD;
    return Math.hypot(own, END_ERROR / line.length());
  }

  private Result refine(List<RoomLine> lines, Candidate start, double rivalRad, double rivalShare) {
    double roll = start.roll;
    double k = start.k;
    double m = start.m;
    double[][] normal = new double[3][3];
    for (int round = 0; round < 12; round++) {
      normal = new double[3][3];
      double[] right = new double[3];
      normal[1][1] = 1 / (USUAL_K * USUAL_K);
      normal[2][2] = 1 / (USUAL_M * USUAL_M);
      right[1] = -k * normal[1][1];
      right[2] = -m * normal[2][2];
      for (RoomLine line : lines) {
        boolean vertical = line.kind() == RoomLine.Kind.NEAR_VERTICAL;
        double e = residual(line, roll, vertical ? k : m);
        double weight = weight(line, e, vertical ? 0 : m);
        double[] row = {1, vertical ? line.offset() : 0, vertical ? 0 : -line.offset()};
        for (int i = 0; i < 3; i++) {
          right[i] += weight * row[i] * e;
          for (int j = 0; j < 3; j++) {
            normal[i][j] += weight * row[i] * row[j];
          }
        }
      }
      if (normal[0][0] <= 0) {
        break;
      }
      double[][] inverse = inverse(normal);
      roll += dot(inverse[0], right);
      k += dot(inverse[1], right);
      m += dot(inverse[2], right);
    }
    double verticalLength = 0;
    double horizontalLength = 0;
    int used = 0;
    double squares = 0;
    double weights = 0;
    for (RoomLine line : lines) {
      boolean vertical = line.kind() == RoomLine.Kind.NEAR_VERTICAL;
      double e = residual(line, roll, vertical ? k : m);
      if (Math.abs(e) <= 2.5 * sigma(line)) {
        used++;
        if (vertical) {
          verticalLength += line.length();
        } else {
          horizontalLength += line.length();
        }
        double scaled = e / sigma(line);
        squares += line.length() * scaled * scaled;
        weights += line.length();
      }
    }
    double spread = weights > 0 ? Math.max(1, squares / weights) : 1;
    double variance = normal[0][0] > 0 ? inverse(normal)[0][0] * spread : Double.MAX_VALUE;
    // Level lines alone: the horizon's unknown height times their convergence is unseen error.
    double levelShare = horizontalLength / Math.max(1e-9, horizontalLength + 3 * verticalLength);
    double horizonError = Math.abs(m) * HORIZON_SIGMA * levelShare;
    return new Result(
        roll,
        Math.sqrt(variance + horizonError * horizonError),
        verticalLength,
        horizontalLength,
        used,
        rivalRad,
        rivalShare);
  }

  /** Cauchy-type weight: full for a line that agrees, nothing for one that does not belong. */
  private static double weight(RoomLine line, double error, double m) {
    double sigma = Math.hypot(sigma(line), m * HORIZON_SIGMA);
    double scaled = error / (2 * sigma);
    if (Math.abs(scaled) > 2) {
      return 0;
    }
    double kernel = 1 / (1 + scaled * scaled);
    return INDEPENDENCE * kernel * Math.min(1, line.length() / 0.1) / (sigma * sigma);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[][] inverse(double[][] a) {
    double[][] c = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        int i1 = (j + 1) % 3;
        int i2 = (j + 2) % 3;
        int j1 = (i + 1) % 3;
        int j2 = (i + 2) % 3;
        c[i][j] = a[i1][j1] * a[i2][j2] - a[i1][j2] * a[i2][j1];
      }
    }
    double det = a[0][0] * c[0][0] + a[0][1] * c[1][0] + a[0][2] * c[2][0];
    for (double[] row : c) {
      for (int j = 0; j < 3; j++) {
        row[j] /= det;
      }
    }
    return c;
  }

  private record Candidate(double roll, double k, double m, double support) {}
}
