package shinline.metrics.training;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a set was for. Only work sets count towards what is next. */
public enum Purpose {
  WORK,
  WARM_UP,
  LIGHT,
  TECHNIQUE,
  TEST;

  /** As written in files, for example {@code warm-up}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Purpose> of(String word) {
    return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst();
  }
}
