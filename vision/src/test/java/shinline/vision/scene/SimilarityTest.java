package shinline.vision.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SimilarityTest {
  private static final double ROUNDING = 1e-9;
  private static final Similarity MOVE = new Similarity(0.98, 0.1, 12, -7);
  private static final Similarity OTHER = new Similarity(1.02, -0.05, -3, 4);

  @Test
  void theMoveBackUndoesTheMove() {
    Similarity still = MOVE.inverse().after(MOVE);

    assertThat(still.x(31, 17)).isCloseTo(31, within(ROUNDING));
    assertThat(still.y(31, 17)).isCloseTo(17, within(ROUNDING));
  }

  @Test
  void oneMoveAfterAnotherIsBothInTurn() {
    Similarity both = MOVE.after(OTHER);
    double x = OTHER.x(5, 9);
    double y = OTHER.y(5, 9);

    assertThat(both.x(5, 9)).isCloseTo(MOVE.x(x, y), within(ROUNDING));
    assertThat(both.y(5, 9)).isCloseTo(MOVE.y(x, y), within(ROUNDING));
  }

  @Test
  void anEnlargedMoveMovesTheEnlargedPoint() {
    // A pixel centre at (x, y) of the small picture lies at s·x + (s − 1)/2 of the large one.
    Similarity large = MOVE.enlarged(4, 4);

    assertThat(large.x(4 * 10 + 1.5, 4 * 20 + 1.5))
        .isCloseTo(4 * MOVE.x(10, 20) + 1.5, within(ROUNDING));
    assertThat(large.y(4 * 10 + 1.5, 4 * 20 + 1.5))
        .isCloseTo(4 * MOVE.y(10, 20) + 1.5, within(ROUNDING));
  }

  @Test
  void aClockwiseTurnIsPositive() {
    Similarity turn = new Similarity(Math.cos(0.1), Math.sin(0.1), 0, 0);

    assertThat(turn.rotationDeg()).isCloseTo(Math.toDegrees(0.1), within(ROUNDING));
    // The point straight up goes to the right.
    assertThat(turn.x(0, -10)).isPositive();
  }
}
