package shinline.metrics.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

class AttitudeTest {
  private static final Calibration CALIBRATION = ShippedCalibration.HEAVY;

  private static Attitude attitude(Attitude.Evidence evidence, Side facing) {
    RawTrack track = TrackMaker.film(SplitSquat.clean(2)).facing(facing).track();
    LegTrack legs =
        new LegIdentity(CALIBRATION)
            .resolve(track)
            .fold(
                resolved -> resolved.track(),
                unresolved -> {
                  throw new AssertionError(unresolved.doubt().toString());
                });
    return Attitude.of(evidence, track, legs, CALIBRATION);
  }

  private static Attitude.Evidence room(double uprights, double levels) {
    return new Attitude.Evidence(
        Optional.empty(),
        Optional.empty(),
        Optional.of(
            new RoomSight(
                1.5,
                0.3,
                Optional.of(new RoomSight.Slope(uprights, 0.01)),
                Optional.of(new RoomSight.Slope(levels, 0.001)))));
  }

  /** tan(pitch) = focal length × convergence, both in longer sides: vanishing point geometry. */
  @ParameterizedTest
  @CsvSource({"0.3, 13.496", "0, 0", "-0.1, -4.574"})
  void pitchFromUprights(double perLongSide, double deg) {
    Attitude told = attitude(room(perLongSide, 0), Side.RIGHT);
    assertThat(told.pitchSource()).isEqualTo(Attitude.Source.BACKGROUND);
    assertThat(told.pitch().deg()).isCloseTo(deg, within(0.001));
    assertThat(told.roll().deg()).isEqualTo(1.5);
  }

  /** A wall whose right end is farther: the camera stands left of square, behind a right-facer. */
  @ParameterizedTest
  @EnumSource(Side.class)
  void theWallTellsTheYawByTheWayTheAthleteFaces(Side facing) {
    double yaw = attitude(room(0, 0.3), facing).yaw().deg();
    assertThat(Math.abs(yaw)).isGreaterThan(3);
    assertThat(yaw > 0).isEqualTo(facing == Side.LEFT);
  }

  @Test
  void theCoachsWordCountsBeforeTheRooms() {
    Attitude.Evidence evidence =
        new Attitude.Evidence(Optional.of(-2.0), Optional.of(7.0), room(0.3, 0).room());
    Attitude told = attitude(evidence, Side.RIGHT);
    assertThat(told.pitch().deg()).isEqualTo(7);
    assertThat(told.pitchSource()).isEqualTo(Attitude.Source.GIVEN);
    assertThat(told.roll().deg()).isEqualTo(-2);
    assertThat(told.rollSource()).isEqualTo(Attitude.Source.GIVEN);
  }

  @Test
  void withNothingToTellItThePitchIsWide() {
    Attitude told =
        attitude(
            new Attitude.Evidence(Optional.empty(), Optional.empty(), Optional.empty()),
            Side.RIGHT);
    assertThat(told.pitchSource()).isEqualTo(Attitude.Source.NONE);
    assertThat(told.rollSource()).isEqualTo(Attitude.Source.NONE);
    assertThat(told.pitch().sigmaDeg()).isGreaterThan(2);
  }

  /**
   * With a focal length that is off, lines that tell tan(pitch) / f give nearly the same upright:
   * half a degree at 14° of pitch and a quarter of the picture off its middle.
   */
  @Test
  void theFocalLengthHardlyMatters() {
    Attitude told = attitude(room(0.3, 0), Side.RIGHT);
    ViewGeometry view = told.view();
    Map<Attitude.Doubt, ViewGeometry> doubts = told.doubts(0);
    Point foot = view.lens().centre().plus(240, -150);
    Point above = foot.plus(0, 100);
    assertThat(lean(doubts.get(Attitude.Doubt.FOCAL_LENGTH), foot, above))
        .isCloseTo(lean(view, foot, above), within(0.5));
    assertThat(
            Math.abs(lean(doubts.get(Attitude.Doubt.ROLL), foot, above) - lean(view, foot, above)))
        .isCloseTo(0.3, within(0.05));
  }

  private static double lean(ViewGeometry view, Point foot, Point above) {
    Point low = view.real(foot);
    Point high = view.real(above);
    return Math.toDegrees(Math.atan2(high.x() - low.x(), high.y() - low.y()));
  }
}
