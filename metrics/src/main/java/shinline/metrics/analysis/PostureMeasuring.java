package shinline.metrics.analysis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.judgement.JudgeParameters;
import shinline.metrics.judgement.RepJudge;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.metrics.result.TempoReading;
import shinline.metrics.result.Warning;
import shinline.metrics.target.Target;
import shinline.metrics.track.LegTrack;
import shinline.metrics.view.Attitude;

/** Puts a posture's result together: measures, verdict, flags. */
record PostureMeasuring(LegTrack legs, Body body, SetSight sight, Scale scale, Attitude attitude) {

  PostureResult result(Target target) {
    double[] times = legs.timeS();
    // Over all looks: each shows the same posture.
    BottomWindow window = new BottomWindow(times[0], times[times.length - 1], times[0]);
    Map<Measure, Reading> measures = measures(window);
    RepJudgement judgement =
        new RepJudge(target.ofPosture(), JudgeParameters.standard())
            .judge(new RepReadings(1, measures, noTempo(), false));
    List<Flag> flags =
        judgement.shinOffTarget().stream()
            .filter(off -> FlagKind.SHIN_OFF_TARGET.seenInOnePosture())
            .map(off -> FaultTelling.flag(off, 0, 0))
            .toList();
    return new PostureResult(
        new SetUpReading(legs, body, scale, attitude, CameraSway.NONE)
            .of(CameraHold.STILL, Stream.of(window), hiddenShoulders()),
        target,
        measures,
        judgement,
        flags,
        SeriesReading.of(legs, body, scale, attitude.view(), List.of()));
  }

  private Map<Measure, Reading> measures(BottomWindow window) {
    Map<Measure, Reading> measures = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      if (!measure.seenInOnePosture()) {
        measures.put(measure, Reading.missing(Gap.ONE_POSTURE));
      }
    }
    measures.putAll(
        new BottomMeasuring(
                body,
                sight,
                scale,
                new AttitudeDoubt(body, attitude, 0),
                CameraSway.NONE,
                attitude.view().yaw().degrees())
            .posture(window));
    return measures;
  }

  private Optional<Warning> hiddenShoulders() {
    return sight.shoulders() == ShoulderSight.HIDDEN
        ? Optional.of(Warning.PlainWarning.SHOULDERS_HIDDEN)
        : Optional.empty();
  }

  private static TempoReading noTempo() {
    Reading none = Reading.missing(Gap.ONE_POSTURE);
    return new TempoReading(none, none, none, none);
  }
}
