package shinline.cli.text;

import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;

/** A few plain words for each fault. */
public final class FlagWords {
  private FlagWords() {}

  public static String of(FlagKind kind) {
    return Words.of(kind, "name");
  }
}
