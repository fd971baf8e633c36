package shinline.cli.text;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.words.Words;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;

/** One posture in a sentence, the same in the terminal, on the page and over the picture. */
public final class PostureWords {
  private PostureWords() {}

  /** How the shin stands, and the verdict where there is one; a capital first, no full stop. */
  public static String headline(PostureResult posture) {
    String shin =
        posture
            .at(Measure.SHIN)
            .fold(
                PostureWords::shin,
                gap -> Words.say("posture.no-shin", Words.of(gap.gap(), "reason")));
    String said =
        posture
            .verdict()
            .map(verdict -> Words.say("posture.judged", Words.of(verdict, "posture"), shin))
            .orElse(shin);
    return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
  }

  private static String shin(Reading.Measured shin) {
    return Words.say(
        shin.value() < 0 ? "posture.shin.back" : "posture.shin",
        Amount.of(shin.value(), MeasureUnit.DEGREES),
        Amount.of(shin.plusMinus(), MeasureUnit.DEGREES));
  }

  /** Why it is not as it was asked for, in one line; empty where there is nothing to say. */
  public static Optional<String> asked(PostureResult posture) {
    String reasons =
        JudgementWords.reasons(posture.judgement()).stream().collect(Collectors.joining("; "));
    return reasons.isEmpty() ? Optional.empty() : Optional.of(reasons);
  }
}
