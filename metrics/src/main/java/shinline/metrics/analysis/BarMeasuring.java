package shinline.metrics.analysis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.bar.BarDrive;
import shinline.metrics.bar.BarLean;
import shinline.metrics.bar.BarPath;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.Point;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.Rep;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Reading;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;

/** The bar on the back in each rep, with its ±; nothing where there is none. */
final class BarMeasuring {
  private static final double NINETY_FIVE = 1.96;

  private final Map<Rep, BarReading> readings = new HashMap<>();
  private final Map<Rep, BarLean> leans = new HashMap<>();

  private BarMeasuring() {}

  static BarMeasuring of(
      Optional<BarPath> bar, Body body, Scale scale, CameraSway sway, List<Rep> reps) {
    BarMeasuring measuring = new BarMeasuring();
    bar.ifPresent(path -> measuring.read(path, body, scale, sway, reps));
    return measuring;
  }

  Optional<BarReading> reading(Rep rep) {
    return Optional.ofNullable(readings.get(rep));
  }

  BarLean lean(Rep rep) {
    return leans.getOrDefault(rep, BarLean.UNSEEN);
  }

  private void read(BarPath path, Body body, Scale scale, CameraSway sway, List<Rep> reps) {
    List<Optional<BarDrive>> drives = BarDrive.of(path, reps);
    double fastest =
        drives.stream()
            .flatMap(Optional::stream)
            .mapToDouble(drive -> drive.speed().mean())
            .max()
            .orElse(0);
    Optional<Series> ahead = aheadOfHip(path, body, scale, drives, reps);
    Doubt doubt = new Doubt(body.calibration(), sway.px() / body.scale().staturePx());
    for (int k = 0; k < reps.size(); k++) {
      Rep rep = reps.get(k);
      double until = body.calibration().value(CalibrationKey.HIPS_FIRST_UNTIL);
      BarLean lean = ahead.map(a -> BarLean.of(a, rep.times(), until)).orElse(BarLean.UNSEEN);
      leans.put(rep, lean);
      Reading change = doubt.change(lean.bottomDeg());
      readings.put(
          rep,
          drives
              .get(k)
              .map(drive -> doubt.reading(drive, fastest, change))
              .orElseGet(() -> unseen(change)));
    }
  }

  private static BarReading unseen(Reading change) {
    Reading none = Reading.missing(Gap.BAR_NOT_SEEN);
    return new BarReading(none, none, none, change, none, List.of());
  }

  /**
   * The bar's end ahead of mid-hip, shares of the trunk's length. Both are brought to metres, each
   * at its own distance: where no length is known, by the bar's own rise in the drives, which the
   * hips share.
   */
  private static Optional<Series> aheadOfHip(
      BarPath path, Body body, Scale scale, List<Optional<BarDrive>> drives, List<Rep> reps) {
    Kinematics k = body.kinematics();
    OptionalDouble metresPerPx =
        scale.cmPerPx().isPresent()
            ? OptionalDouble.of(scale.cmPerPx().get() / 100)
            : sharedRise(drives, reps);
    if (metresPerPx.isEmpty()) {
      return Optional.empty();
    }
    double perPx = metresPerPx.getAsDouble();
    double trunkM =
        body.calibration().value(CalibrationKey.BAR_TRUNK) * body.scale().staturePx() * perPx;
    double[] value = new double[path.grid().size()];
    boolean[] seen = new boolean[value.length];
    for (int i = 0; i < value.length; i++) {
      seen[i] = path.forwardM().seen(i) && k.hipX().seen(i);
      value[i] = seen[i] ? (path.forwardM().value(i) - k.hipX().value(i) * perPx) / trunkM : 0;
    }
    return Optional.of(Series.of(path.grid().times(), value, seen));
  }

  private static OptionalDouble sharedRise(List<Optional<BarDrive>> drives, List<Rep> reps) {
    double[] perPx = new double[reps.size()];
    int n = 0;
    for (int k = 0; k < perPx.length; k++) {
      Optional<BarDrive> drive = drives.get(k);
      if (drive.isPresent()) {
        List<Point> way = drive.get().path();
        // Five per cent of it are left at either end.
        perPx[n++] = way.get(way.size() - 1).y() / (0.9 * reps.get(k).travel());
      }
    }
    return RobustStatistics.median(java.util.Arrays.copyOf(perPx, n));
  }

  /**
   * What is not known of it.
   *
   * @param swayShare standard deviation of a camera's unread moves, share of stature
   */
  private record Doubt(Calibration calibration, double swayShare) {
    /** Sway is told as a share of stature; a bar's path is in metres. */
    private static final double STATURE_M = 1.75;

    BarReading reading(BarDrive drive, double fastest, Reading change) {
      double driveS = drive.times().endS() - drive.times().bottomEndS();
      double mean = drive.speed().mean();
      double swayM = swayShare * STATURE_M;
      double edges =
          Math.sqrt(2) * calibration.value(CalibrationKey.BAR_EDGE) / Math.max(0.1, driveS);
      double moved = Math.sqrt(2) * swayM / Math.max(0.02, mean * driveS);
      double own = Math.hypot(edges, moved);
      double scale = calibration.value(CalibrationKey.BAR_SCALE);
      double peak = calibration.value(CalibrationKey.BAR_PEAK_SPEED);
      double strayCm =
          Math.hypot(
              Math.hypot(calibration.value(CalibrationKey.BAR_STRAY), 100 * swayM),
              scale * 100 * drive.strayM());
      // The scale is the same in all reps and cancels in the loss.
      double loss = Math.sqrt(2) * own * Math.min(1, Math.max(0, mean / fastest));
      return new BarReading(
          speed(mean, Math.hypot(scale, own)),
          speed(drive.speed().peak(), Math.hypot(Math.hypot(scale, peak), moved)),
          Reading.of(100 * drive.strayM(), NINETY_FIVE * strayCm),
          change,
          fastest > 0
              ? Reading.of(100 * (fastest - mean) / fastest, 100 * NINETY_FIVE * loss)
              : Reading.missing(Gap.BAR_NOT_SEEN),
          drive.path().stream().map(p -> p.times(100)).toList());
    }

    private static Reading speed(double value, double share) {
      return Reading.of(value, Math.max(0.005, NINETY_FIVE * share * Math.abs(value)));
    }

    Reading change(OptionalDouble deg) {
      return deg.isPresent()
          ? Reading.of(
              deg.getAsDouble(), NINETY_FIVE * calibration.value(CalibrationKey.BAR_TRUNK_CHANGE))
          : Reading.missing(Gap.UNSEEN_AT_BOTTOM);
    }
  }
}
