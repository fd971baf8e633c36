package shinline.cli.team;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shinline.cli.advice.GivenAdvice;
import shinline.cli.finding.ClipFinding;
import shinline.cli.record.AthleteName;
import shinline.metrics.advice.Decision;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/**
 * One athlete's session.
 *
 * @param sets in the order of the sheet
 */
public record AthleteSession(AthleteName name, List<SetOutcome> sets, GivenAdvice advice) {

  /** What the coach has to do about an athlete, most pressing first. */
  public enum Need {
    STOP,
    LOOK,
    NOT_FILMED,
    FINE
  }

  /** A set is good with at most one judged rep that is not clean (docs/ladder.md). */
  private static final int FORGIVEN_REPS = 1;

  public AthleteSession {
    sets = List.copyOf(sets);
  }

  public List<SetOutcome> of(Side leg) {
    return sets.stream().filter(s -> s.leg() == leg).toList();
  }

  public Need need() {
    Decision decision = advice.advice().decision();
    if (decision == Decision.STOP) {
      return Need.STOP;
    }
    boolean look =
        decision == Decision.STEP_BACK
            || decision == Decision.EASE_BACK
            || sets.stream().anyMatch(AthleteSession::wantsALook);
    if (look) {
      return Need.LOOK;
    }
    return done(Side.LEFT) && done(Side.RIGHT) ? Need.FINE : Need.NOT_FILMED;
  }

  /** Whether a leg has a set whose reps are known. */
  public boolean done(Side leg) {
    return of(leg).stream().anyMatch(s -> s.entry().isPresent());
  }

  private static boolean wantsALook(SetOutcome set) {
    boolean badClip =
        set.finding().filter(f -> f.state() != ClipFinding.State.MEASURED).isPresent();
    return badClip
        || !set.notes().isEmpty()
        || set.entry().map(SetEntry::counts).filter(AthleteSession::isNotGood).isPresent();
  }

  private static boolean isNotGood(SetCounts counts) {
    return counts.notClean() > FORGIVEN_REPS || isTooDark(counts);
  }

  /** Fewer than three quarters of the reps were judged. */
  static boolean isTooDark(SetCounts counts) {
    return 4 * counts.judged() < 3 * counts.reps();
  }

  /** The finding of the last set with a picture of a good bottom. */
  public Optional<ClipFinding> pictured(List<SetOutcome> of) {
    return of.stream()
        .flatMap(s -> s.finding().stream())
        .filter(f -> f.files().best().isPresent())
        .reduce((a, b) -> b);
  }

  /** The cue of the last set that has one. */
  public Optional<String> cue() {
    return sets.stream()
        .sorted(
            Comparator.comparing(
                SetOutcome::filmed, Comparator.comparing(f -> f.orElse(java.time.Instant.MIN))))
        .flatMap(s -> s.finding().stream())
        .flatMap(f -> f.cue().stream())
        .reduce((a, b) -> b);
  }
}
