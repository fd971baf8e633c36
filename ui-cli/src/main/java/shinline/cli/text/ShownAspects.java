package shinline.cli.text;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.target.Target;

/** Which numbers of a rep a table shows: the usual ones, and whatever else is asked for. */
public final class ShownAspects {
  private static final List<Aspect> ORDER =
      List.of(
          Aspect.LOWERING,
          Aspect.HOLD,
          Aspect.DRIVE,
          Aspect.TOP,
          Aspect.SHIN,
          Aspect.KNEE,
          Aspect.TRUNK,
          Aspect.THIGH,
          Aspect.HIP_TRAVEL,
          Aspect.REAR_KNEE);

  private static final Set<Aspect> ONLY_WHEN_ASKED = EnumSet.of(Aspect.TOP, Aspect.HIP_TRAVEL);

  private ShownAspects() {}

  /** In the order of the columns. */
  public static List<Aspect> of(Target target) {
    Set<Aspect> asked = asked(target);
    return ORDER.stream().filter(a -> !ONLY_WHEN_ASKED.contains(a) || asked.contains(a)).toList();
  }

  public static boolean asks(Target target, Aspect aspect) {
    return asked(target).contains(aspect);
  }

  private static Set<Aspect> asked(Target target) {
    Set<Aspect> asked = EnumSet.noneOf(Aspect.class);
    Asked.of(target).stream().flatMap(a -> a.aspect().stream()).forEach(asked::add);
    return asked;
  }
}
