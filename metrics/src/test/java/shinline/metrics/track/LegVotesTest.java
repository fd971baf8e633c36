package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.geometry.Point;
import shinline.metrics.synthetic.ShippedCalibration;

class LegVotesTest {
  /** Votes of ten frames, so many of them for the far leg. */
  private static LegVotes far(int frames, Side near) {
    LegVotes votes = new LegVotes(10, near, Optional.empty(), ShippedCalibration.HEAVY);
    for (int i = 0; i < 10; i++) {
      votes.add(i, i < frames ? near.other() : near, 1);
    }
    return votes;
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void theFarLegIsInFrontWhenMostVotesSaySo(Side near) {
    assertThat(far(10, near).frontLeg()).isEqualTo(near.other());
    assertThat(far(8, near).frontLeg()).isEqualTo(near.other());
    assertThat(far(5, near).frontLeg()).isEqualTo(near);
    assertThat(far(0, near).frontLeg()).isEqualTo(near);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void agreementIsThatOfTheLegNamed(Side near) {
    assertThat(far(8, near).agreement()).isEqualTo(0.8);
    assertThat(far(5, near).agreement()).isEqualTo(0.5);
    assertThat(far(5, near).swappedShare()).isEqualTo(0.5);
    assertThat(new LegVotes(3, near, Optional.empty(), ShippedCalibration.HEAVY).agreement())
        .isEqualTo(0.5);
  }

  /** Front and rear knee 100 px apart; in so many of ten looks the front one is trusted less. */
  private static void knees(LegVotes votes, int frontHidden) {
    PointPath.Builder front = PointPath.ofSize(10);
    PointPath.Builder rear = PointPath.ofSize(10);
    for (int i = 0; i < 10; i++) {
      front.put(i, 300, 100, i < frontHidden ? 0.6 : 0.98);
      rear.put(i, 200, 100, 0.97);
    }
    votes.knees(front.build(), rear.build(), 40);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void aFrontKneeThatIsHiddenTellsAFarLegThatIsNamedAtRandom(Side near) {
    LegVotes votes = far(4, near);
    knees(votes, 9);
    assertThat(votes.frontLeg()).isEqualTo(near.other());
    assertThat(votes.agreement()).isCloseTo(0.55 * 0.4 + 0.45 * 0.9, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void aFrontKneeInFullViewSpeaksAgainstAFarLeg(Side near) {
    LegVotes votes = far(7, near);
    knees(votes, 1);
    assertThat(votes.frontLeg()).isEqualTo(near);
    assertThat(votes.agreement()).isCloseTo(1 - (0.55 * 0.7 + 0.45 * 0.1), within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void kneesTooNearToEachOtherSayNothing(Side near) {
    LegVotes votes = far(8, near);
    PointPath same = Paths.of(10, i -> new Point(300, 100));
    votes.knees(same, same, 40);
    assertThat(votes.agreement()).isEqualTo(0.8);
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void namesThatAllAgreeStandAgainstKneesThatShowNothing(Side near) {
    LegVotes votes = far(10, near);
    knees(votes, 0);
    assertThat(votes.frontLeg()).isEqualTo(near.other());
  }
}
