package shinline.metrics.analysis;

import java.util.function.Function;
import shinline.metrics.result.PostureResult;

/** What came of the looks at one still picture. */
public sealed interface PostureOutcome {
  record Measured(PostureResult posture) implements PostureOutcome {}

  record NotMeasured(SetRefusal why) implements PostureOutcome {}

  default <T> T fold(Function<Measured, T> measured, Function<NotMeasured, T> not) {
    return this instanceof Measured m ? measured.apply(m) : not.apply((NotMeasured) this);
  }
}
