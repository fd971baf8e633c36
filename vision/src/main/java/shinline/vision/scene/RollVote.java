package shinline.vision.scene;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

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

  /** Focal length of a phone, long sides; only where the horizon is from the centre hangs on it. */
  private static final double FOCAL = 0.8;

  /** Largest convergence looked for: pitch of 22°, or yaw of 24°. */
  private static final double MAX_K = Math.tan(Math.toRadians(22)) / FOCAL;

  private static final double MAX_M = Math.tan(Math.toRadians(24)) / FOCAL;
  private static final int CONVERGENCE_STEPS = 36;

  /** Usual convergence: pitch of 8°, yaw of 8°; standard deviations of the weak priors. */
  private static final double USUAL_K = Math.tan(Math.toRadians(8)) / FOCAL;

  private static final double USUAL_M = Math.tan(Math.toRadians(8)) / FOCAL;

  /** A rival roll is at least this far from the best. */
  private static final double RIVAL_GAP_RAD = Math.toRadians(1.5);

  /** How far the horizon may be from the picture's centre (pitch), in long sides: one sigma. */
  private static final double HORIZON_SIGMA = 0.08;

  /** Less line than this at one end may be something else that happens to fit, long sides. */
  private static final double OUTERMOST = 0.1;

  /** Supported length of uprights that tells their convergence well, long sides. */
  private static final double ENOUGH = 0.4;

  /** Lines of one object err together; each counts as this share of an independent one. */
  private static final double INDEPENDENCE = 0.6;

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
   * @param uprights how the agreeing near-vertical lines converge
   * @param levels how the agreeing near-horizontal lines converge
   */
  record Result(
      double rollRad,
      double sigmaRad,
      double verticalLength,
      double horizontalLength,
      int linesUsed,
      double rivalRad,
      double rivalShare,
      Family uprights,
      Family levels) {}

  /**
   * Lines that run through one vanishing point.
   *
   * @param convergence change of their lean with their distance from the centre, radians a long
   *     side
   * @param sigma its standard deviation
   * @param lines how many agree
   * @param spread between the outermost of them, long sides; short ones, less than a tenth of the
   *     long side together, do not count as outermost
   * @param agreement share of the length of all lines of that kind that agrees
   */
  record Family(double convergence, double sigma, int lines, double spread, double agreement) {}

  Result run(List<RoomLine> lines) {
    double reach = Math.toRadians(BackgroundRollParameters.MAX_ROLL_DEG);
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
    return refine(lines, best, profile);
  }

  /** The best supported roll of those that are not the best one's own flank, refined or not. */
  private static Candidate rival(Candidate[] profile, double best, double roll) {
    Candidate rival = new Candidate(roll, 0, 0, 0);
    for (int i = 1; i < profile.length - 1; i++) {
      Candidate candidate = profile[i];
      boolean peak =
          candidate.support >= profile[i - 1].support
              && candidate.support >= profile[i + 1].support;
      if (peak
          && Math.abs(candidate.roll - roll) >= RIVAL_GAP_RAD
          && Math.abs(candidate.roll - best) >= RIVAL_GAP_RAD
          && candidate.support > rival.support) {
        rival = candidate;
      }
    }
    return rival;
  }

  private static Candidate bestAt(List<RoomLine> lines, double roll) {
    double bestK = 0;
    double bestM = 0;
    double bestVertical = 0;
    double bestHorizontal = 0;
    for (int i = -CONVERGENCE_STEPS; i <= CONVERGENCE_STEPS; i++) {
      double slope = (double) i / CONVERGENCE_STEPS * MAX_K;
      Trial trial = new Trial(RoomLine.Kind.NEAR_VERTICAL, roll, slope, 0);
      double vertical = support(lines, trial, USUAL_K);
      if (vertical > bestVertical) {
        bestVertical = vertical;
        bestK = slope;
      }
    }
    // Few uprights do not say where the horizon is: then it is sought at the centre.
    double square = bestVertical * bestVertical;
    double horizon = horizonAbove(bestK) * square / (square + ENOUGH * ENOUGH);
    for (int i = -CONVERGENCE_STEPS; i <= CONVERGENCE_STEPS; i++) {
      double slope = (double) i / CONVERGENCE_STEPS * MAX_M;
      Trial trial = new Trial(RoomLine.Kind.NEAR_HORIZONTAL, roll, slope, horizon);
      double horizontal = support(lines, trial, USUAL_M);
      if (horizontal > bestHorizontal) {
        bestHorizontal = horizontal;
        bestM = slope;
      }
    }
    return new Candidate(roll, bestK, bestM, bestVertical + 0.5 * bestHorizontal);
  }

  /**
   * A guess at one family of lines.
   *
   * @param horizonAbove how far the horizon lies above the centre, long sides; 0 for uprights
   */
  private record Trial(RoomLine.Kind kind, double roll, double slope, double horizonAbove) {
    double residual(RoomLine line) {
      double sign = kind == RoomLine.Kind.NEAR_VERTICAL ? 1 : -1;
      return Math.sin(line.leanRad() - roll) - sign * slope * (line.offset() + horizonAbove);
    }
  }

  /** A camera that looks down has the horizon above the centre, by focal length times pitch. */
  private static double horizonAbove(double k) {
    return k * FOCAL * FOCAL;
  }

  /** Line length that agrees, each line by its precision, less a little for odd convergence. */
  private static double support(List<RoomLine> lines, Trial trial, double usual) {
    double sum = 0;
    for (RoomLine line : lines) {
      if (line.kind() == trial.kind) {
        double error = trial.residual(line) / (1.5 * sigma(line));
        sum += voice(line) * Math.exp(-0.5 * error * error);
      }
    }
    double odd = trial.slope / usual;
    return sum / (1 + 0.03 * odd * odd);
  }

  /** A very long line must not outvote the rest of the room alone. */
  private static double voice(RoomLine line) {
    return Math.min(line.length(), 0.4);
  }

  private static double sigma(RoomLine line) {
    double own =
        line.kind() == RoomLine.Kind.NEAR_VERTICAL ? VERTICAL_SIGMA_RAD : HORIZONTAL_SIGMA_RAD;
    return Math.hypot(own, END_ERROR / line.length());
  }

  private Result refine(List<RoomLine> lines, Candidate start, Candidate[] profile) {
    double roll = start.roll;
    double k = start.k;
    double m = start.m;
    double kSigma = USUAL_K;
    double[][] normal = new double[3][3];
    for (int round = 0; round < 12; round++) {
      normal = new double[3][3];
      double[] right = new double[3];
      normal[1][1] = 1 / (USUAL_K * USUAL_K);
      normal[2][2] = 1 / (USUAL_M * USUAL_M);
      right[1] = -k * normal[1][1];
      right[2] = -m * normal[2][2];
      Fit fit = new Fit(roll, k, m);
      for (RoomLine line : lines) {
        boolean vertical = line.kind() == RoomLine.Kind.NEAR_VERTICAL;
        double e = fit.residual(line);
        double weight = weight(line, e, vertical ? 0 : m * FOCAL * FOCAL * kSigma);
        double away = line.offset() + horizonAbove(k);
        double[] row = {1, vertical ? line.offset() : -m * FOCAL * FOCAL, vertical ? 0 : -away};
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
      RealMatrix inverse = inverse(normal);
      double[] step = inverse.operate(right);
      roll += step[0];
      k += step[1];
      m += step[2];
      kSigma = Math.sqrt(Math.max(0, inverse.getEntry(1, 1)));
    }
    Candidate rival = rival(profile, start.roll, roll);
    double rivalShare = start.support > 0 ? rival.support / start.support : 1;
    return result(lines, new Fit(roll, k, m), normal, rival.roll, rivalShare);
  }

  private static Result result(
      List<RoomLine> lines, Fit fit, double[][] normal, double rivalRad, double rivalShare) {
    Tally uprights = new Tally();
    Tally levels = new Tally();
    double squares = 0;
    double weights = 0;
    for (RoomLine line : lines) {
      Tally tally = line.kind() == RoomLine.Kind.NEAR_VERTICAL ? uprights : levels;
      double scaled = fit.residual(line) / sigma(line);
      boolean agrees = Math.abs(scaled) <= 2.5;
      tally.add(line, agrees);
      if (agrees) {
        squares += line.length() * scaled * scaled;
        weights += line.length();
      }
    }
    double spread = weights > 0 ? Math.max(1, squares / weights) : 1;
    boolean told = normal[0][0] > 0;
    double[][] variances = told ? inverse(normal).getData() : new double[3][3];
    double variance = told ? variances[0][0] * spread : Double.MAX_VALUE;
    // Level lines alone: the horizon's unknown height times their convergence is unseen error.
    double levelShare = levels.length / Math.max(1e-9, levels.length + 3 * uprights.length);
    double horizonError = Math.abs(fit.m) * HORIZON_SIGMA * levelShare;
    return new Result(
        fit.roll,
        Math.sqrt(variance + horizonError * horizonError),
        uprights.length,
        levels.length,
        uprights.lines() + levels.lines(),
        rivalRad,
        rivalShare,
        uprights.family(fit.k, Math.sqrt(variances[1][1] * spread)),
        levels.family(fit.m, Math.sqrt(variances[2][2] * spread)));
  }

  /** Roll and the convergences of uprights and level lines, together. */
  private record Fit(double roll, double k, double m) {
    double residual(RoomLine line) {
      boolean vertical = line.kind() == RoomLine.Kind.NEAR_VERTICAL;
      return new Trial(line.kind(), roll, vertical ? k : m, vertical ? 0 : horizonAbove(k))
          .residual(line);
    }
  }

  /** What the lines of one kind add up to. */
  private static final class Tally {
    private double all;
    private double length;
    private final List<RoomLine> agreeing = new ArrayList<>();

    void add(RoomLine line, boolean agrees) {
      all += line.length();
      if (agrees) {
        length += line.length();
        agreeing.add(line);
      }
    }

    int lines() {
      return agreeing.size();
    }

    Family family(double convergence, double sigma) {
      agreeing.sort(Comparator.comparingDouble(RoomLine::offset));
      double from = outermost(agreeing);
      Collections.reverse(agreeing);
      double spread = lines() == 0 ? 0 : Math.max(0, outermost(agreeing) - from);
      return new Family(convergence, sigma, lines(), spread, all > 0 ? length / all : 0);
    }

    private static double outermost(List<RoomLine> inward) {
      double passed = 0;
      for (RoomLine line : inward) {
        passed += line.length();
        if (passed >= OUTERMOST) {
          return line.offset();
        }
      }
      return 0;
    }
  }

  /** Cauchy-type weight: full for a line that agrees, nothing for one that does not belong. */
  private static double weight(RoomLine line, double error, double horizonError) {
    double sigma = Math.hypot(sigma(line), horizonError);
    double scaled = error / (2 * sigma);
    if (Math.abs(scaled) > 2) {
      return 0;
    }
    double kernel = 1 / (1 + scaled * scaled);
    return INDEPENDENCE * kernel * Math.min(1, line.length() / 0.1) / (sigma * sigma);
  }

  private static RealMatrix inverse(double[][] normal) {
    return MatrixUtils.inverse(new Array2DRowRealMatrix(normal));
  }

  private record Candidate(double roll, double k, double m, double support) {}
}
