package shinline.cli.team;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import shinline.cli.finding.ClipFinding;
import shinline.cli.record.AthleteName;
import shinline.cli.sheet.PlannedSet;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetEntry;

/**
 * A row of the sheet and what came of it.
 *
 * @param entry as it stands on record; empty when nobody knows how the set went
 * @param finding of its clip
 * @param filmed when its clip was written
 * @param notes what the coach should know of it
 */
public record SetOutcome(
    PlannedSet planned,
    Optional<SetEntry> entry,
    Optional<ClipFinding> finding,
    Optional<Instant> filmed,
    OnRecord onRecord,
    List<String> notes) {

  /** Whether the set went into the record. */
  public enum OnRecord {
    ADDED,
    THERE_BEFORE,
    NOT_RECORDED
  }

  public SetOutcome {
    notes = List.copyOf(notes);
  }

  public AthleteName athlete() {
    return planned.athlete();
  }

  public Side leg() {
    return planned.leg();
  }
}
