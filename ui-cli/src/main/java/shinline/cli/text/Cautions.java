package shinline.cli.text;

import java.util.List;
import java.util.stream.Stream;
import shinline.cli.words.Words;

/** What every report must say about itself, whatever it found. */
public final class Cautions {
  private Cautions() {}

  /** What one camera at the side cannot show. */
  public static List<String> limits() {
    return Words.lines("caution.limits");
  }

  /** For the athlete's safety. */
  public static List<String> safety() {
    return Words.lines("caution.safety");
  }

  /** Both, for what may travel alone. */
  public static List<String> all() {
    return Stream.concat(limits().stream(), safety().stream()).toList();
  }
}
