package shinline.metrics.training;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Flags of one set that the coach looked at and dismissed: they spoil nothing.
 *
 * <p>Where the record tells verdict and flags rep by rep, the clean reps are counted anew. Where it
 * has counts only, a dismissed flag gives back a rep as far as the counts prove it: the flags left
 * can spoil one rep each, and a rep that missed its target stays missed.
 *
 * @param dismissed each flag once
 */
public record Dismissals(Set<Dismissed> dismissed) {

  /**
   * One dismissed flag.
   *
   * @param flag name of its kind
   * @param rep number of the rep; empty for every rep of the set
   */
  public record Dismissed(String flag, OptionalInt rep) {
    boolean covers(String kind, int number) {
      return flag.equals(kind) && rep.orElse(number) == number;
    }
  }

  public Dismissals {
    dismissed = Set.copyOf(dismissed);
  }

  /**
   * The counts without the dismissed flags.
   *
   * @param spoiling names of the kinds that make a rep not clean
   */
  public SetCounts applyTo(SetCounts counts, Set<String> spoiling) {
    if (dismissed.isEmpty()) {
      return counts;
    }
    return counts.perRep().isEmpty() ? byCounts(counts, spoiling) : byRep(counts, spoiling);
  }

  private SetCounts byRep(SetCounts counts, Set<String> spoiling) {
    List<SetCounts.RepNote> left =
        counts.perRep().stream()
            .map(
                r ->
                    new SetCounts.RepNote(
                        r.rep(),
                        r.judged(),
                        r.onTarget(),
                        r.flags().stream().filter(f -> !covered(f, r.rep())).toList()))
            .toList();
    int unclear = 0;
    int clean = 0;
    for (SetCounts.RepNote rep : left) {
      boolean spoilt = rep.flags().stream().anyMatch(spoiling::contains);
      if (!spoilt && !rep.judged()) {
        unclear++;
      } else if (!spoilt && rep.onTarget()) {
        clean++;
      }
    }
    Map<String, Integer> flags =
        left.stream()
            .flatMap(r -> r.flags().stream().distinct())
            .collect(Collectors.toMap(f -> f, f -> 1, Integer::sum));
    return new SetCounts(counts.reps(), counts.verdicts(), unclear, clean, flags, left);
  }

  private boolean covered(String flag, int rep) {
    return dismissed.stream().anyMatch(d -> d.covers(flag, rep));
  }

  private SetCounts byCounts(SetCounts counts, Set<String> spoiling) {
    int gone = 0;
    for (String kind : spoiling) {
      gone += dismissedOf(kind, counts);
    }
    int standing =
        counts.flags().entrySet().stream()
            .filter(f -> spoiling.contains(f.getKey()))
            .mapToInt(Map.Entry::getValue)
            .sum();
    int ceiling = counts.verdicts().map(v -> v.hit() + v.near()).orElse(counts.judged());
    int proved = ceiling - Math.max(0, standing - gone);
    int clean = Math.max(counts.cleanReps(), Math.min(counts.cleanReps() + gone, proved));
    return new SetCounts(
        counts.reps(), counts.verdicts(), counts.unclear(), clean, counts.flags(), List.of());
  }

  /** Reps from which a flag of this kind goes. */
  private int dismissedOf(String kind, SetCounts counts) {
    List<OptionalInt> reps =
        dismissed.stream().filter(d -> d.flag().equals(kind)).map(Dismissed::rep).toList();
    // A set counted by eye has no flags on its line, yet one may have been seen and taken back.
    int flagged = counts.flags().isEmpty() ? counts.reps() : counts.flags().getOrDefault(kind, 0);
    return reps.stream().anyMatch(OptionalInt::isEmpty) ? flagged : Math.min(reps.size(), flagged);
  }
}
