package shinline.cli.report;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import shinline.cli.text.ShownAspects;
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
    return ShownAspects.of(set.target()).stream()
        .filter(aspect -> aspect != Aspect.REAR_KNEE || tellsRearKnee(set))
        .map(aspect -> aspect == Aspect.KNEE ? of(aspect, knee) : of(aspect))
        .toList();
  }

  /** Often hidden behind the bench: no empty column unless somebody asked for it. */
  private static boolean tellsRearKnee(SetResult set) {
    return ShownAspects.asks(set.target(), Aspect.REAR_KNEE)
        || set.reps().stream().anyMatch(r -> r.at(Aspect.REAR_KNEE).measured().isPresent());
  }

  private static RepColumn of(Aspect aspect) {
    return new RepColumn(
        Words.of(aspect, "column"), aspect.unit(), aspect, faults(aspect), r -> r.at(aspect));
  }

  private static RepColumn of(Aspect aspect, Measure measure) {
    return new RepColumn(
        Words.of(aspect, "column"), measure.unit(), aspect, faults(aspect), r -> r.at(measure));
  }

  private static Set<FaultPicture> faults(Aspect aspect) {
    return switch (aspect) {
      case LOWERING -> Set.of(FaultPicture.LOWERING);
      case HOLD -> Set.of(FaultPicture.HOLD);
      case DRIVE -> Set.of(FaultPicture.DRIVE);
      case TRUNK -> Set.of(FaultPicture.TRUNK_CHANGE);
      case THIGH, REAR_KNEE, HIP_TRAVEL -> Set.of(FaultPicture.DEPTH);
      case SHIN, KNEE, TOP -> Set.of();
    };
  }
}
