package shinline.metrics.training;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What became of the reps of a set.
 *
 * @param reps done
 * @param verdicts empty when nothing was asked for, or nobody judged
 * @param unclear reps that could not be judged and carry no spoiling flag: they leave the count
 * @param cleanReps hit or near (with nothing asked for: judged) and without a spoiling flag
 * @param flags reps with a flag of each kind, by the kind's name
 * @param perRep verdict and flags rep by rep, where known; empty, or one for each rep
 */
public record SetCounts(
    int reps,
    Optional<Verdicts> verdicts,
    int unclear,
    int cleanReps,
    Map<String, Integer> flags,
    List<RepNote> perRep) {

  /** Reps by verdict. */
  public record Verdicts(int hit, int near, int miss) {}

  /**
   * One rep.
   *
   * @param rep number in the set, from 1
   * @param judged false when its verdict is unclear
   * @param onTarget hit or near; with nothing asked for, true
   * @param flags names of its flags
   */
  public record RepNote(int rep, boolean judged, boolean onTarget, List<String> flags) {
    public RepNote {
      flags = List.copyOf(flags);
    }
  }

  public SetCounts {
    flags = Map.copyOf(flags);
    perRep = List.copyOf(perRep);
    if (reps < 0 || unclear < 0 || cleanReps < 0 || unclear > reps || cleanReps > reps) {
      throw new IllegalArgumentException(
          reps + " reps, of which " + unclear + " unclear and " + cleanReps + " clean");
    }
  }

  /** Counted by eye. */
  public static SetCounts byHand(int reps, int cleanReps) {
    return new SetCounts(reps, Optional.empty(), 0, cleanReps, Map.of(), List.of());
  }

  /** Reps that count: done and not unclear. */
  public int judged() {
    return reps - unclear;
  }

  /** Judged reps that were not clean. */
  public int notClean() {
    return Math.max(0, judged() - cleanReps);
  }
}
