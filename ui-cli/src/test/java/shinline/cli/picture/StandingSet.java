package shinline.cli.picture;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.TempoReading;
import shinline.metrics.target.Target;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.ShownLegs;
import shinline.metrics.track.Side;
import shinline.metrics.view.Attitude;
import shinline.vision.pose.PoseModel;

/** A set whose athlete does not move, in a picture of 640 x 480, looked at 15 times a second. */
final class StandingSet {
  static final int WIDTH = 640;
  static final int HEIGHT = 480;
  static final int LOOKS = 21;
  static final double LAST_LOOK_S = (LOOKS - 1) / 15.0;

  /** Frame of a clip of 30 a second that shows the fault. */
  static final int FAULT_FRAME = 16;

  /** Pixels, y down. */
  static final Map<BodyPoint, double[]> PLACES = places();

  private StandingSet() {}

  private static Map<BodyPoint, double[]> places() {
    Map<BodyPoint, double[]> map = new EnumMap<>(BodyPoint.class);
    map.put(BodyPoint.NEAR_EAR, new double[] {320, 110});
    map.put(BodyPoint.NEAR_SHOULDER, new double[] {310, 150});
    map.put(BodyPoint.FAR_SHOULDER, new double[] {310, 150});
    map.put(BodyPoint.FRONT_HIP, new double[] {290, 260});
    map.put(BodyPoint.REAR_HIP, new double[] {290, 260});
    map.put(BodyPoint.FRONT_KNEE, new double[] {380, 290});
    map.put(BodyPoint.FRONT_ANKLE, new double[] {350, 380});
    map.put(BodyPoint.FRONT_HEEL, new double[] {335, 395});
    map.put(BodyPoint.FRONT_TOE, new double[] {400, 400});
    map.put(BodyPoint.REAR_KNEE, new double[] {240, 340});
    map.put(BodyPoint.REAR_ANKLE, new double[] {170, 380});
    map.put(BodyPoint.REAR_HEEL, new double[] {160, 370});
    map.put(BodyPoint.REAR_TOE, new double[] {175, 400});
    return map;
  }

  static ClipReport.Measured measured() {
    return measured(BodyPoint.values());
  }

  /** With only some of the points seen. */
  static ClipReport.Measured measured(BodyPoint... seen) {
    return measured(
        Map.of(Column.SHIN, all(18), Column.KNEE_PAST_TOE, all(-4), Column.TRUNK_LEAN, all(10)),
        seen);
  }

  /** With shoulders that the pose model placed and nobody believed. */
  static ClipReport.Measured hiddenShoulders() {
    return measured(
        Map.of(Column.SHIN, all(18), Column.KNEE_PAST_TOE, all(-4)), BodyPoint.values());
  }

  private static ClipReport.Measured measured(Map<Column, double[]> numbers, BodyPoint... seen) {
    int[] frames = new int[LOOKS];
    double[] times = new double[LOOKS];
    for (int i = 0; i < LOOKS; i++) {
      frames[i] = 2 * i;
      times[i] = i / 15.0;
    }
    Map<BodyPoint, double[][]> points = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : seen) {
      double[] at = PLACES.get(point);
      points.put(point, new double[][] {all(at[0]), all(HEIGHT - 1 - at[1]), all(0.95)});
    }
    SeriesTable series = new SeriesTable(frames, times, numbers, points);
    Map<Measure, Reading> atBottom = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      atBottom.put(measure, Reading.of(12, 1));
    }
    Reading half = Reading.of(0.5, 0.1);
    RepResult rep =
        new RepResult(
            1,
            new RepTimes(0.1, 0.5, 0.6, 0.7, 1.1),
            new TempoReading(half, half, half, Reading.missing(Gap.NO_REP_FOLLOWS)),
            atBottom,
            new DriveReading(half, half),
            false,
            Sets.judged(1, false),
            List.of(
                new Flag(
                    FlagKind.HEEL_RISE,
                    FAULT_FRAME / 30.0,
                    FAULT_FRAME,
                    4.7,
                    2.2,
                    MeasureUnit.CENTIMETRES,
                    0.9)));
    SetResult set =
        Sets.set(
            new SetUp(
                Side.RIGHT,
                Side.RIGHT,
                true,
                SetUp.RearFoot.FLOOR,
                new SetUp.Camera(
                    0,
                    Attitude.Source.NONE,
                    0,
                    Attitude.Source.NONE,
                    Optional.empty(),
                    ViewGeometry.SQUARE),
                Optional.of(0.4),
                SetUp.ScaleSource.HEIGHT,
                SetUp.CameraHold.STILL,
                new ShownLegs(Side.RIGHT, 1, Side.RIGHT, true),
                List.of()),
            Target.none(),
            List.of(rep),
            Map.of(),
            Optional.empty(),
            new SetSummary(1, Optional.empty()),
            series);
    return new ClipReport.Measured(
        new ClipFacts(
            "set.mp4", "0".repeat(64), WIDTH, HEIGHT, 0, 42, 1.4, 30, true, PoseModel.FULL),
        set,
        List.of());
  }

  private static double[] all(double value) {
    double[] values = new double[LOOKS];
    Arrays.fill(values, value);
    return values;
  }
}
