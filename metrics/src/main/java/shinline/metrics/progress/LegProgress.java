package shinline.metrics.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/**
 * One leg over the weeks. Work sets count; for the maximum test sets as well.
 *
 * @param unit in which masses are told
 * @param formula of the estimated maximum
 */
public record LegProgress(Side leg, List<FollowedSet> sets, MassUnit unit, OneRepMax formula) {
  /** Beyond ten reps no formula of the maximum is good (OneRepMax). */
  public static final int MOST_REPS_FOR_MAXIMUM = 10;

  /**
   * @param sets of any leg and purpose
   */
  public LegProgress {
    sets =
        sets.stream()
            .filter(s -> s.set().entry().leg() == leg)
            .sorted(Comparator.comparing((FollowedSet s) -> s.set().place()))
            .toList();
  }

  /** Sets that training is followed by. */
  public List<FollowedSet> workSets() {
    return sets.stream().filter(s -> s.set().entry().purpose() == Purpose.WORK).toList();
  }

  /** By date; what was not measured in any session is empty. */
  public List<Stretch> stretches(Followed followed) {
    return switch (followed) {
      case LOAD -> inARow(followed, workSets(), this::load, LegProgress::lightest);
      case MAXIMUM -> inARow(followed, sets, this::maximum, LegProgress::best);
      default ->
          inARow(
              followed,
              workSets(),
              s -> Optional.ofNullable(s.amounts().get(followed)),
              LegProgress::mean);
    };
  }

  /** The latest stretch. */
  public Optional<Stretch> latest(Followed followed) {
    return stretches(followed).stream().reduce((a, b) -> b);
  }

  private Optional<Amount> load(FollowedSet set) {
    return set.set().entry().load().map(l -> Amount.bare(l.mass().in(unit).value().doubleValue()));
  }

  /** From a set of which every rep was judged and clean, and that was not too long. */
  private Optional<Amount> maximum(FollowedSet followed) {
    SetEntry set = followed.set().entry();
    SetCounts counts = set.counts();
    boolean counted = set.purpose() == Purpose.WORK || set.purpose() == Purpose.TEST;
    boolean clean =
        counts.cleanReps() == counts.reps()
            && counts.reps() > 0
            && counts.reps() <= MOST_REPS_FOR_MAXIMUM;
    return counted && clean
        ? set.load()
            .map(TrainingLoad::mass)
            .map(
                m -> Amount.bare(formula.estimate(m, counts.reps()).in(unit).value().doubleValue()))
        : Optional.empty();
  }

  private record Seen(FollowedSet set, Amount amount) {}

  private static Amount mean(List<Seen> seen) {
    return Amount.mean(seen.stream().map(Seen::amount).toList());
  }

  /** All sets of the session had at least this. */
  private static Amount lightest(List<Seen> seen) {
    return Amount.bare(seen.stream().mapToDouble(s -> s.amount().value()).min().orElseThrow());
  }

  private static Amount best(List<Seen> seen) {
    return Amount.bare(seen.stream().mapToDouble(s -> s.amount().value()).max().orElseThrow());
  }

  private static List<Stretch> inARow(
      Followed followed,
      List<FollowedSet> sets,
      Function<FollowedSet, Optional<Amount>> amount,
      Function<List<Seen>, Amount> ofSession) {
    Map<LocalDate, Map<Asking, List<Seen>>> days = new TreeMap<>();
    for (FollowedSet set : sets) {
      amount
          .apply(set)
          .ifPresent(
              a ->
                  days.computeIfAbsent(set.set().date(), d -> new LinkedHashMap<>())
                      .computeIfAbsent(Asking.of(set.set().entry()), k -> new ArrayList<>())
                      .add(new Seen(set, a)));
    }
    List<Stretch> done = new ArrayList<>();
    for (Map.Entry<LocalDate, Map<Asking, List<Seen>>> day : days.entrySet()) {
      for (Map.Entry<Asking, List<Seen>> session : day.getValue().entrySet()) {
        SessionValue value =
            new SessionValue(
                day.getKey(),
                ofSession.apply(session.getValue()),
                session.getValue().stream().map(Seen::set).map(s -> s.set().id()).toList());
        add(done, followed, session.getKey(), value);
      }
    }
    return done;
  }

  private static void add(
      List<Stretch> done, Followed followed, Asking asking, SessionValue value) {
    int last = done.size() - 1;
    if (last >= 0 && done.get(last).asking().equals(asking)) {
      List<SessionValue> longer = new ArrayList<>(done.get(last).values());
      longer.add(value);
      done.set(last, new Stretch(followed, asking, longer));
    } else {
      done.add(new Stretch(followed, asking, List.of(value)));
    }
  }

  /** The last five-rep test, the best of its day. */
  Optional<RecordedSet> fiveRepTest() {
    return sets.stream()
        .map(FollowedSet::set)
        .filter(s -> s.entry().purpose() == Purpose.TEST && s.entry().load().isPresent())
        .filter(s -> s.entry().asked().reps() == 5 && s.entry().counts().cleanReps() == 5)
        .filter(s -> s.entry().counts().reps() == 5)
        .max(
            Comparator.comparing(RecordedSet::date)
                .thenComparing(s -> s.entry().load().orElseThrow().mass())
                .thenComparing(RecordedSet::place));
  }
}
