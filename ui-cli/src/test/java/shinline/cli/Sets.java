package shinline.cli;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.Angle;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Limit;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.TempoReading;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.Warning;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.ShownLegs;
import shinline.metrics.track.Side;
import shinline.metrics.view.Attitude;
import shinline.vision.pose.PoseModel;

/** Made-up results with known numbers. */
public final class Sets {
  /** The rest between reps, half a second to one and a half, and nothing else. */
  public static final Target TOP_ALONE =
      new Target(
          Optional.empty(),
          DepthTarget.any(),
          new TempoTarget(
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.of(new TempoTarget.Phase(0.5, 1.5))),
          Optional.empty(),
          Target.Margin.standard());

  public static final Target SHORT_RANGE_ALONE =
      new Target(
          Optional.empty(),
          DepthTarget.quarterRange(),
          TempoTarget.any(),
          Optional.empty(),
          Target.Margin.standard());

  private Sets() {}

  /**
   * The same with a bar on the back.
   *
   * @param meanMps mean speed of the bar in each rep; NaN where it was not seen
   */
  public static ClipReport.Measured withBar(ClipReport.Measured report, double... meanMps) {
    SetResult set = report.set();
    double fastest = java.util.Arrays.stream(meanMps).filter(v -> v == v).max().orElse(1);
    List<RepResult> reps =
        set.reps().stream()
            .map(r -> withBar(r, bar(meanMps[(r.rep() - 1) % meanMps.length], fastest)))
            .toList();
    return new ClipReport.Measured(
        report.clip(),
        set(
            set.setUp(),
            set.target(),
            reps,
            set.trend(),
            set.fading(),
            set.summary(),
            set.series()),
        report.warnings());
  }

  private static RepResult withBar(RepResult rep, BarReading bar) {
    return new RepResult(
        rep.rep(),
        rep.times(),
        rep.tempo(),
        rep.atBottom(),
        rep.drive().withBar(bar),
        rep.shortRange(),
        rep.judgement(),
        rep.flags());
  }

  private static BarReading bar(double meanMps, double fastestMps) {
    Reading none = Reading.missing(Gap.BAR_NOT_SEEN);
    return Double.isNaN(meanMps)
        ? new BarReading(none, none, none, none, none, List.of())
        : new BarReading(
            Reading.of(meanMps, 0.02),
            Reading.of(1.8 * meanMps, 0.05),
            Reading.of(3.2, 1.1),
            Reading.of(4, 3),
            Reading.of(100 * (1 - meanMps / fastestMps), 2),
            List.of(new Point(0, 0), new Point(2.4, 20), new Point(-0.8, 41)));
  }

  /** The measured set as if that had been asked for. */
  public static ClipReport.Measured asking(Target target) {
    ClipReport.Measured report = measured("x.mp4");
    SetResult set = report.set();
    return new ClipReport.Measured(
        report.clip(),
        set(
            set.setUp(),
            target,
            set.reps(),
            set.trend(),
            set.fading(),
            set.summary(),
            set.series()),
        report.warnings());
  }

  /** The measured set with nothing asked for. */
  public static ClipReport.Measured free(String fileName) {
    ClipReport.Measured report = measured(fileName);
    SetResult set = report.set();
    List<RepResult> reps =
        set.reps().stream()
            .map(
                r ->
                    new RepResult(
                        r.rep(),
                        r.times(),
                        r.tempo(),
                        r.atBottom(),
                        r.drive(),
                        r.shortRange(),
                        new RepJudgement(r.rep(), List.of()),
                        r.flags()))
            .toList();
    return new ClipReport.Measured(
        report.clip(),
        set(
            set.setUp(),
            Target.none(),
            reps,
            set.trend(),
            set.fading(),
            new SetSummary(reps.size(), Optional.empty()),
            set.series()),
        report.warnings());
  }

  public static ClipFacts facts(String fileName) {
    return new ClipFacts(
        fileName,
        "0123456789abcdef".repeat(4),
        960,
        540,
        90,
        767,
        25.5666,
        30,
        false,
        PoseModel.FULL);
  }

  /** One clean rep, and one with gaps and a flag. */
  public static ClipReport.Measured measured(String fileName) {
    SetUp setUp =
        new SetUp(
            Side.RIGHT,
            Side.LEFT,
            false,
            SetUp.RearFoot.BENCH,
            new SetUp.Camera(
                -1.26,
                Attitude.Source.BACKGROUND,
                2.5,
                Attitude.Source.BACKGROUND,
                Optional.of(4.0),
                new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ofDegrees(-1.26))),
            Optional.of(0.4567891),
            SetUp.ScaleSource.HEIGHT,
            SetUp.CameraHold.STILL,
            new ShownLegs(Side.RIGHT, 1, Side.LEFT, true),
            List.of(new Warning.LegsUnsure(Side.LEFT)));
    SetResult set =
        set(
            setUp,
            Target.preset(ShinPreset.PAST_TOE),
            List.of(
                rep(1, Reading.of(12.3456, 1.2)), rep(2, Reading.missing(Gap.UNSEEN_AT_BOTTOM))),
            Map.of(Measure.TRUNK_LEAN, 1.5),
            Optional.of(new SetResult.Fading(2, FlagKind.LEAN_GROWS)),
            new SetSummary(
                2,
                Optional.of(
                    new SetSummary.Against(
                        Optional.of("past-toe"),
                        Map.of(Verdict.HIT, 1, Verdict.UNCLEAR, 1),
                        Optional.empty()))),
            series());
    return new ClipReport.Measured(facts(fileName), set, List.of("the clip ends early"));
  }

  public static ClipReport.NotMeasured notMeasured(String fileName) {
    return new ClipReport.NotMeasured(
        facts(fileName), Target.none(), new SetRefusal.OffSide(80, 40), List.of());
  }

  /** Nothing missed, or a knee 7 cm short of its band. */
  public static RepJudgement judged(int rep, boolean hit) {
    return new RepJudgement(
        rep,
        1,
        hit
            ? List.of()
            : List.of(
                new Finding.Outside(
                    new Limit(
                        Aspect.KNEE,
                        Optional.of("past-toe"),
                        5,
                        Double.POSITIVE_INFINITY,
                        2,
                        MeasureUnit.CENTIMETRES),
                    Limit.End.MIN,
                    7,
                    1)));
  }

  private static RepResult rep(int number, Reading rearKnee) {
    Map<Measure, Reading> atBottom = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      atBottom.put(measure, Reading.of(-0.0001, 0.5));
    }
    atBottom.put(Measure.KNEE_PAST_TOE, Reading.of(5.08, 2.54));
    atBottom.put(Measure.REAR_KNEE_HEIGHT, rearKnee);
    boolean clean = number == 1;
    return new RepResult(
        number,
        new RepTimes(1 + number, 3, 3.5, 4, 5),
        new TempoReading(
            Reading.of(3, 0.1),
            Reading.of(1, 0.1),
            Reading.of(0.75, 0.1),
            Reading.missing(Gap.NO_REP_FOLLOWS)),
        atBottom,
        new DriveReading(Reading.of(0.5, 0.02), Reading.of(0.9, 0.05)),
        false,
        judged(number, clean),
        clean
            ? List.of()
            : List.of(
                new Flag(FlagKind.HEEL_RISE, 3.2, 96, 2.54, 1, MeasureUnit.CENTIMETRES, 0.9)));
  }

  private static SeriesTable series() {
    double nan = Double.NaN;
    return new SeriesTable(
        new int[] {0, 1},
        new double[] {0, 0.0333333},
        Map.of(SeriesTable.Column.SHIN, new double[] {1.23456, nan}),
        Map.of(BodyPoint.FRONT_KNEE, new double[][] {{100.5, nan}, {39, nan}, {0.98765, nan}}));
  }

  /** A set without a flag of the back, with everything seen and every way down and back counted. */
  public static SetResult set(
      SetUp setUp,
      Target target,
      List<RepResult> reps,
      Map<Measure, Double> trend,
      Optional<SetResult.Fading> fading,
      SetSummary summary,
      SeriesTable series) {
    return new SetResult(
        setUp, target, reps, trend, fading, summary, series, Map.of(), Map.of(), List.of());
  }
}
