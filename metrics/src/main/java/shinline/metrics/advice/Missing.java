package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.Optional;
import shinline.metrics.load.Mass;
import shinline.metrics.track.Side;

/** What is missing for the athlete to go on. */
public sealed interface Missing {

  /** Pain was marked, and a clinician has not cleared it. */
  record Clearance(LocalDate pain) implements Missing {}

  /** No work set is on record. */
  record WorkSet() implements Missing {}

  /** No work set of this leg in the last session at this step and target. */
  record Leg(Side leg, LocalDate session) implements Missing {}

  /**
   * Good sets.
   *
   * @param sets how many more
   * @param reps in each
   */
  record GoodSets(Side leg, int sets, int reps) implements Missing {}

  /** Sets of which too few reps could be judged. */
  record FilmAgain(Side leg, int sets) implements Missing {}

  /** Nobody asked about pain in the last session. */
  record PainNotAsked() implements Missing {}

  /** More sessions without pain after a clearance. */
  record PainlessSessions(int sessions) implements Missing {}

  /** Days since the last raise. */
  record WeekSinceRaise(LocalDate raise, LocalDate earliest) implements Missing {}

  /**
   * A load between this one and the next at hand.
   *
   * @param next the next at hand; empty when there is none
   */
  record NoLoadAtHand(Mass load, Optional<Mass> next) implements Missing {}

  /** The sets of the last session have no load on record. */
  record LoadUnknown() implements Missing {}

  /** The ladder has no such step. */
  record StepUnknown(String step) implements Missing {}

  /** The step has no such target. */
  record TargetUnknown(String step, String target) implements Missing {}

  /** A gate that is not on record. */
  record Gate(String gate, String step) implements Missing {}

  /** The coach's word for a step. */
  record Release(String step) implements Missing {}

  /** The athlete is not of age. */
  record AdultsOnly(String step) implements Missing {}

  /** A three-rep maximum from a clean full-range set of the last days. */
  record ThreeRepMaximum(int days) implements Missing {}

  /** The ladder ends here. */
  record TopOfLadder() implements Missing {}
}
