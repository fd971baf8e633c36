package shinline.metrics.load;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the athlete carries. */
public enum LoadKind {
  NONE,
  /** One dumbbell in each hand; a load is that of one. */
  EACH_HAND,
  BAR,
  /** A bar that runs in rails. */
  GUIDED_BAR;

  /** As written in files, for example {@code each-hand}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<LoadKind> of(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
  }

  public boolean isBar() {
    return this == BAR || this == GUIDED_BAR;
  }
}
