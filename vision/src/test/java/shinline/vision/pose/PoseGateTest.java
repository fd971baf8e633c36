package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PoseGateTest {
  private static final RegionOfInterest REGION = new RegionOfInterest(400, 300, 540, 0);
  private static final DrawnPerson PERSON = new DrawnPerson(400, 300, 400);

  private final PoseGate gate = new PoseGate();
  private final OwnLengths own = new OwnLengths();

  private PoseGate.Finding judge(PoseSighting.Found pose) {
    return gate.judge(pose, own, Optional.empty());
  }

  private void know() {
    for (int look = 0; look < 10; look++) {
      own.add(new BodyPose(PERSON.upright(REGION, 1)));
    }
  }

  @Test
  void aBodyOfTheUsualProportionsIsBelieved() {
    assertThat(judge(PERSON.upright(REGION, 1)).good()).isTrue();
    know();
    assertThat(judge(PERSON.upright(REGION, 1)).good()).isTrue();
  }

  @Test
  void aLowPoseFlagIsNobody() {
    assertThat(judge(PERSON.upright(REGION, 0.49)).seen()).isFalse();
  }

  @Test
  void onItsHeadWithLegsUnseenIsAnErrorOfTheModel() {
    assertThat(judge(PERSON.onItsHead(REGION, 0.05)).uprightBody()).isFalse();
  }

  @Test
  void onItsHeadWithLegsSeenIsAClipStoredUpsideDownUntilItIsKnownBetter() {
    assertThat(judge(PERSON.onItsHead(REGION, 0.95)).uprightBody()).isTrue();
    gate.pictureIsUpright();
    assertThat(judge(PERSON.onItsHead(REGION, 0.95)).uprightBody()).isFalse();
  }

  @Test
  void aSegmentOffByMoreThanAQuarterOfTheOwnLengthIsNotBelieved() {
    know();
    double thigh = 0.22 * 400;
    double off = 0.3 * thigh;
    PoseSighting.Found longer = PERSON.withKneeAt(REGION, 412, 300 + thigh + off);
    assertThat(judge(longer).good()).isFalse();
    // The thigh is too long and the shank of the same leg too short.
    assertThat(judge(longer).faults()).isEqualTo(2);
    assertThat(judge(PERSON.withKneeAt(REGION, 412, 300 + 1.1 * thigh)).good()).isTrue();
  }

  @Test
  void hipsDoNotJump() {
    know();
    Optional<BodyPose> last = Optional.of(new BodyPose(PERSON.upright(REGION, 1)));
    PoseSighting.Found far = new DrawnPerson(400 + 0.35 * 400, 300, 400).upright(REGION, 1);
    assertThat(gate.judge(far, own, last).good()).isFalse();
    assertThat(gate.judge(PERSON.lower(0.1 * 400).upright(REGION, 1), own, last).good()).isTrue();
  }
}
