package shinline.metrics.cleaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.geometry.Angle;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.synthetic.CleanTracks;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.Side;

class CleanTrackTest {
  private static final SplitSquat ONE = SplitSquat.clean(1);

  /** Ankle to knee, degrees from the vertical, + forward, at the first instant. */
  private static double shank(CleanTrack track) {
    Point ankle = track.path(BodyPoint.FRONT_ANKLE).at(0);
    Point knee = track.path(BodyPoint.FRONT_KNEE).at(0);
    return Math.toDegrees(Math.atan2(knee.x() - ankle.x(), knee.y() - ankle.y()));
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void squaredTakesARollOut(Side facing) {
    double level = shank(CleanTracks.of(TrackMaker.film(ONE).facing(facing).track()));
    CleanTrack leaning = CleanTracks.of(TrackMaker.film(ONE).facing(facing).rolled(5).track());
    // Clockwise is forward when the athlete faces right, backward when facing left.
    assertThat(shank(leaning)).isCloseTo(level + (facing == Side.RIGHT ? 5 : -5), within(0.05));
    assertThat(
            shank(
                leaning.toSagittalPlane(
                    new ViewGeometry(
                        Angle.ZERO, Angle.ZERO, Angle.ofDegrees(facing == Side.RIGHT ? 5 : -5)))))
        .isCloseTo(level, within(0.05));
  }

  @Test
  void aRollKeepsLengths() {
    CleanTrack track = CleanTracks.of(TrackMaker.film(ONE).track());
    CleanTrack turned =
        track.toSagittalPlane(new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ofDegrees(7)));
    for (int i = 0; i < track.grid().size(); i += 10) {
      double before =
          track.path(BodyPoint.FRONT_HIP).at(i).distanceTo(track.path(BodyPoint.REAR_ANKLE).at(i));
      double after =
          turned
              .path(BodyPoint.FRONT_HIP)
              .at(i)
              .distanceTo(turned.path(BodyPoint.REAR_ANKLE).at(i));
      assertThat(after).isCloseTo(before, within(1e-9));
    }
  }

  @Test
  void aTrueSideViewChangesNothing() {
    CleanTrack track = CleanTracks.of(TrackMaker.film(ONE).track());
    assertThat(track.toSagittalPlane(ViewGeometry.SQUARE)).isSameAs(track);
  }

  /**
   * From the definition of the view: a level distance shows cos ψ of itself, a height all of it.
   */
  @Test
  void squaredTakesAYawOutAndSeenFromPutsItBack() {
    CleanTrack side = CleanTracks.of(TrackMaker.film(ONE).track());
    ViewGeometry view = new ViewGeometry(Angle.ofDegrees(30), Angle.ZERO, Angle.ZERO);
    CleanTrack oblique = side.seenFrom(view);
    Point knee = side.path(BodyPoint.FRONT_KNEE).at(5);
    Point seen = oblique.path(BodyPoint.FRONT_KNEE).at(5);
    assertThat(seen.x()).isCloseTo(knee.x() * Math.sqrt(3) / 2, within(1e-9));
    assertThat(seen.y()).isCloseTo(knee.y(), within(1e-9));
    assertThat(shank(oblique.toSagittalPlane(view))).isCloseTo(shank(side), within(1e-9));
  }
}
