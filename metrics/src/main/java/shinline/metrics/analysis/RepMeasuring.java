package shinline.metrics.analysis;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.interval.IntervalModel;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.reps.DriveSpeed;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.TempoReading;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.track.BodyPoint;

/** Values at the bottom, phases and speeds of a rep, each with its ±. */
final class RepMeasuring {
  /** Either side of an edge, over which the speed there is told. */
  private static final double EDGE_REACH_S = 0.1;

  /** A bridge reaches at least to the next look, whatever the length of the hold. */
  private static final double BRIDGE_S = 0.1;

  private final Body body;
  private final SetSight sight;
  private final Scale scale;
  private final Calibration calibration;
  private final IntervalModel intervals;
  private final AttitudeDoubt attitude;
  private final CameraSway sway;
  private final double yawDeg;
  private final double frameS;
  private final Series rearKnee;

  RepMeasuring(
      Body body,
      SetSight sight,
      Scale scale,
      AttitudeDoubt attitude,
      CameraSway sway,
      double yawDeg,
      double frameS) {
    this.body = body;
    this.sight = sight;
    this.scale = scale;
    calibration = body.calibration();
    intervals = new IntervalModel(calibration, scale.share());
    this.attitude = attitude;
    this.sway = sway;
    this.yawDeg = yawDeg;
    this.frameS = frameS;
    rearKnee = body.rearKneeHeight();
  }

  Map<Measure, Reading> atBottom(Rep rep) {
    Kinematics k = body.kinematics();
    BottomWindow window = BottomWindow.of(rep.times());
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
    OptionalDouble travel = OptionalDouble.of(rep.travel());
    all.put(
        Measure.HIP_TRAVEL,
        length(Measure.HIP_TRAVEL, travel, 1, 0, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP, window));
    all.put(
        Measure.HIP_TRAVEL_LEG,
        share(Measure.HIP_TRAVEL_LEG, travel, body.scale().legPx(), window, BodyPoint.FRONT_HIP));
    return all;
  }

  private Reading angle(Measure measure, Series series, BottomWindow window, BodyPoint... points) {
    OptionalDouble value = window.bottomMedian(series);
    if (value.isEmpty()) {
      return missing(window, points);
    }
    double jitterDeg = Math.toDegrees(Math.sqrt(2) * settled(window, points) / segmentPx());
    return reading(measure, value.getAsDouble(), 1, jitterDeg, window, points);
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
      CleanPath path = body.track().path(point);
      worst = Math.max(worst, path.jitterPx());
    }
    // The filter passes about 2·fc/rate of white jitter's power; the rest it has taken out.
    CleanTrack track = body.track();
    double passed = Math.min(1, 2 * track.cutoffHz() / track.grid().rateHz());
    double independent = Math.max(1, (window.toS() - window.fromS()) * 2 * track.cutoffHz());
    return worst * Math.sqrt(passed / (1 - Math.min(0.9, passed)) / independent);
  }

  private double segmentPx() {
    return 0.25 * body.scale().staturePx();
  }

  TempoReading tempo(Rep rep) {
    RepTimes times = rep.times();
    double start = edgeSigma(rep, times.startS(), rep.tempo().loweringS());
    double bottomStart = edgeSigma(rep, times.bottomStartS(), rep.tempo().loweringS());
    double bottomEnd = edgeSigma(rep, times.bottomEndS(), rep.tempo().driveS());
    double end = edgeSigma(rep, times.endS(), rep.tempo().driveS());
    double lowering = IntervalModel.NINETY_FIVE * Math.hypot(start, bottomStart);
    double drive = IntervalModel.NINETY_FIVE * Math.hypot(bottomEnd, end);
    return new TempoReading(
        Reading.of(rep.tempo().loweringS(), lowering),
        Reading.of(
            rep.tempo().holdS(), IntervalModel.NINETY_FIVE * Math.hypot(bottomStart, bottomEnd)),
        Reading.of(rep.tempo().driveS(), drive),
        rep.tempo().topS().isPresent()
            ? Reading.of(
                rep.tempo().topS().getAsDouble(),
                IntervalModel.NINETY_FIVE * Math.hypot(end, start))
            : Reading.missing(Gap.NO_REP_FOLLOWS));
  }

  /**
   * Standard deviation of a phase's edge, seconds: it is found to about a frame, and a height that
   * is a little off crosses the level sooner or later by its error over the speed there.
   *
   * @param phaseS the phase beside it, a third of which no edge is off by
   */
  private double edgeSigma(Rep rep, double atS, double phaseS) {
    double height =
        Math.hypot(
            calibration.value(CalibrationKey.INTERVAL_PHASE_LEVEL) * rep.travel(), sway.px());
    double speed = Math.abs(hipHeight(atS + EDGE_REACH_S) - hipHeight(atS - EDGE_REACH_S));
    double late = Math.min(phaseS / 3, height * 2 * EDGE_REACH_S / Math.max(speed, 1e-9));
    return Math.hypot(edgeS(), late);
  }

  /** Height of mid-hip, linear between samples; beyond what was seen that of the nearest one. */
  private double hipHeight(double timeS) {
    Series hip = body.kinematics().hipY();
    UniformTimeGrid grid = body.kinematics().grid();
    double place = (timeS - grid.timeS(0)) / grid.stepS();
    int before = nearestSeen(hip, (int) Math.floor(place));
    int after = nearestSeen(hip, (int) Math.ceil(place));
    double share = Math.max(0, Math.min(1, place - Math.floor(place)));
    return (1 - share) * hip.value(before) + share * hip.value(after);
  }

  private static int nearestSeen(Series series, int index) {
    int inside = Math.max(0, Math.min(series.size() - 1, index));
    for (int away = 0; away < series.size(); away++) {
      for (int i : new int[] {inside - away, inside + away}) {
        if (i >= 0 && i < series.size() && series.seen(i)) {
          return i;
        }
      }
    }
    return inside;
  }

  /** An edge is found to about a frame. */
  private double edgeS() {
    return calibration.value(CalibrationKey.INTERVAL_PHASE_EDGE) * frameS;
  }

  DriveReading drive(Rep rep) {
    Optional<Double> cm = scale.cmPerPx();
    if (cm.isEmpty()) {
      return speeds(Reading.missing(Gap.NO_SCALE));
    }
    Optional<DriveSpeed> speed =
        DriveSpeed.of(body.kinematics().hipY(), body.kinematics().grid().stepS(), rep.times());
    if (speed.isEmpty()) {
      return speeds(Reading.missing(Gap.DRIVE_NOT_WHOLE));
    }
    double edgeShare = 2 * edgeS() / Math.max(0.1, rep.tempo().driveS());
    return new DriveReading(
        speed(rep, speed.get().mean() * cm.get() / 100, edgeShare / 1.4),
        speed(
            rep,
            speed.get().peak() * cm.get() / 100,
            calibration.value(CalibrationKey.INTERVAL_PEAK_SPEED)));
  }

  private static DriveReading speeds(Reading both) {
    return new DriveReading(both, both);
  }

  /**
   * @param moment standard deviation for not knowing the instants well, share of the value
   */
  private Reading speed(Rep rep, double value, double moment) {
    double share =
        Math.hypot(
            scale.share(), Math.hypot(calibration.value(CalibrationKey.INTERVAL_SPEED), moment));
    share = Math.hypot(share, Math.sqrt(2) * sway.px() / rep.travel());
    return Reading.of(value, Math.max(0.005, 1.96 * share * Math.abs(value)));
  }
}
