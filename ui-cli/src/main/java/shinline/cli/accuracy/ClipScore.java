package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.track.Side;

/**
 * One clip's result against its truth.
 *
 * @param trueReps reps the clip holds
 * @param matched of them found
 * @param falseReps reps told that are none
 * @param verdicts of every rep against every target
 * @param notes what else was wrong, in words
 */
record ClipScore(
    Truth truth,
    int trueReps,
    int matched,
    int falseReps,
    List<Deviation> deviations,
    List<String> missing,
    List<FlagScore> flags,
    List<VerdictScore> verdicts,
    List<String> notes) {

  /** A told bottom farther than this from every true one belongs to none of them. */
  private static final double SAME_REP_S = 1.0;

  /**
   * A value against the truth.
   *
   * @param error told less true, in the unit of what is scored
   */
  record Deviation(Scored scored, int rep, double error, double plusMinus) {
    boolean covered() {
      return Math.abs(error) <= plusMinus;
    }
  }

  /** Faults put into a rep and faults told of it, by their names; shin-off-target is no fault. */
  record FlagScore(int rep, Set<String> wanted, Set<String> said) {
    Set<String> missed() {
      Set<String> missed = new TreeSet<>(wanted);
      missed.removeAll(said);
      return missed;
    }

    int found() {
      return wanted.size() - missed().size();
    }

    /** What was told of a clean rep; in a faulty one a second flag may be the fault's own trace. */
    Set<String> falseOnClean() {
      return wanted.isEmpty() ? said : Set.of();
    }
  }

  /** A clip of which nothing was measured. */
  static ClipScore nothing(Truth truth, String why) {
    return new ClipScore(
        truth,
        truth.reps().size(),
        0,
        0,
        List.of(),
        List.of(),
        List.of(),
        verdicts(trueReps(truth, new ArrayList<>()), Map.of()),
        List.of(why));
  }

  static ClipScore of(Truth truth, SetResult set) {
    List<String> notes = new ArrayList<>(setUpNotes(truth, set.setUp()));
    List<Optional<TrueRep>> all = trueReps(truth, notes);
    List<Deviation> deviations = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    List<FlagScore> flags = new ArrayList<>();
    Map<Integer, RepReadings> told = new HashMap<>();
    int falseReps = 0;
    for (RepResult rep : set.reps()) {
      int k = nearest(all, rep.bottomS());
      if (k < 0 || told.putIfAbsent(k, RepReadings.of(rep)) != null) {
        falseReps++;
        continue;
      }
      TrueRep is = all.get(k).orElseThrow();
      for (Map.Entry<Scored, Double> entry : is.values().entrySet()) {
        Scored scored = entry.getKey();
        scored
            .in(rep)
            .measured()
            .ifPresentOrElse(
                m ->
                    deviations.add(
                        new Deviation(
                            scored,
                            k + 1,
                            (m.value() - entry.getValue()) * scored.per(entry.getValue()),
                            m.plusMinus() * scored.per(entry.getValue()))),
                () -> missing.add(Words.say("accuracy.missing", scored.words(), k + 1)));
      }
      flags.add(new FlagScore(k + 1, without(is.faults()), without(names(rep.flags()))));
    }
    return new ClipScore(
        truth,
        all.size(),
        told.size(),
        falseReps,
        deviations,
        missing,
        flags,
        verdicts(all, told),
        notes);
  }

  static List<Optional<TrueRep>> trueReps(Truth truth, List<String> notes) {
    List<Optional<TrueRep>> all = new ArrayList<>();
    for (Truth.Scripted rep : truth.reps()) {
      Optional<TrueRep> found = TrueRep.of(truth, rep);
      if (found.isEmpty()) {
        notes.add(Words.say("accuracy.truth-not-whole", all.size() + 1));
      }
      all.add(found);
    }
    return all;
  }

  /**
   * @param told by the place of the rep in {@code all}
   */
  private static List<VerdictScore> verdicts(
      List<Optional<TrueRep>> all, Map<Integer, RepReadings> told) {
    List<VerdictScore> scores = new ArrayList<>();
    for (AskedTarget asked : AskedTarget.ALL) {
      for (int k = 0; k < all.size(); k++) {
        Optional<RepReadings> found = Optional.ofNullable(told.get(k));
        int rep = k + 1;
        all.get(k).ifPresent(is -> scores.addAll(VerdictScore.of(asked, rep, is, found)));
      }
    }
    return scores;
  }

  /** The true rep whose bottom is nearest to a told one, by its place; -1 when none is near. */
  static int nearest(List<Optional<TrueRep>> all, double bottomS) {
    int best = -1;
    double least = SAME_REP_S;
    for (int k = 0; k < all.size(); k++) {
      double off = all.get(k).map(r -> Math.abs(r.bottomS() - bottomS)).orElse(SAME_REP_S + 1);
      if (off <= least) {
        best = k;
        least = off;
      }
    }
    return best;
  }

  private static Set<String> names(List<Flag> flags) {
    Set<String> names = new TreeSet<>();
    flags.forEach(f -> names.add(f.kind().jsonName()));
    return names;
  }

  private static Set<String> without(Set<String> kinds) {
    Set<String> rest = new TreeSet<>(kinds);
    rest.remove(FlagKind.SHIN_OFF_TARGET.jsonName());
    return rest;
  }

  private static List<String> setUpNotes(Truth truth, SetUp said) {
    List<String> notes = new ArrayList<>();
    if ((said.facing() == Side.LEFT) != truth.facesLeft()) {
      notes.add(Words.say("accuracy.wrong.facing"));
    }
    if ((said.frontLeg() == Side.LEFT) != truth.frontLegLeft()) {
      notes.add(Words.say("accuracy.wrong.front-leg"));
    }
    if (said.frontLegNearCamera() != truth.frontLegNear()) {
      notes.add(Words.say("accuracy.wrong.near-leg"));
    }
    if ((said.rearFoot() == SetUp.RearFoot.BENCH) != truth.onBench()) {
      notes.add(Words.say("accuracy.wrong.rear-foot"));
    }
    return notes;
  }
}
