package shinline.metrics.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.synthetic.CleanTracks;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;

/** A fit finds the offsets by which joint centres were moved. */
class OffsetFitTest {
  private static final double EXACT = 1e-9;
  private static final CorrectionTable MOVED =
      new CorrectionTable(
          new Offset(0.01, -0.02),
          new Offset(-0.008, 0.002),
          new Offset(-0.03, 0.01),
          new Offset(0.02, -0.04),
          new Offset(-0.02, 0.003),
          new Offset(-0.01, 0.005),
          new Offset(-0.02, 0.001),
          new Offset(0.004, CorrectionTable.of(ShippedCalibration.HEAVY).frontToe().ahead()),
          new Offset(-0.01, -0.012),
          new Offset(-0.013, 0.002));
  private static final List<Function<CorrectionTable, Offset>> OFFSETS =
      List.of(
          CorrectionTable::hip,
          CorrectionTable::hipBend,
          CorrectionTable::shoulder,
          CorrectionTable::frontHip,
          CorrectionTable::frontHipBend,
          CorrectionTable::frontKnee,
          CorrectionTable::frontAnkle,
          CorrectionTable::frontToe,
          CorrectionTable::frontHeel,
          CorrectionTable::rearKnee);

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
    for (Function<CorrectionTable, Offset> offset : OFFSETS) {
      Offset wanted = offset.apply(MOVED);
      assertThat(offset.apply(found).along()).isCloseTo(wanted.along(), within(EXACT));
      assertThat(offset.apply(found).ahead()).isCloseTo(wanted.ahead(), within(EXACT));
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
    assertThat(both.frontKnee().along()).isCloseTo(MOVED.frontKnee().along() / 2, within(EXACT));
    assertThat(both.rearKnee().ahead()).isCloseTo(MOVED.rearKnee().ahead() / 2, within(EXACT));
  }

  @Test
  void noClipGivesNoOffsets() {
    assertThatThrownBy(() -> new OffsetFit(ShippedCalibration.HEAVY).table())
        .isInstanceOf(IllegalStateException.class);
  }
}
