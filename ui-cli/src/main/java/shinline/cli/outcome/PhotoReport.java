package shinline.cli.outcome;

import java.util.List;
import java.util.function.Function;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.result.PostureResult;
import shinline.metrics.target.Target;

/** What came of one still picture. */
public sealed interface PhotoReport {

  /**
   * @param photo one frame that lasts no time
   * @param warnings about the picture itself, plain words, most important first
   * @param overrides what the coach told
   */
  record Measured(
      ClipFacts photo, PostureResult posture, List<String> warnings, SetRequest.Overrides overrides)
      implements PhotoReport {
    public Measured {
      warnings = List.copyOf(warnings);
    }
  }

  /** The picture was read, but no posture could be measured in it. */
  record NotMeasured(ClipFacts photo, Target target, SetRefusal why, List<String> warnings)
      implements PhotoReport {
    public NotMeasured {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * The picture could not be read at all.
   *
   * @param reason what is wrong
   * @param advice what to do about it
   */
  record Unreadable(String fileName, String reason, String advice) implements PhotoReport {}

  default <T> T fold(
      Function<Measured, T> measured,
      Function<NotMeasured, T> notMeasured,
      Function<Unreadable, T> unreadable) {
    if (this instanceof Measured m) {
      return measured.apply(m);
    }
    return this instanceof NotMeasured n
        ? notMeasured.apply(n)
        : unreadable.apply((Unreadable) this);
  }

  default ExitCode exitCode() {
    return fold(m -> ExitCode.MEASURED, n -> ExitCode.NOT_MEASURED, u -> ExitCode.UNREADABLE);
  }
}
