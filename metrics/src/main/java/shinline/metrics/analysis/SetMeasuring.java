package shinline.metrics.analysis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.back.BackLine;
import shinline.metrics.back.BackReading;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.bar.BarPath;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.Fault;
import shinline.metrics.fault.FaultFinder;
import shinline.metrics.fault.FaultPicture;
import shinline.metrics.fault.RepEvidence;
import shinline.metrics.fault.Sight;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.judgement.JudgeParameters;
import shinline.metrics.judgement.RepJudge;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.judgement.SetJudge;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.ShortRange;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.TempoReading;
import shinline.metrics.result.Warning;
import shinline.metrics.statistics.LineFit;
import shinline.metrics.target.Target;
import shinline.metrics.track.LegTrack;
import shinline.metrics.view.Attitude;

/** Puts a set's result together: measures, faults, verdicts, trend. */
final class SetMeasuring {
  private final LegTrack legs;
  private final Body body;
  private final SetSight sight;
  private final Scale scale;
  private final Attitude attitude;
  private final ViewGeometry view;
  private final CameraSway sway;

  /** Off a true side view, degrees, plus when the camera stands ahead. */
  private final double yawDeg;

  private final SetRequest request;
  private final ClipObservations seen;
  private final Optional<BarPath> bar;
  private final Movements movements;
  private final List<Rep> reps;

  SetMeasuring(
      LegTrack legs,
      Body body,
      SetSight sight,
      Scale scale,
      Attitude attitude,
      CameraSway sway,
      SetRequest request,
      ClipObservations seen,
      Optional<BarPath> bar,
      Movements movements) {
    this.legs = legs;
    this.body = body;
    this.sight = sight;
    this.scale = scale;
    this.attitude = attitude;
    view = attitude.view();
    this.sway = sway;
    yawDeg = view.yaw().degrees();
    this.request = request;
    this.seen = seen;
    this.bar = bar;
    this.movements = movements;
    reps = movements.reps();
  }

  private BarMeasuring bar() {
    return BarMeasuring.of(bar, body, scale, sway, reps);
  }

  SetResult result() {
    Target target = request.target();
    Calibration calibration = body.calibration();
    RepMeasuring measuring =
        new RepMeasuring(
            body,
            scale,
            sway,
            new BottomMeasuring(
                body,
                sight,
                scale,
                new AttitudeDoubt(body, attitude, sway.rollDeg()),
                sway,
                yawDeg),
            frameS());
    BackReading back = back();
    BarMeasuring bar = bar();
    List<RepEvidence> evidence = evidence(back, bar);
    List<List<Fault>> faults =
        new FaultFinder(calibration, target.tempo(), target.margin().s(), knownPitchDeg())
            .find(evidence);
    FaultTelling telling = new FaultTelling(scale.cmPerPx(), body.scale().staturePx());
    RepJudge judge = new RepJudge(target, JudgeParameters.standard());
    List<RepResult> results = new ArrayList<>();
    List<RepJudgement> judgements = new ArrayList<>();
    for (int k = 0; k < reps.size(); k++) {
      Rep rep = reps.get(k);
      Map<Measure, Reading> atBottom = measuring.atBottom(rep);
      TempoReading tempo = measuring.tempo(rep);
      DriveReading drive = measuring.drive(rep);
      boolean shortRange = shortRange(rep);
      Optional<RepJudgement.NotJudged> why = sight.whyNotJudged(rep);
      RepJudgement judgement =
          why.isPresent()
              ? judge.notJudged(k + 1, why.get())
              : judge.judge(new RepReadings(k + 1, atBottom, tempo, shortRange));
      judgements.add(judgement);
      List<Flag> flags = new ArrayList<>();
      if (why.isEmpty()) {
        faults.get(k).forEach(f -> flags.add(telling.flag(f, frameAt(f.atS()))));
      }
      double bottomS = rep.times().bottomS();
      judgement
          .shinOffTarget()
          .map(off -> FaultTelling.flag(off, bottomS, frameAt(bottomS)))
          .ifPresent(flags::add);
      results.add(
          new RepResult(
              k + 1,
              rep.times(),
              tempo,
              atBottom,
              bar.reading(rep).map(drive::withBar).orElse(drive),
              shortRange,
              judgement,
              flags));
    }
    return new SetResult(
        setUp(back),
        target,
        results,
        trend(results),
        Fading.of(results),
        SetJudge.of(target, judgements),
        SeriesReading.of(legs, body, scale, view, reps),
        Sight.missing(evidence),
        backs(results, back),
        movements.notCounted());
  }

  /** What the faults of each rep are judged by. */
  List<RepEvidence> evidence() {
    return evidence(back(), bar());
  }

  private List<RepEvidence> evidence(BackReading back, BarMeasuring bar) {
    EvidenceReading reading = new EvidenceReading(body, reps, back, bar);
    return reps.stream().map(reading::of).toList();
  }

  private BackReading back() {
    return BackReading.of(squareOn(), reps, legs.facing().side());
  }

  private Map<Integer, BackLine> backs(List<RepResult> results, BackReading back) {
    Map<Integer, BackLine> backs = new HashMap<>();
    for (int k = 0; k < results.size(); k++) {
      RepResult result = results.get(k);
      boolean flagged =
          result.flags().stream().anyMatch(f -> f.kind().picture() == FaultPicture.BACK_OUTLINE);
      if (flagged) {
        back.at(reps.get(k)).ifPresent(change -> backs.put(result.rep(), change.line()));
      }
    }
    return backs;
  }

  private boolean shortRange(Rep rep) {
    return ShortRange.is(
        rep.travel() / body.scale().staturePx(), rep.tempo().loweringS(), rep.tempo().driveS());
  }

  /**
   * Between frames that may be looked at. Those that were lie farther apart where the pace is the
   * same, and nothing is lost there.
   */
  private double frameS() {
    double[] t = legs.timeS();
    int[] frames = legs.frames();
    int last = t.length - 1;
    if (last < 1) {
      return 0.1;
    }
    return Math.max(
        (t[last] - t[0]) / (frames[last] - frames[0]),
        1 / body.calibration().value(CalibrationKey.SAMPLING_LOOKS));
  }

  private int frameAt(double timeS) {
    double[] t = legs.timeS();
    int best = 0;
    for (int i = 1; i < t.length; i++) {
      if (Math.abs(t[i] - timeS) < Math.abs(t[best] - timeS)) {
        best = i;
      }
    }
    return legs.frames()[best];
  }

  private SetUp setUp(BackReading back) {
    return new SetUpReading(legs, body, scale, attitude, sway)
        .of(seen.hold(), reps.stream().map(r -> BottomWindow.of(r.times())), unseenBacks(back));
  }

  /** A pitch that is only likely widens no limit. */
  private double knownPitchDeg() {
    return attitude.pitchSource() == Attitude.Source.NONE ? 0 : attitude.pitch().deg();
  }

  /** Off the side the edge of the trunk is a shoulder blade or an arm, which move with the arms. */
  private List<TrunkOutline> squareOn() {
    return oblique() || sight.shoulders() == ShoulderSight.HIDDEN ? List.of() : seen.outlines();
  }

  private boolean oblique() {
    return Math.abs(yawDeg) >= body.calibration().value(CalibrationKey.SIDE_VIEW_OBLIQUE);
  }

  /** No flag must not pass for a good back where nobody could see it. */
  private Optional<Warning> unseenBacks(BackReading back) {
    if (sight.shoulders() == ShoulderSight.HIDDEN) {
      return Optional.of(Warning.PlainWarning.SHOULDERS_HIDDEN);
    }
    if (oblique()) {
      return Optional.of(Warning.PlainWarning.BACK_OFF_SIDE);
    }
    List<Integer> unseen = new ArrayList<>();
    for (int k = 0; k < reps.size(); k++) {
      if (back.at(reps.get(k)).isEmpty()) {
        unseen.add(k + 1);
      }
    }
    return unseen.isEmpty()
        ? Optional.empty()
        : Optional.of(new Warning.BackUnseen(unseen, reps.size()));
  }

  private static Map<Measure, Double> trend(List<RepResult> reps) {
    Map<Measure, Double> trend = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      LineFit line = new LineFit();
      for (RepResult rep : reps) {
        rep.at(measure).measured().ifPresent(m -> line.add(rep.rep(), m.value()));
      }
      if (line.count() >= 3) {
        trend.put(measure, line.slope());
      }
    }
    return trend;
  }
}
