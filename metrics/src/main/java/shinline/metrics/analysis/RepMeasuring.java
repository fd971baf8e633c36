package shinline.metrics.analysis;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.interval.IntervalModel;
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

/** Values at the bottom, phases and speeds of a rep, each with its ±. */
final class RepMeasuring {
  /** Either side of an edge, over which the speed there is told. */
  private static final double EDGE_REACH_S = 0.1;

  private final Body body;
  private final Scale scale;
  private final Calibration calibration;
  private final CameraSway sway;
  private final double frameS;
  private final BottomMeasuring bottom;

  RepMeasuring(Body body, Scale scale, CameraSway sway, BottomMeasuring bottom, double frameS) {
    this.body = body;
    this.scale = scale;
    calibration = body.calibration();
    this.sway = sway;
    this.bottom = bottom;
    this.frameS = frameS;
  }

  Map<Measure, Reading> atBottom(Rep rep) {
    BottomWindow window = BottomWindow.of(rep.times());
    Map<Measure, Reading> all = new EnumMap<>(bottom.posture(window));
    all.putAll(bottom.travel(rep.travel(), window));
    return all;
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
