package shinline.cli.text;

import java.util.List;
import shinline.cli.words.Words;
import shinline.metrics.result.SetResult;

/** What of the clip is no rep of the set, one line each. */
public final class NotCountedWords {
  private NotCountedWords() {}

  public static List<String> of(SetResult set) {
    return set.notCounted().stream()
        .map(
            not ->
                Words.say(
                    "not-counted", not.fromS(), not.toS(), Words.of(not.reason(), "not-counted")))
        .toList();
  }
}
