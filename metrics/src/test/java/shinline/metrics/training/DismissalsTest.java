package shinline.metrics.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shinline.metrics.training.Dismissals.Dismissed;
import shinline.metrics.training.SetCounts.RepNote;
import shinline.metrics.training.SetCounts.Verdicts;

class DismissalsTest {
  private static final Set<String> SPOILING = Set.of("heel-rise", "lean-grows");

  private static Dismissed flag(String kind, int rep) {
    return new Dismissed(kind, OptionalInt.of(rep));
  }

  private static SetCounts counts(int hit, int miss, int clean, Map<String, Integer> flags) {
    return new SetCounts(
        hit + miss, Optional.of(new Verdicts(hit, 0, miss)), 0, clean, flags, List.of());
  }

  @Test
  void aDismissedFlagGivesBackItsRep() {
    SetCounts counts = counts(8, 0, 6, Map.of("heel-rise", 2));
    assertThat(new Dismissals(Set.of(flag("heel-rise", 3))).applyTo(counts, SPOILING).cleanReps())
        .isEqualTo(7);
    assertThat(
            new Dismissals(Set.of(new Dismissed("heel-rise", OptionalInt.empty())))
                .applyTo(counts, SPOILING)
                .cleanReps())
        .isEqualTo(8);
  }

  @Test
  void aMissedRepStaysMissed() {
    SetCounts counts = counts(6, 2, 6, Map.of("heel-rise", 2));
    Dismissals both = new Dismissals(Set.of(flag("heel-rise", 3), flag("heel-rise", 4)));
    assertThat(both.applyTo(counts, SPOILING).cleanReps()).isEqualTo(6);
  }

  /** One rep with two flags: taking one away leaves the other. */
  @Test
  void oneOfTwoFlagsOnARep() {
    SetCounts counts = counts(8, 0, 7, Map.of("heel-rise", 1, "lean-grows", 1));
    assertThat(new Dismissals(Set.of(flag("heel-rise", 3))).applyTo(counts, SPOILING).cleanReps())
        .isEqualTo(7);
    assertThat(
            new Dismissals(Set.of(flag("heel-rise", 3), flag("lean-grows", 3)))
                .applyTo(counts, SPOILING)
                .cleanReps())
        .isEqualTo(8);
  }

  @Test
  void flagsThatSpoilNothingOrAreNotThereGiveNothingBack() {
    SetCounts counts = counts(8, 0, 7, Map.of("heel-rise", 1, "wobble", 2));
    Dismissals others = new Dismissals(Set.of(flag("wobble", 2), flag("lean-grows", 3)));
    assertThat(others.applyTo(counts, SPOILING).cleanReps()).isEqualTo(7);
  }

  @Test
  void repByRepIsCountedAnew() {
    SetCounts counts =
        new SetCounts(
            4,
            Optional.of(new Verdicts(2, 0, 1)),
            0,
            1,
            Map.of("heel-rise", 3, "lean-grows", 1),
            List.of(
                new RepNote(1, true, true, List.of()),
                new RepNote(2, true, true, List.of("heel-rise", "lean-grows")),
                new RepNote(3, true, false, List.of("heel-rise")),
                new RepNote(4, false, false, List.of("heel-rise"))));
    SetCounts after =
        new Dismissals(Set.of(new Dismissed("heel-rise", OptionalInt.empty())))
            .applyTo(counts, SPOILING);
    assertThat(after.cleanReps()).isEqualTo(1);
    assertThat(after.unclear()).isEqualTo(1);
    assertThat(after.flags()).containsExactly(Map.entry("lean-grows", 1));
  }
}
