package shinline.metrics.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.correction.CorrectionTable.Part;
import shinline.metrics.synthetic.CleanTracks;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;

/** A fit finds the offsets by which joint centres were moved. */
class OffsetFitTest {
  private static final double EXACT = 1e-9;
  private static final CorrectionTable MOVED =
      new CorrectionTable(
          Map.of(
              Part.HIP, new Offset(0.01, -0.02),
              Part.HIP_BEND, new Offset(-0.008, 0.002),
              Part.SHOULDER, new Offset(-0.03, 0.01),
              Part.FRONT_HIP, new Offset(0.02, -0.04),
              Part.FRONT_HIP_BEND, new Offset(-0.02, 0.003),
              Part.FRONT_KNEE, new Offset(-0.01, 0.005),
              Part.FRONT_ANKLE, new Offset(-0.02, 0.001),
              Part.FRONT_TOE,
                  new Offset(
                      0.004,
                      CorrectionTable.of(ShippedCalibration.HEAVY).at(Part.FRONT_TOE).ahead()),
              Part.FRONT_HEEL, new Offset(-0.01, -0.012),
              Part.REAR_KNEE, new Offset(-0.013, 0.002)));

  private static CleanTrack landmarks(int reps, double staturePx) {
    return CleanTracks.of(TrackMaker.film(SplitSquat.clean(reps)).staturePx(staturePx).track());
  }

  @Test
  void theOffsetsThatWerePutInComeOut() {
    OffsetFit fit = new OffsetFit(ShippedCalibration.HEAVY);
    for (double staturePx : new double[] {500, 800}) {
      CleanTrack track = landmarks(2, staturePx);
      fit.add(track, new JointCentreCorrection(MOVED).correct(track));
    }
    CorrectionTable found = fit.table();
    for (Part part : Part.values()) {
      assertThat(found.at(part).along()).isCloseTo(MOVED.at(part).along(), within(EXACT));
      assertThat(found.at(part).ahead()).isCloseTo(MOVED.at(part).ahead(), within(EXACT));
    }
  }

  @Test
  void everyClipCountsOnceHoweverLongItIs() {
    CleanTrack brief = landmarks(1, 800);
    CleanTrack lengthy = landmarks(6, 800);
    CorrectionTable both =
        new OffsetFit(ShippedCalibration.HEAVY)
            .add(brief, brief)
            .add(lengthy, new JointCentreCorrection(MOVED).correct(lengthy))
            .table();
    assertThat(both.at(Part.FRONT_KNEE).along())
        .isCloseTo(MOVED.at(Part.FRONT_KNEE).along() / 2, within(EXACT));
    assertThat(both.at(Part.REAR_KNEE).ahead())
        .isCloseTo(MOVED.at(Part.REAR_KNEE).ahead() / 2, within(EXACT));
  }

  @Test
  void noClipGivesNoOffsets() {
    assertThatThrownBy(() -> new OffsetFit(ShippedCalibration.HEAVY).table())
        .isInstanceOf(IllegalStateException.class);
  }
}
