package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LegVotesTest {
  /** Votes of ten frames, so many of them for the far leg. */
  private static LegVotes far(int frames, Side near) {
    LegVotes votes = new LegVotes(10, near);
    for (int i = 0; i < 10; i++) {
      votes.add(i, i < frames ? near.other() : near, 1);
    }
    return votes;
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void theFarLegIsInFrontOnlyOnClearEvidence(Side near) {
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
    assertThat(new LegVotes(3, near).agreement()).isEqualTo(0.5);
  }
}
