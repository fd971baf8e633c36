package shinline.cli.record;

import java.text.Normalizer;
import java.util.Locale;

/**
 * A name as written; names that differ in letter case, outer or repeated blanks, or in how an
 * accented letter is coded, are one athlete.
 */
public record AthleteName(String written) {

  public AthleteName {
    written = Normalizer.normalize(written, Normalizer.Form.NFC).strip().replaceAll("\\s+", " ");
    if (written.isEmpty()) {
      throw new IllegalArgumentException("an athlete without a name");
    }
  }

  /** The same for every way to write the name. */
  public String key() {
    return written.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }

  public boolean sameAs(AthleteName other) {
    return key().equals(other.key());
  }
}
