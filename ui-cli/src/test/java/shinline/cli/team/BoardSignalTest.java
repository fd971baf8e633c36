package shinline.cli.team;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import shinline.metrics.advice.Decision;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** The four words of the board, by the rules in docs/session.md. */
class BoardSignalTest {
  private static SetEntry set(int reps, int unclear, int clean) {
    return new SetEntry(
        LocalDate.of(2026, 3, 9),
        Side.LEFT,
        "bench-bodyweight",
        Purpose.WORK,
        new Asked(OptionalInt.of(3), 8, "upright", Optional.empty(), Optional.empty()),
        Optional.empty(),
        Pain.NO,
        new SetCounts(reps, Optional.empty(), unclear, clean, Map.of(), List.of()));
  }

  private static BoardSignal after(SetEntry... day) {
    return BoardSignal.of(List.of(day), Decision.STAY);
  }

  @Test
  void halfCleanIsTheSameAgain() {
    assertThat(after(set(8, 0, 8))).isEqualTo(BoardSignal.SAME);
    assertThat(after(set(8, 0, 4))).isEqualTo(BoardSignal.SAME);
    assertThat(after(set(8, 0, 3))).isEqualTo(BoardSignal.LIGHTER);
  }

  @Test
  void twoBadSetsInARowEndTheDayAndAGoodOneBetweenDoesNot() {
    assertThat(after(set(8, 0, 3), set(8, 0, 3))).isEqualTo(BoardSignal.STOP);
    assertThat(after(set(8, 0, 3), set(8, 0, 8), set(8, 0, 3))).isEqualTo(BoardSignal.LIGHTER);
    assertThat(after(set(8, 0, 3), set(8, 0, 3), set(8, 0, 8))).isEqualTo(BoardSignal.SAME);
  }

  @Test
  void tooFewJudgedRepsAreFilmedAgain() {
    assertThat(after(set(8, 2, 6))).isEqualTo(BoardSignal.SAME);
    assertThat(after(set(8, 3, 5))).isEqualTo(BoardSignal.FILM_AGAIN);
  }

  @Test
  void whoHasToStopStops() {
    assertThat(BoardSignal.of(List.of(set(8, 0, 8)), Decision.STOP)).isEqualTo(BoardSignal.STOP);
  }
}
