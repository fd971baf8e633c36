package shinline.metrics.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.JointCentreCorrection;
import shinline.metrics.synthetic.Build;
import shinline.metrics.synthetic.CleanTracks;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;

class BodyScaleTest {
  private static BodyScale scale(TrackMaker maker) {
    return BodyScale.of(
            new JointCentreCorrection(CorrectionTable.of(ShippedCalibration.HEAVY))
                .correct(CleanTracks.of(maker.track())),
            ShippedCalibration.HEAVY)
        .orElseThrow();
  }

  /**
   * Bodies differ: the sum of the segments has a spread of one per cent from athlete to athlete, as
   * docs/measures.md has it in the ± of a scale by height.
   */
  @ParameterizedTest
  @CsvSource({"800, true", "800, false", "350, true"})
  void statureOfAKnownBody(double px, boolean near) {
    TrackMaker maker = TrackMaker.film(SplitSquat.clean(2)).staturePx(px);
    BodyScale scale = scale(near ? maker : maker.frontLegFar());
    assertThat(scale.staturePx()).isCloseTo(px, within(0.01 * px));
    assertThat(scale.legPx()).isCloseTo(0.53 * px, within(0.53 * 0.01 * px));
    assertThat(scale.frontPlane() > 1).isEqualTo(near);
  }

  /** Drillis and Contini 1966, in Winter 2009 fig. 4.1: the legs of 1.75 m, metres. */
  @Test
  void theKnownBodyHasThePublishedLegs() {
    assertThat(1.75 * Build.USUAL.shank()).isCloseTo(0.4305, within(1e-4));
    assertThat(1.75 * Build.USUAL.thigh()).isCloseTo(0.4288, within(1e-4));
    assertThat(1.75 * SplitSquat.ANKLE).isCloseTo(0.0683, within(1e-4));
  }

  /** The foot is 0.155 of stature from heel to toe here, in the front leg's plane. */
  @Test
  void theFootIsMeasuredInItsOwnPlane() {
    BodyScale scale = scale(TrackMaker.film(SplitSquat.clean(2)));
    assertThat(scale.footPx()).isCloseTo(0.155 * 800 * scale.frontPlane(), within(1.0));
  }
}
