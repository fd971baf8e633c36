package shinline.metrics.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.synthetic.ShippedCalibration;

class YawReadingTest {
  private static final Calibration CALIBRATION = ShippedCalibration.HEAVY;
  private final YawReading reading = new YawReading(CALIBRATION);

  private static Optional<AngleEstimate> told(double deg, double sigmaDeg) {
    return Optional.of(new AngleEstimate(deg, sigmaDeg));
  }

  /** With nothing told the prior is left: a normal distribution cut off at 60°. */
  @Test
  void nothingTold() {
    AngleEstimate yaw = reading.of(Optional.empty(), Optional.empty());
    assertThat(yaw.deg()).isCloseTo(0, within(1e-9));
    assertThat(yaw.sigmaDeg())
        .isCloseTo(CALIBRATION.value(CalibrationKey.CAMERA_YAW_SPREAD), within(0.05));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-18, -9, 0, 5, 12, 20})
  void whereBothAgreeTheyAreBelieved(double deg) {
    AngleEstimate yaw = reading.of(told(deg, 4), told(deg, 1));
    assertThat(yaw.deg()).isCloseTo(deg, within(0.1 * Math.abs(deg) + 1e-9));
    assertThat(yaw.sigmaDeg()).isLessThan(3);
  }

  /** A product of two normal distributions is narrower than either. */
  @Test
  void twoTellMoreThanOne() {
    double both = reading.of(told(6, 4), told(6, 1)).sigmaDeg();
    assertThat(both).isLessThan(reading.of(told(6, 4), Optional.empty()).sigmaDeg());
    assertThat(both).isLessThan(reading.of(Optional.empty(), told(6, 1)).sigmaDeg());
  }

  @Test
  void whereTheyDisagreeTheAnswerIsUnsure() {
    AngleEstimate yaw = reading.of(told(-25, 4), told(5, 1));
    assertThat(yaw.sigmaDeg()).isGreaterThan(6);
    assertThat(yaw.deg()).isBetween(-25.0, 5.0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 11, 24})
  void leftAndRightAreAlike(double deg) {
    AngleEstimate one = reading.of(told(deg, 4), told(deg / 2, 1));
    AngleEstimate other = reading.of(told(-deg, 4), told(-deg / 2, 1));
    assertThat(other.deg()).isCloseTo(-one.deg(), within(1e-9));
    assertThat(other.sigmaDeg()).isCloseTo(one.sigmaDeg(), within(1e-9));
  }
}
