package shinline.cli.check;

import java.util.Locale;

/** Which pose model looks at the clip. */
public enum ModelChoice {
  FULL,
  HEAVY;

  /** As typed on the command line and written in results. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
