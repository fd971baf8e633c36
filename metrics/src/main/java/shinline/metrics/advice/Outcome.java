package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a rule decided; the parts of an {@link Advice} that differ from rule to rule. */
record Outcome(
    Decision decision,
    Prescription prescription,
    List<Because> because,
    List<Missing> missing,
    Optional<LocalDate> earliest,
    Optional<ThreeRepMaximum> maximum) {

  static Outcome of(Decision decision, Prescription prescription, Rule rule, List<String> lines) {
    return new Outcome(
        decision,
        prescription,
        List.of(new Because(rule, lines)),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  Outcome because(Rule rule, List<String> lines) {
    List<Because> all = new ArrayList<>(because);
    all.add(new Because(rule, lines));
    return new Outcome(decision, prescription, all, missing, earliest, maximum);
  }

  /** Puts a reason before the others. */
  Outcome afterAll(Rule rule, List<String> lines) {
    List<Because> all = new ArrayList<>();
    all.add(new Because(rule, lines));
    all.addAll(because);
    return new Outcome(decision, prescription, all, missing, earliest, maximum);
  }

  Outcome missing(Missing more) {
    return missing(List.of(more));
  }

  Outcome missing(List<Missing> more) {
    List<Missing> all = new ArrayList<>(missing);
    all.addAll(more);
    return new Outcome(decision, prescription, because, all, earliest, maximum);
  }

  Outcome earliest(LocalDate day) {
    return new Outcome(decision, prescription, because, missing, Optional.of(day), maximum);
  }

  Outcome restingOn(ThreeRepMaximum found) {
    return new Outcome(decision, prescription, because, missing, earliest, Optional.of(found))
        .because(Rule.THREE_REP_MAXIMUM, List.of(found.set().id()));
  }
}
