package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import shinline.cli.words.Words;
import shinline.metrics.fault.FaultPicture;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/**
 * A number of each rep.
 *
 * @param aspect the limit it is judged by
 * @param faults what the pictures of the faults point at that show in it
 */
record RepColumn(
    String name,
    MeasureUnit unit,
    Aspect aspect,
    Set<FaultPicture> faults,
    Function<RepResult, Reading> reading) {

  /** The columns of a set; without a scale the knee is told in parts of the foot. */
  static List<RepColumn> of(SetResult set) {
    boolean scale =
        set.reps().stream().anyMatch(r -> r.at(Measure.KNEE_PAST_TOE).measured().isPresent());
    Measure knee = scale ? Measure.KNEE_PAST_TOE : Measure.KNEE_PAST_TOE_FOOT;
    List<RepColumn> columns = new ArrayList<>();
    columns.add(
        new RepColumn(
            Words.say("table.lowering"),
            MeasureUnit.SECONDS,
            Aspect.LOWERING,
            Set.of(FaultPicture.LOWERING),
            r -> r.tempo().lowering()));
    columns.add(
        new RepColumn(
            Words.say("table.hold"),
            MeasureUnit.SECONDS,
            Aspect.HOLD,
            Set.of(FaultPicture.HOLD),
            r -> r.tempo().hold()));
    columns.add(
        new RepColumn(
            Words.say("table.drive"),
            MeasureUnit.SECONDS,
            Aspect.DRIVE,
            Set.of(FaultPicture.DRIVE),
            r -> r.tempo().drive()));
    columns.add(atBottom(Words.say("table.shin"), Measure.SHIN, Aspect.SHIN, Set.of()));
    columns.add(atBottom(Words.say("table.knee"), knee, Aspect.KNEE, Set.of()));
    columns.add(
        atBottom(
            Words.say("table.trunk"),
            Measure.TRUNK_LEAN,
            Aspect.TRUNK,
            Set.of(FaultPicture.TRUNK_CHANGE)));
    columns.add(
        atBottom(
            Words.say("table.thigh"), Measure.THIGH, Aspect.THIGH, Set.of(FaultPicture.DEPTH)));
    if (set.reps().stream().anyMatch(r -> r.at(Measure.REAR_KNEE_HEIGHT).measured().isPresent())) {
      columns.add(
          atBottom(
              Words.say("table.rear-knee"),
              Measure.REAR_KNEE_HEIGHT,
              Aspect.REAR_KNEE,
              Set.of(FaultPicture.DEPTH)));
    }
    return columns;
  }

  private static RepColumn atBottom(
      String name, Measure measure, Aspect aspect, Set<FaultPicture> faults) {
    return new RepColumn(name, measure.unit(), aspect, faults, r -> r.at(measure));
  }
}
