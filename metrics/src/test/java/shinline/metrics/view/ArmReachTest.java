package shinline.metrics.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.geometry.Point;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

class ArmReachTest {
  private static final Calibration CALIBRATION = ShippedCalibration.HEAVY;

  /** Hands in trunk lengths ahead of and above their shoulders. */
  private static ArmReach of(Side facing, Point leftHand, Point rightHand, double sure) {
    double forward = facing == Side.RIGHT ? 1 : -1;
    List<RawPose> poses = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
      for (RawPoint shoulder : List.of(RawPoint.LEFT_SHOULDER, RawPoint.RIGHT_SHOULDER)) {
        points.put(shoulder, new RawSighting(500, 600, 1));
      }
      for (RawPoint hip : List.of(RawPoint.LEFT_HIP, RawPoint.RIGHT_HIP)) {
        points.put(hip, new RawSighting(500, 400, 1));
      }
      points.put(RawPoint.LEFT_WRIST, hand(forward, leftHand, sure));
      points.put(RawPoint.RIGHT_WRIST, hand(forward, rightHand, sure));
      poses.add(new RawPose(i, i / 15.0, points));
    }
    return ArmReach.of(new RawTrack(1000, 1000, poses), facing, CALIBRATION);
  }

  private static RawSighting hand(double forward, Point at, double sure) {
    return new RawSighting(500 + forward * 200 * at.x(), 600 + 200 * at.y(), sure);
  }

  private static final Point HANGS = new Point(0.1, -1.05);
  private static final Point REACHES = new Point(0.8, 0);

  @Test
  void aHandAtASupportIsAReachWhicheverItIs() {
    for (Side facing : Side.values()) {
      assertThat(of(facing, REACHES, HANGS, 1)).isEqualTo(ArmReach.ONE_ARM);
      assertThat(of(facing, HANGS, REACHES, 1)).isEqualTo(ArmReach.ONE_ARM);
    }
  }

  @Test
  void armsThatHangOrHoldALoadOrReachBothAreNone() {
    assertThat(of(Side.RIGHT, HANGS, HANGS, 1)).isEqualTo(ArmReach.NONE);
    Point chest = new Point(0.45, -0.3);
    assertThat(of(Side.LEFT, chest, chest, 1)).isEqualTo(ArmReach.NONE);
    assertThat(of(Side.LEFT, REACHES, REACHES, 1)).isEqualTo(ArmReach.NONE);
    assertThat(of(Side.RIGHT, new Point(-0.8, 0), HANGS, 1)).isEqualTo(ArmReach.NONE);
  }

  @Test
  void aHandThatIsNotSeenTellsNothing() {
    assertThat(of(Side.RIGHT, REACHES, HANGS, 0.2)).isEqualTo(ArmReach.NONE);
  }
}
