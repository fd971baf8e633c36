package shinline.metrics.synthetic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.Measure;
import shinline.metrics.track.BodyPoint;

/**
 * A set of split squats with a closed form: joint centres in statures, x forward, y up, the front
 * ankle above the origin. Segment angles go from top to bottom and back as raised cosines; the feet
 * stay where they are; the rear knee follows from the rear leg's two lengths.
 *
 * @param walks whether the athlete walks in before and out after the set
 * @param lateS seconds by which everything starts later
 * @param build of the athlete
 * @param benchStatures how high the rear foot stands, share of standing height
 */
public record SplitSquat(
    List<RepPlan> reps, boolean walks, double lateS, Build build, double benchStatures) {
  /** Ankle above the floor, share of stature: Drillis and Contini 1966, in Winter 2009 fig. 4.1. */
  public static final double ANKLE = 0.039;

  /** Above the toes it stands on. */
  private static final double REAR_ANKLE = 0.12;

  /** To and fro so often a second. */
  public static final double WOBBLE_HZ = 2.5;

  /** From one reading of the closed form to the next. */
  private static final double TRUTH_S = 0.004;

  private static final double TOP_SHIN = 2;
  private static final double TOP_THIGH = 60;
  private static final double TOP_TRUNK = 6;
  private static final double WALK_S = 3;
  private static final double STEP_S = 1;
  private static final double STAND_S = 1;

  public SplitSquat {
    reps = List.copyOf(reps);
  }

  public static SplitSquat of(RepPlan... reps) {
    return new SplitSquat(Arrays.asList(reps), false, 0, Build.USUAL, 0);
  }

  /** Nobody squats. */
  public static SplitSquat standing(double forS) {
    return new SplitSquat(List.of(), false, forS, Build.USUAL, 0);
  }

  public static SplitSquat clean(int reps) {
    return of(java.util.Collections.nCopies(reps, RepPlan.clean()).toArray(RepPlan[]::new));
  }

  public SplitSquat walkingInAndOut() {
    return new SplitSquat(reps, true, WALK_S + STEP_S, build, benchStatures);
  }

  public SplitSquat by(Build athlete) {
    return new SplitSquat(reps, walks, lateS, athlete, benchStatures);
  }

  /** The rear foot on a bench that is so high, share of standing height. */
  public SplitSquat onBench(double statures) {
    return new SplitSquat(reps, walks, lateS, build, statures);
  }

  /** When rep {@code k} (from 0) leaves its top. */
  double repStartS(int k) {
    double t = lateS + STAND_S;
    for (int i = 0; i < k; i++) {
      t += reps.get(i).lengthS() + reps.get(i).restS();
    }
    return t;
  }

  private double setEndS() {
    return repStartS(reps.size()) + STAND_S;
  }

  public double lengthS() {
    return setEndS() + (walks ? WALK_S + STEP_S : 0);
  }

  /** Every joint centre at a time. */
  public Map<BodyPoint, Point> at(double t) {
    if (walks && t < lateS) {
      return mixed(walking(t - lateS), at(lateS), smooth((t - (lateS - STEP_S)) / STEP_S));
    }
    if (walks && t > setEndS()) {
      double out = t - setEndS();
      return mixed(at(setEndS()), walking(-out), smooth(out / STEP_S));
    }
    double depth = 0;
    RepPlan rep = reps.isEmpty() ? RepPlan.clean() : reps.get(0);
    double into = -1;
    for (int k = 0; k < reps.size(); k++) {
      double since = t - repStartS(k);
      if (since >= 0 && since <= reps.get(k).lengthS()) {
        rep = reps.get(k);
        into = since;
        depth =
            since < rep.loweringS()
                ? smooth(since / rep.loweringS())
                : 1 - smooth((since - rep.loweringS() - rep.holdS()) / rep.driveS());
      }
    }
    return pose(rep, depth, into);
  }

  private Map<BodyPoint, Point> pose(RepPlan rep, double s, double into) {
    double drive = into < 0 ? -1 : (into - rep.loweringS() - rep.holdS()) / rep.driveS();
    double low = rep.loweringS() + rep.holdS();
    double shin = TOP_SHIN + (rep.shinDeg() - TOP_SHIN) * s;
    double thigh = TOP_THIGH + (rep.thighDeg() - TOP_THIGH) * s;
    double trunk = TOP_TRUNK + (rep.trunkDeg() - TOP_TRUNK) * s;
    if (into > 0 && into < low) {
      shin +=
          rep.amount(FlagKind.WOBBLE)
              * Math.sin(2 * Math.PI * WOBBLE_HZ * into)
              * Math.sin(Math.PI * into / low);
    }
    trunk += rep.amount(FlagKind.HIPS_FIRST) * hump(drive);
    double rise = smooth(Math.min(1, 2 * s));
    Map<BodyPoint, Point> p = new EnumMap<>(BodyPoint.class);
    Point ankle = new Point(0, ANKLE);
    Point knee = along(ankle, 90 - shin, build.shank());
    Point hip = along(knee, 180 - thigh, build.thigh());
    Point shoulder = along(hip, 90 - trunk, build.trunk());
    p.put(BodyPoint.FRONT_ANKLE, ankle);
    p.put(BodyPoint.FRONT_HEEL, new Point(-0.04, rep.amount(FlagKind.HEEL_RISE) * rise));
    p.put(BodyPoint.FRONT_TOE, new Point(0.115, rep.amount(FlagKind.FOREFOOT_RISE) * rise));
    p.put(BodyPoint.FRONT_KNEE, knee);
    p.put(BodyPoint.FRONT_HIP, hip);
    p.put(BodyPoint.REAR_HIP, hip);
    p.put(BodyPoint.NEAR_SHOULDER, shoulder);
    p.put(BodyPoint.FAR_SHOULDER, shoulder);
    Point crown = along(shoulder, 90 - trunk, 0.12);
    p.put(BodyPoint.NEAR_EAR, along(crown, -trunk, 0.01));
    double push = rep.amount(FlagKind.REAR_PUSH) * hump(drive / 1.2);
    Point rearAnkle = new Point(-0.40 - push, REAR_ANKLE - push * 3 / 7).plus(0, benchStatures);
    p.put(BodyPoint.REAR_ANKLE, rearAnkle);
    p.put(BodyPoint.REAR_HEEL, rearAnkle.plus(-0.05, 0.01));
    p.put(BodyPoint.REAR_TOE, new Point(-0.38, benchStatures));
    p.put(BodyPoint.REAR_KNEE, rearKnee(hip, rearAnkle));
    return p;
  }

  /** Where circles of the two lengths about hip and ankle meet, on the side a knee bends to. */
  private Point rearKnee(Point hip, Point ankle) {
    double d = hip.distanceTo(ankle);
    double along =
        (build.shank() * build.shank() - build.thigh() * build.thigh() + d * d) / (2 * d);
    double off = Math.sqrt(Math.max(0, build.shank() * build.shank() - along * along));
    double ux = (hip.x() - ankle.x()) / d;
    double uy = (hip.y() - ankle.y()) / d;
    return ankle.plus(along * ux + off * uy, along * uy - off * ux);
  }

  /**
   * A walker: hips bob, ankles swing to and fro; {@code t} runs up to 0 at the place of the set.
   */
  private Map<BodyPoint, Point> walking(double t) {
    double x = -0.1 + 0.5 * Math.min(0, t);
    double swing = 0.12 * Math.sin(2 * Math.PI * 0.9 * t);
    Point hip = new Point(x, 0.515 + 0.01 * Math.cos(2 * Math.PI * 1.8 * t));
    Map<BodyPoint, Point> p = new EnumMap<>(BodyPoint.class);
    leg(p, "FRONT", hip, new Point(x + swing, 0.05));
    leg(p, "REAR", hip, new Point(x - swing, 0.05));
    Point shoulder = along(hip, 87, build.trunk());
    p.put(BodyPoint.NEAR_SHOULDER, shoulder);
    p.put(BodyPoint.FAR_SHOULDER, shoulder);
    p.put(BodyPoint.NEAR_EAR, shoulder.plus(0.02, 0.12));
    return p;
  }

  private void leg(Map<BodyPoint, Point> p, String which, Point hip, Point ankle) {
    p.put(BodyPoint.valueOf(which + "_HIP"), hip);
    p.put(BodyPoint.valueOf(which + "_KNEE"), rearKnee(hip, ankle));
    p.put(BodyPoint.valueOf(which + "_ANKLE"), ankle);
    p.put(BodyPoint.valueOf(which + "_HEEL"), ankle.plus(-0.04, -ANKLE));
    p.put(BodyPoint.valueOf(which + "_TOE"), ankle.plus(0.115, -ANKLE));
  }

  private static Map<BodyPoint, Point> mixed(
      Map<BodyPoint, Point> a, Map<BodyPoint, Point> b, double share) {
    Map<BodyPoint, Point> p = new EnumMap<>(BodyPoint.class);
    a.forEach(
        (k, v) -> p.put(k, v.times(1 - share).plus(b.get(k).x() * share, b.get(k).y() * share)));
    return p;
  }

  /** From 0 to 1 as a raised cosine. */
  private static double smooth(double s) {
    return (1 - Math.cos(Math.PI * Math.max(0, Math.min(1, s)))) / 2;
  }

  /** Up and down again over the first half of a phase. */
  private static double hump(double s) {
    return s <= 0 || s >= 0.6 ? 0 : Math.pow(Math.sin(Math.PI * s / 0.6), 2);
  }

  private static Point along(Point from, double fromHorizontalDeg, double length) {
    double a = Math.toRadians(fromHorizontalDeg);
    return from.plus(length * Math.cos(a), length * Math.sin(a));
  }

  /** What a rep truly is, by the definitions of docs/measures.md. */
  public record Truth(
      double startS,
      double bottomStartS,
      double bottomEndS,
      double endS,
      Map<Measure, Double> atBottom) {
    public double loweringS() {
      return bottomStartS - startS;
    }

    public double holdS() {
      return bottomEndS - bottomStartS;
    }

    public double driveS() {
      return endS - bottomEndS;
    }
  }

  /**
   * Truth of rep {@code k} (from 0), read off the closed form 250 times a second; between two
   * readings a line is off by some millionths of the travel.
   *
   * @param statureCm for the lengths
   */
  public Truth truth(int k, double statureCm) {
    double from = repStartS(k);
    RepPlan rep = reps.get(k);
    double middle = from + rep.loweringS() + rep.holdS() / 2;
    DoubleUnaryOperator hip = t -> at(t).get(BodyPoint.FRONT_HIP).y();
    double top = hip.applyAsDouble(from);
    double low = hip.applyAsDouble(middle);
    double travel = top - low;
    double a = passes(hip, from, middle, top - 0.05 * travel);
    double b = passes(hip, from, middle, low + 0.05 * travel);
    double end = from + rep.lengthS();
    double c = passes(hip, middle, end, low + 0.05 * travel);
    double d = passes(hip, middle, end, top - 0.05 * travel);
    double w0 = c - b >= 0.1 ? b : middle - 0.05;
    double w1 = c - b >= 0.1 ? c : middle + 0.05;
    Map<Measure, Double> values = new EnumMap<>(Measure.class);
    values.put(Measure.SHIN, median(w0, w1, t -> shin(at(t))));
    values.put(Measure.THIGH, median(w0, w1, t -> thigh(at(t))));
    values.put(Measure.TRUNK_LEAN, median(w0, w1, t -> trunk(at(t))));
    values.put(Measure.KNEE_FLEXION, median(w0, w1, t -> 90 + shin(at(t)) - thigh(at(t))));
    values.put(Measure.HIP_FLEXION, median(w0, w1, t -> 90 + trunk(at(t)) - thigh(at(t))));
    values.put(
        Measure.KNEE_PAST_TOE,
        median(
            w0,
            w1,
            t ->
                statureCm
                    * (at(t).get(BodyPoint.FRONT_KNEE).x() - at(t).get(BodyPoint.FRONT_TOE).x())));
    values.put(Measure.HIP_TRAVEL, statureCm * travel);
    return new Truth(a, b, c, d, values);
  }

  private static double passes(DoubleUnaryOperator height, double from, double to, double level) {
    double before = height.applyAsDouble(from);
    for (double t = from + TRUTH_S; t <= to + TRUTH_S; t += TRUTH_S) {
      double now = height.applyAsDouble(t);
      if ((before - level) * (now - level) <= 0 && before != now) {
        return t - TRUTH_S + TRUTH_S * (level - before) / (now - before);
      }
      before = now;
    }
    throw new IllegalStateException("level " + level + " is not passed");
  }

  private static double median(double from, double to, DoubleUnaryOperator value) {
    List<Double> all = new ArrayList<>();
    for (double t = from; t <= to; t += TRUTH_S) {
      all.add(value.applyAsDouble(t));
    }
    all.sort(null);
    return all.get(all.size() / 2);
  }

  private static double shin(Map<BodyPoint, Point> p) {
    return 90 - slope(p.get(BodyPoint.FRONT_ANKLE), p.get(BodyPoint.FRONT_KNEE));
  }

  private static double thigh(Map<BodyPoint, Point> p) {
    return 180 - slope(p.get(BodyPoint.FRONT_KNEE), p.get(BodyPoint.FRONT_HIP));
  }

  public static double trunk(Map<BodyPoint, Point> p) {
    return 90 - slope(p.get(BodyPoint.FRONT_HIP), p.get(BodyPoint.NEAR_SHOULDER));
  }

  private static double slope(Point from, Point to) {
    return Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x()));
  }
}
