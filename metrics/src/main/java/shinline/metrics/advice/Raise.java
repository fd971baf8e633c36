package shinline.metrics.advice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.Mark;
import shinline.metrics.training.Pain;
import shinline.metrics.training.RecordedSet;

/**
 * The next load of an earned step, or why it has to wait.
 *
 * @param load of the last session
 */
record Raise(Situation now, TrainingLoad load) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

  Outcome outcome() {
    return afterClearance()
        .or(this::withinAWeek)
        .orElseGet(
            () ->
                now.step().load() instanceof StepLoad.OfThreeRepMaximum loading
                    ? shareOfMaximum(loading)
                    : weekly((StepLoad.Weekly) now.step().load()));
  }

  private AdviceLimits.Raises limits() {
    return now.ladder().limits().raises();
  }

  private Optional<Outcome> afterClearance() {
    Optional<Mark> clearance = now.history().last(Mark.Cleared.class::isInstance);
    int lacking = clearance.map(c -> limits().painlessSessions() - painlessSince(c)).orElse(0);
    return lacking <= 0
        ? Optional.empty()
        : Optional.of(
            Outcome.of(
                    Decision.STAY,
                    now.again(),
                    Rule.SOON_AFTER_CLEARANCE,
                    List.of(clearance.orElseThrow().id()))
                .missing(new Missing.PainlessSessions(lacking)));
  }

  /** Sessions since, at which pain was asked about and none was marked. */
  private int painlessSince(Mark clearance) {
    Map<LocalDate, List<Pain>> said =
        now.history().workSets().stream()
            .filter(s -> s.place().isAfter(clearance.place()))
            .collect(
                Collectors.groupingBy(
                    RecordedSet::date,
                    Collectors.mapping(s -> s.entry().pain(), Collectors.toList())));
    return (int)
        said.values().stream().filter(p -> p.contains(Pain.NO) && !p.contains(Pain.YES)).count();
  }

  private Optional<Outcome> withinAWeek() {
    Optional<Session> raised = lastRaise();
    Optional<LocalDate> earliest = raised.map(s -> s.date().plusDays(limits().everyDays()));
    return earliest
        .filter(day -> now.asOf().isBefore(day))
        .map(
            day ->
                Outcome.of(
                        Decision.STAY,
                        now.again(),
                        Rule.SOON_AFTER_RAISE,
                        raised.orElseThrow().lines())
                    .missing(new Missing.WeekSinceRaise(raised.orElseThrow().date(), day))
                    .earliest(day));
  }

  /**
   * The last session in this step with more load than the one before it at the same target. Targets
   * are not compared with each other: each has its own load.
   */
  private Optional<Session> lastRaise() {
    return now.history().workSets().stream()
        .filter(s -> s.entry().step().equals(now.step().id()))
        .map(s -> s.entry().asked().target())
        .distinct()
        .flatMap(target -> lastRaise(now.sessionsAt(target)).stream())
        .max(Comparator.comparing(Session::date));
  }

  private static Optional<Session> lastRaise(List<Session> sessions) {
    for (int i = sessions.size() - 1; i > 0; i--) {
      Optional<TrainingLoad> before = sessions.get(i - 1).load();
      Optional<TrainingLoad> after = sessions.get(i).load();
      if (before.isPresent()
          && after.isPresent()
          && before.get().kind() == after.get().kind()
          && carried(before.get()).compareTo(carried(after.get())) < 0) {
        return Optional.of(sessions.get(i));
      }
    }
    return Optional.empty();
  }

  private static Mass carried(TrainingLoad load) {
    Mass held = load.kind() == LoadKind.EACH_HAND ? load.mass().times(TWO) : load.mass();
    return load.vest().map(held::plus).orElse(held);
  }

  private Outcome weekly(StepLoad.Weekly loading) {
    Mass limit = load.mass().plus(loading.weekly(load.mass().unit()));
    LoadChoice choice = new LoadChoice(now.ladder());
    Optional<TrainingLoad> raised = choice.raised(load, limit);
    if (raised.isPresent()) {
      return to(raised.get(), Rule.WEEKLY_RAISE);
    }
    Optional<TrainingLoad> next = choice.nextAbove(load);
    Mass farthest = load.mass().percent(WHOLE.add(limits().gapPct()));
    return next.filter(l -> l.mass().compareTo(farthest) <= 0)
        .map(l -> to(l, Rule.NEXT_LOAD_AT_HAND))
        .orElseGet(() -> moreReps(next));
  }

  private Outcome to(TrainingLoad raised, Rule rule) {
    Scheme scheme = new Scheme(now.scheme().sets(), now.repsAtFirst());
    return Outcome.of(
        Decision.RAISE_LOAD,
        now.with(now.target(), scheme, Optional.of(raised)),
        rule,
        now.session().lines());
  }

  /** One rep more a set, up to a few more than at first. */
  private Outcome moreReps(Optional<TrainingLoad> next) {
    Scheme scheme = now.scheme();
    int most = Math.max(schemeReps() + limits().moreReps(), scheme.reps());
    int reps = Math.min(scheme.reps() + 1, most);
    return Outcome.of(
            Decision.STAY,
            now.with(now.target(), new Scheme(scheme.sets(), reps), Optional.of(load)),
            Rule.NO_LOAD_AT_HAND,
            now.session().lines())
        .missing(new Missing.NoLoadAtHand(load.mass(), next.map(TrainingLoad::mass)));
  }

  /** Where the record does not go back to the first reps, those of the step's scheme below. */
  private int schemeReps() {
    int first = now.repsAtFirst();
    return now.step().schemes().stream()
        .map(Scheme::reps)
        .filter(r -> r <= first)
        .max(Integer::compare)
        .orElse(first);
  }

  private Outcome shareOfMaximum(StepLoad.OfThreeRepMaximum loading) {
    Optional<ThreeRepMaximum> found = new ShareOfMaximum(now).maximum();
    if (found.isEmpty()) {
      return Outcome.of(Decision.STAY, now.again(), Rule.THREE_REP_MAXIMUM, now.session().lines())
          .missing(new Missing.ThreeRepMaximum(loading.maximumDays()));
    }
    ThreeRepMaximum maximum = found.get();
    Mass most = maximum.mass().percent(loading.mostPct());
    Mass weekly = load.mass().plus(maximum.mass().percent(loading.weeklyPct()));
    LoadChoice choice = new LoadChoice(now.ladder());
    Optional<TrainingLoad> raised =
        choice
            .raised(load, weekly.compareTo(most) < 0 ? weekly : most)
            .or(() -> nextWithin(choice, most));
    return raised
        .map(
            l ->
                Outcome.of(
                        Decision.RAISE_LOAD,
                        now.with(
                            now.target(),
                            ShareOfMaximum.scheme(loading, l, maximum),
                            Optional.of(l)),
                        Rule.WEEKLY_RAISE,
                        now.session().lines())
                    .restingOn(maximum))
        .orElseGet(
            () ->
                Outcome.of(Decision.STAY, now.again(), Rule.TOP_OF_LADDER, now.session().lines())
                    .missing(new Missing.TopOfLadder())
                    .restingOn(maximum));
  }

  private Optional<TrainingLoad> nextWithin(LoadChoice choice, Mass most) {
    Mass farthest = load.mass().percent(WHOLE.add(limits().gapPct()));
    return choice
        .nextAbove(load)
        .filter(l -> l.mass().compareTo(farthest) <= 0 && l.mass().compareTo(most) <= 0);
  }
}
