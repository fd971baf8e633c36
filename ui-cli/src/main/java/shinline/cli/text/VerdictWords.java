package shinline.cli.text;

import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.Verdict;

/** A rep's verdict in a word or two; a rep that a fault spoils is never called good. */
public final class VerdictWords {
  private VerdictWords() {}

  /** Empty when nothing was asked. */
  public static Optional<String> of(RepResult rep) {
    return rep.verdict()
        .map(
            verdict ->
                looksBetter(rep)
                    ? Words.say("verdict.not-clean", Words.of(verdict, "name"))
                    : Words.of(verdict, "name"));
  }

  /** Whether the bare verdict is better than the rep. */
  static boolean looksBetter(RepResult rep) {
    return rep.spoilt()
        && rep.verdict().filter(v -> v == Verdict.HIT || v == Verdict.NEAR).isPresent();
  }
}
