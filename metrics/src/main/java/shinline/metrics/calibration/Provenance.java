package shinline.metrics.calibration;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * Where values come from.
 *
 * @param id short name, unique in a calibration
 * @param how how the values were found, in words
 * @param clips names of the clips that they rest on; empty when they rest on none that is kept
 * @param when day on which they were set
 */
public record Provenance(String id, Kind kind, String how, List<String> clips, LocalDate when) {

  /** What kind of authority a value has. */
  public enum Kind {
    /** Computed from clips with truth, or set on them. */
    FITTED,
    /** Our own choice. */
    CHOSEN,
    COMMON_PRACTICE,
    /** From a published source, which {@link Provenance#how} names. */
    PUBLISHED;

    /** As written in the calibration file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public Provenance {
    clips = List.copyOf(clips);
    if (id.isBlank() || how.isBlank()) {
      throw new IllegalArgumentException("a source needs an id and words on how: '" + id + "'");
    }
  }
}
