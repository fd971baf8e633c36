package shinline.metrics.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A set in short.
 *
 * @param reps how many
 * @param against how they stand against what was asked for; empty when nothing was, or there is no
 *     rep
 */
public record SetSummary(int reps, Optional<Against> against) {

  /**
   * @param target name of what was asked for; empty when it has none
   * @param verdicts how many reps have each
   * @param worst the one thing to work on; empty when every rep is a hit
   */
  public record Against(
      Optional<String> target, Map<Verdict, Integer> verdicts, Optional<Theme> worst) {
    public Against {
      EnumMap<Verdict, Integer> copy = new EnumMap<>(Verdict.class);
      copy.putAll(verdicts);
      verdicts = Collections.unmodifiableMap(copy);
    }

    /** How many reps have that verdict. */
    public int count(Verdict verdict) {
      return verdicts.getOrDefault(verdict, 0);
    }
  }

  /**
   * What several reps have in common.
   *
   * @param example the finding that is furthest out; the first where none is outside
   * @param reps numbers of the reps, at least one
   */
  public record Theme(Finding example, List<Integer> reps) {
    public Theme {
      reps = List.copyOf(reps);
    }
  }
}
