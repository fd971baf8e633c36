package shinline.metrics.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.load.Comparison;
import shinline.metrics.statistics.PolynomialFit;
import shinline.metrics.training.SetCounts;

/**
 * How sets of one leg in one session go from their first reps to their last.
 *
 * @param firstHalf judged reps of the first halves of the sets, and how many of them were clean
 * @param lastHalf of the last halves; the middle rep of an odd number is in neither
 * @param speedLossPct mean over the sets: fastest rep less the last, share of the fastest, per cent
 *     (advisory: Jukic 2023, doi 10.1186/s40798-023-00626-z)
 * @param drift mean over the sets of the change from first to last rep along a straight line fitted
 *     by least squares, for each measure in its unit
 */
public record Fading(
    LocalDate date,
    Half firstHalf,
    Half lastHalf,
    OptionalDouble speedLossPct,
    Map<Followed, Double> drift) {

  /** Fewer reps make no trend. */
  private static final int LEAST_REPS = 3;

  private static final Set<String> SPOILING =
      Arrays.stream(FlagKind.values())
          .filter(FlagKind::spoils)
          .map(FlagKind::jsonName)
          .collect(Collectors.toUnmodifiableSet());

  private static final List<Followed> DRIFTING =
      List.of(Followed.SHIN, Followed.DEPTH, Followed.TRUNK);

  /** Some reps of a set. */
  public record Half(int judged, int clean) {
    Half plus(Half more) {
      return new Half(judged + more.judged, clean + more.clean);
    }
  }

  public Fading {
    drift = Map.copyOf(drift);
  }

  /** By date; days on which no set was kept rep by rep are left out. */
  static List<Fading> of(LegProgress leg) {
    Map<LocalDate, List<FollowedSet>> days = new TreeMap<>();
    leg.workSets().stream()
        .filter(
            s ->
                s.set().entry().counts().perRep().size() >= LEAST_REPS
                    || s.reps().size() >= LEAST_REPS)
        .forEach(s -> days.computeIfAbsent(s.set().date(), d -> new ArrayList<>()).add(s));
    return days.entrySet().stream().map(d -> of(d.getKey(), d.getValue())).toList();
  }

  private static Fading of(LocalDate date, List<FollowedSet> sets) {
    Half first = new Half(0, 0);
    Half last = new Half(0, 0);
    for (FollowedSet set : sets) {
      List<SetCounts.RepNote> reps = set.set().entry().counts().perRep();
      int half = reps.size() / 2;
      first = first.plus(half(reps.subList(0, half)));
      last = last.plus(half(reps.subList(reps.size() - half, reps.size())));
    }
    Map<Followed, Double> drift = new TreeMap<>();
    for (Followed followed : DRIFTING) {
      List<Double> changes =
          sets.stream().flatMap(s -> drift(numbers(s, followed)).stream()).toList();
      mean(changes).ifPresent(m -> drift.put(followed, m));
    }
    List<Double> losses =
        sets.stream()
            .flatMap(s -> speedLossPct(numbers(s, Followed.DRIVE_SPEED).values()).stream())
            .toList();
    return new Fading(date, first, last, mean(losses), drift);
  }

  private static Half half(List<SetCounts.RepNote> reps) {
    int judged = 0;
    int clean = 0;
    for (SetCounts.RepNote rep : reps) {
      boolean spoilt = rep.flags().stream().anyMatch(SPOILING::contains);
      judged += rep.judged() || spoilt ? 1 : 0;
      clean += rep.judged() && rep.onTarget() && !spoilt ? 1 : 0;
    }
    return new Half(judged, clean);
  }

  private static TreeMap<Integer, Double> numbers(FollowedSet set, Followed followed) {
    TreeMap<Integer, Double> numbers = new TreeMap<>();
    set.reps()
        .forEach(
            (rep, shown) -> {
              Double value = shown.get(followed);
              if (value != null) {
                numbers.put(rep, value);
              }
            });
    return numbers;
  }

  /** Along the fitted line, from the first rep with a value to the last. */
  static Optional<Double> drift(TreeMap<Integer, Double> values) {
    if (values.size() < LEAST_REPS) {
      return Optional.empty();
    }
    double[] rep = values.keySet().stream().mapToDouble(k -> k).toArray();
    double[] value = values.values().stream().mapToDouble(v -> v).toArray();
    return Optional.of(
        new PolynomialFit(rep, 1).through(value)[1] * (values.lastKey() - values.firstKey()));
  }

  private static Optional<Double> speedLossPct(Collection<Double> speeds) {
    if (speeds.size() < LEAST_REPS) {
      return Optional.empty();
    }
    double fastest = speeds.stream().mapToDouble(s -> s).max().orElseThrow();
    double last = speeds.stream().reduce((a, b) -> b).orElseThrow();
    return fastest > 0 ? Optional.of(100 * Comparison.speedLoss(fastest, last)) : Optional.empty();
  }

  private static OptionalDouble mean(List<Double> numbers) {
    return numbers.stream().mapToDouble(n -> n).average();
  }
}
