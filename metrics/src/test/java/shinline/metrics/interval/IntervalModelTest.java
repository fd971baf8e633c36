package shinline.metrics.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.result.Measure;
import shinline.metrics.synthetic.ShippedCalibration;

class IntervalModelTest {
  private static final IntervalModel HEAVY = new IntervalModel(ShippedCalibration.HEAVY, 0.012);
  private static final IntervalModel FULL = new IntervalModel(ShippedCalibration.FULL, 0.012);

  /** Round figures, so that the sums below can be done in the head. */
  private static final IntervalModel MODEL =
      new IntervalModel(
          ShippedCalibration.HEAVY.trying(
              Map.of(
                  CalibrationKey.INTERVAL_SHIN_BODY, 1.0,
                  CalibrationKey.INTERVAL_KNEE_PAST_TOE_BODY, 1.0,
                  CalibrationKey.INTERVAL_KNEE_FLEXION_BODY, 2.0)),
          0.02);

  private static double pm(Measure measure, double value, double attitude, double jitter) {
    return MODEL.plusMinus(measure, value, attitude, jitter, 1, 0).all();
  }

  /** 95 % of a normal distribution lie within 1.96 standard deviations. */
  @Test
  void theSystematicPartAlone() {
    assertThat(pm(Measure.SHIN, 20, 0, 0)).isCloseTo(1.96, within(1e-9));
  }

  @Test
  void independentPartsAddAsSquares() {
    // sqrt(1² + 2² + 2²) = 3
    assertThat(pm(Measure.SHIN, 20, 2, 2)).isCloseTo(3 * 1.96, within(1e-9));
  }

  @Test
  void theScaleWidensALengthByItsOwnSize() {
    // 50 cm at 2 % is 1 cm: sqrt(2).
    assertThat(pm(Measure.KNEE_PAST_TOE, 50, 0, 0)).isCloseTo(1.96 * Math.sqrt(2), within(1e-9));
    assertThat(pm(Measure.KNEE_PAST_TOE, 0, 0, 0)).isCloseTo(1.96, within(1e-9));
  }

  @Test
  void theMoreObliqueTheWiderOnEitherSide() {
    double square = MODEL.plusMinus(Measure.SHIN, 20, 0, 0, 1, 0).all();
    double oblique = MODEL.plusMinus(Measure.SHIN, 20, 0, 0, 1, 30).all();
    assertThat(oblique).isGreaterThan(square);
    assertThat(MODEL.plusMinus(Measure.SHIN, 20, 0, 0, 1, -30).all()).isEqualTo(oblique);
  }

  @ParameterizedTest
  @EnumSource(Measure.class)
  void lessSureIsWider(Measure measure) {
    double sure = HEAVY.plusMinus(measure, 10, 0.5, 0.3, 1, 0).all();
    assertThat(sure).isPositive();
    assertThat(HEAVY.plusMinus(measure, 10, 0.5, 0.3, 0.4, 0).all()).isGreaterThan(sure);
    assertThat(HEAVY.plusMinus(measure, 10, 0.5, 0.9, 1, 0).all()).isGreaterThan(sure);
    assertThat(FULL.plusMinus(measure, 10, 0.5, 0.3, 1, 0).all()).isGreaterThan(sure);
  }

  /** The demand on a clean clip with nothing stated about the vertical. */
  @Test
  void theShinOfACleanClipIsWithinThreeDegrees() {
    assertThat(
            HEAVY
                .plusMinus(
                    Measure.SHIN,
                    25,
                    ShippedCalibration.HEAVY.value(CalibrationKey.CAMERA_ROLL),
                    0.2,
                    0.99,
                    5)
                .all())
        .isLessThanOrEqualTo(3);
  }

  /** What bodies differ by cancels between reps of one athlete; the rest does not. */
  @Test
  void withoutTheBodysPartAnIntervalIsNarrowerAndTheRestStays() {
    IntervalModel.HalfWidths plain = MODEL.plusMinus(Measure.SHIN, 20, 0, 0, 1, 0);
    double share = ShippedCalibration.HEAVY.value(CalibrationKey.INTERVAL_REP_SHARE);
    assertThat(plain.within()).isCloseTo(share * plain.all(), within(1e-12));
    IntervalModel.HalfWidths shaky = MODEL.plusMinus(Measure.SHIN, 20, 2, 1, 1, 0);
    assertThat(shaky.within()).isBetween(1.96 * Math.sqrt(5), shaky.all());
    assertThat(shaky.all() * shaky.all() - shaky.within() * shaky.within())
        .isCloseTo(plain.all() * plain.all() - plain.within() * plain.within(), within(1e-9));
  }
}
