package shinline.metrics.training;

import java.util.Locale;

/** Where the counts of a set come from. */
public enum SetSource {
  /** Measured from a clip. */
  CLIP,
  /** Counted by eye. */
  BY_HAND;

  /** As written in files, for example {@code by-hand}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
