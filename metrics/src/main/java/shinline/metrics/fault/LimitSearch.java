package shinline.metrics.fault;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.target.Target;

/**
 * Finds where a kind's flag comes and goes as its limit is moved: what a limit is fitted to. It
 * asks the rule itself, so that every condition of the rule counts, and halves the key's range
 * until the turn is found.
 */
public final class LimitSearch {
  /** Leaves less than a millionth of any key's range. */
  private static final int HALVINGS = 30;

  private final FlagKind kind;
  private final CalibrationKey key;
  private final List<RepEvidence> reps;
  private final Calibration calibration;

  /**
   * @param calibration what the other limits are
   */
  public LimitSearch(
      FlagKind kind, CalibrationKey key, List<RepEvidence> reps, Calibration calibration) {
    this.kind = kind;
    this.key = key;
    this.reps = List.copyOf(reps);
    this.calibration = calibration;
  }

  /** On which side of its limit a value is a fault. */
  public enum Side {
    ABOVE,
    BELOW
  }

  /**
   * The limit at which a rep's flag turns, in the key's unit.
   *
   * @param fault the side of the limit on which the rep would be flagged
   */
  public record Turn(double limit, Side fault) {}

  /**
   * @param index of the rep in the set
   * @return empty where the limit decides nothing: what it takes was not seen, or another condition
   *     settles it
   */
  public Optional<Turn> of(int index) {
    double low = key.least();
    double high = key.most();
    boolean atLow = flagged(index, low);
    if (atLow == flagged(index, high)) {
      return Optional.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (flagged(index, middle) == atLow) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(new Turn((low + high) / 2, atLow ? Side.ABOVE : Side.BELOW));
  }

  private boolean flagged(int index, double limit) {
    Target none = Target.none();
    SetEvidence set =
        new SetEvidence(
            reps, calibration.trying(Map.of(key, limit)), none.tempo(), none.margin().s(), 0);
    return kind.of(reps.get(index), set).findAny().isPresent();
  }
}
