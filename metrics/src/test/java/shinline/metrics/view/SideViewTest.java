package shinline.metrics.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

class SideViewTest {
  private static double yaw(double spread, Side facing) {
    RawTrack track =
        TrackMaker.film(SplitSquat.clean(1)).shouldersApart(spread).facing(facing).track();
    return SideView.of(track).orElseThrow().yawDeg(ShippedCalibration.HEAVY);
  }

  /**
   * Shoulders 0.23 of stature apart, 0.815 of the model's trunk line, show 0.23·sin ψ of it; the
   * estimate is good to 10 degrees.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 30})
  void yawFromTheShoulders(double deg) {
    double spread = 0.23 * Math.sin(Math.toRadians(deg));
    assertThat(yaw(spread, Side.RIGHT)).isCloseTo(deg, within(10.0));
    assertThat(yaw(spread, Side.LEFT)).isCloseTo(deg, within(10.0));
  }

  @Test
  void aFrontViewIsFarBeyondWhatIsMeasured() {
    assertThat(yaw(0.23, Side.RIGHT))
        .isGreaterThan(ShippedCalibration.HEAVY.value(CalibrationKey.SIDE_VIEW_REFUSED) + 10);
  }

  @Test
  void shouldersNeverSeenTellNothing() {
    RawPose pose = new RawPose(0, 0, Map.of(RawPoint.LEFT_HIP, new RawSighting(1, 1, 1)));
    assertThat(SideView.of(new RawTrack(100, 100, List.of(pose)))).isEmpty();
  }
}
