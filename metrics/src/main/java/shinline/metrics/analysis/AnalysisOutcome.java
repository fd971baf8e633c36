package shinline.metrics.analysis;

import java.util.function.Function;
import shinline.metrics.result.SetResult;

/** A measured set, or why there is none. */
public sealed interface AnalysisOutcome {

  record Measured(SetResult set) implements AnalysisOutcome {}

  record NotMeasured(SetRefusal why) implements AnalysisOutcome {}

  default <T> T fold(Function<Measured, T> measured, Function<NotMeasured, T> not) {
    return this instanceof Measured m ? measured.apply(m) : not.apply((NotMeasured) this);
  }
}
