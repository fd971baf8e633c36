package shinline.metrics.analysis;

import java.util.function.Function;
import shinline.metrics.result.SetResult;

/** A measured set, or why there is none. */
public sealed interface AnalysisOutcome {

  record Measured(SetResult set) implements AnalysisOutcome {}

  /**
   * @param kind for the exit code and the JSON
   * @param reason what is wrong, in the coach's words
   * @param advice what to do about it
   */
  record NotMeasured(Kind kind, String reason, String advice) implements AnalysisOutcome {}

  /** Why a clip cannot be measured. */
  enum Kind {
    NOBODY,
    NOT_SIDE_VIEW,
    NO_REP,
    LEGS_UNRESOLVED,
    TOO_SHORT
  }

  default <T> T fold(Function<Measured, T> measured, Function<NotMeasured, T> not) {
    return this instanceof Measured m ? measured.apply(m) : not.apply((NotMeasured) this);
  }
}
