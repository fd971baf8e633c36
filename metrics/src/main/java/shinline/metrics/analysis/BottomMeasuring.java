package shinline.metrics.analysis;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.SegmentAngles;
import shinline.metrics.interval.IntervalModel;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.signal.Series;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.view.ArmReach;

/** Values at the bottom of a rep, or of a posture that is all there is, each with its ±. */
final class BottomMeasuring {
  /** A bridge reaches at least to the next look, whatever the length of the hold. */
  private static final double BRIDGE_S = 0.1;

  private final Body body;
  private final SetSight sight;
  private final Scale scale;
  private final IntervalModel intervals;
  private final AttitudeDoubt attitude;
  private final CameraSway sway;
  private final double yawDeg;
  private final Series rearKnee;

  BottomMeasuring(
      Body body,
      SetSight sight,
      Scale scale,
      AttitudeDoubt attitude,
      CameraSway sway,
      double yawDeg) {
    this.body = body;
    this.sight = sight;
    this.scale = scale;
    intervals = new IntervalModel(body.calibration(), scale.share());
    this.attitude = attitude;
    this.sway = sway;
    this.yawDeg = yawDeg;
    rearKnee = body.rearKneeHeight();
  }

  /** What one posture tells: every measure that needs no movement. */
  Map<Measure, Reading> posture(BottomWindow window) {
    Kinematics k = body.kinematics();
    double plane = body.scale().frontPlane();
    Map<Measure, Reading> all = new EnumMap<>(Measure.class);
    BodyPoint[] shank = {BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE};
    BodyPoint[] trunk = {
      BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP, BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER
    };
    BodyPoint[] thigh = {BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE};
    all.put(Measure.SHIN, angle(Measure.SHIN, k.shinDeg(), window, shank));
    all.put(Measure.TRUNK_LEAN, angle(Measure.TRUNK_LEAN, k.trunkLeanDeg(), window, trunk));
    all.put(Measure.THIGH, angle(Measure.THIGH, k.thighDeg(), window, thigh));
    all.put(
        Measure.KNEE_FLEXION,
        angle(
            Measure.KNEE_FLEXION,
            k.kneeFlexionDeg(),
            window,
            BodyPoint.FRONT_HIP,
            BodyPoint.FRONT_KNEE,
            BodyPoint.FRONT_ANKLE));
    all.put(
        Measure.HIP_FLEXION,
        angle(
            Measure.HIP_FLEXION,
            k.hipFlexionDeg(),
            window,
            BodyPoint.FRONT_KNEE,
            BodyPoint.FRONT_HIP,
            BodyPoint.NEAR_SHOULDER));
    OptionalDouble knee = window.bottomMedian(k.kneePastToe());
    all.put(
        Measure.KNEE_PAST_TOE,
        length(
            Measure.KNEE_PAST_TOE,
            knee,
            1 / plane,
            0,
            BodyPoint.FRONT_KNEE,
            BodyPoint.FRONT_TOE,
            window));
    all.put(
        Measure.KNEE_PAST_TOE_FOOT,
        share(
            Measure.KNEE_PAST_TOE_FOOT,
            knee,
            body.scale().footPx(),
            window,
            BodyPoint.FRONT_KNEE,
            BodyPoint.FRONT_TOE));
    all.put(
        Measure.REAR_KNEE_HEIGHT,
        length(
            Measure.REAR_KNEE_HEIGHT,
            window.bottomMedian(rearKnee),
            1,
            body.rearLiftSigma(),
            BodyPoint.REAR_KNEE,
            BodyPoint.REAR_KNEE,
            window));
    return all;
  }

  /**
   * How far the hip has come down.
   *
   * @param travelPx pixels of the middle plane
   */
  Map<Measure, Reading> travel(double travelPx, BottomWindow window) {
    OptionalDouble travel = OptionalDouble.of(travelPx);
    Map<Measure, Reading> both = new EnumMap<>(Measure.class);
    both.put(
        Measure.HIP_TRAVEL,
        length(Measure.HIP_TRAVEL, travel, 1, 0, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP, window));
    both.put(
        Measure.HIP_TRAVEL_LEG,
        share(Measure.HIP_TRAVEL_LEG, travel, body.scale().legPx(), window, BodyPoint.FRONT_HIP));
    return both;
  }

  private Reading angle(Measure measure, Series series, BottomWindow window, BodyPoint... points) {
    OptionalDouble value = window.bottomMedian(series);
    if (value.isEmpty()) {
      return missing(window, points);
    }
    double jitterDeg = SegmentAngles.sigma(settled(window, points), segmentPx()).degrees();
    double unsureDeg = Math.hypot(jitterDeg, reachDeg(measure));
    return reading(measure, value.getAsDouble(), 1, unsureDeg, window, points);
  }

  /** What is not known of a shoulder that goes with a reaching arm, standard deviation. */
  private double reachDeg(Measure measure) {
    boolean ofTheTrunk = measure == Measure.TRUNK_LEAN || measure == Measure.HIP_FLEXION;
    return ofTheTrunk && body.arms() == ArmReach.ONE_ARM
        ? body.calibration().value(CalibrationKey.TRUNK_REACH_SPREAD)
        : 0;
  }

  private Reading length(
      Measure measure,
      OptionalDouble px,
      double plane,
      double unsurePx,
      BodyPoint a,
      BodyPoint b,
      BottomWindow window) {
    Optional<Double> cm = scale.cmPerPx();
    if (px.isEmpty()) {
      return missing(window, a, b);
    }
    if (cm.isEmpty()) {
      return Reading.missing(Gap.NO_SCALE);
    }
    double perPx = cm.get() * plane;
    double moved = Math.hypot(settled(window, a, b), sway.px());
    double jitter = Math.hypot(moved, unsurePx) * perPx;
    return reading(measure, px.getAsDouble() * perPx, perPx, jitter, window, a, b);
  }

  private Reading share(
      Measure measure, OptionalDouble px, double whole, BottomWindow window, BodyPoint... points) {
    if (px.isEmpty()) {
      return missing(window, points);
    }
    return reading(
        measure,
        100 * px.getAsDouble() / whole,
        1,
        100 * Math.hypot(settled(window, points), sway.px()) / whole,
        window,
        points);
  }

  private Reading missing(BottomWindow window, BodyPoint... points) {
    return Reading.missing(
        sight.whyMissing(window.fromS() - BRIDGE_S, window.toS() + BRIDGE_S, points));
  }

  private Reading reading(
      Measure measure,
      double value,
      double unit,
      double jitter,
      BottomWindow window,
      BodyPoint... points) {
    double doubt = 1;
    for (BodyPoint point : points) {
      double sure = window.bottomMedian(body.track().path(point).confidence()).orElse(0);
      doubt = Math.min(doubt, sure * seenShare(point, window));
    }
    double patched = sight.doubtfulShare(window.fromS() - BRIDGE_S, window.toS() + BRIDGE_S);
    double sound = Math.max(0, doubt * (1 - patched));
    IntervalModel.HalfWidths widths =
        intervals.plusMinus(
            measure, value, unit * attitude.sigma(measure, window), jitter, sound, yawDeg);
    return Reading.of(value, widths.all(), widths.within());
  }

  /** Share of the looks around the bottom that saw the point; the others were bridged. */
  private double seenShare(BodyPoint point, BottomWindow window) {
    return body.track()
        .source()
        .seenShare(point, window.fromS() - BRIDGE_S, window.toS() + BRIDGE_S);
  }

  /** Jitter of the worst of the points after smoothing and the median over the window, pixels. */
  private double settled(BottomWindow window, BodyPoint... points) {
    double worst = 0;
    for (BodyPoint point : points) {
      worst = Math.max(worst, body.track().settledPx(point, window.toS() - window.fromS()));
    }
    return worst;
  }

  private double segmentPx() {
    return 0.25 * body.scale().staturePx();
  }
}
