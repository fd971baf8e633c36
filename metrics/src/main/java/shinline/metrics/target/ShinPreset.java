package shinline.metrics.target;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The house's shin targets; a coach sets own bands in a target file. */
public enum ShinPreset {
  UPRIGHT(new ShinTarget.AngleBand("upright", -10, 10)),
  OVER_TOE(new ShinTarget.KneePastToeBand("over-toe", -3, 5)),
  PAST_TOE(new ShinTarget.KneePastToeBand("past-toe", 5, Double.POSITIVE_INFINITY));

  private final ShinTarget target;

  ShinPreset(ShinTarget target) {
    this.target = target;
  }

  public ShinTarget target() {
    return target;
  }

  /** Name as typed on the command line, for example {@code over-toe}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<ShinPreset> of(String word) {
    return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst();
  }
}
