package shinline.metrics.bar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.metrics.geometry.Angle;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepFinder;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.track.Side;

/** A bar on a path whose speed and stray are known in closed form. */
class BarDriveTest {
  private static final double DISC_M = 0.45;
  private static final double PX_PER_M = 256;
  private static final double TRAVEL_M = 0.4;
  private static final double AHEAD_M = 0.08;

  /** Half a period: standing to the bottom, and back. */
  private static final double HALF_S = 1.25;

  private static final UniformTimeGrid GRID = new UniformTimeGrid(0, 1.0 / 30, 180);

  /** Half a cosine passes 5 % and 95 % of its travel at acos(0.9) from either end. */
  private static final double DRIVE_S = HALF_S * (1 - 2 * Math.acos(0.9) / Math.PI);

  /** Fifteen looks a second, shape-preserving between them, and a low-pass of 6 Hz. */
  private static final double SPEED_SHARE = 0.015;

  private static double down(double t) {
    double s = t - 1.5;
    return s < 0 || s > 2 * HALF_S ? 0 : (1 - Math.cos(Math.PI * s / HALF_S)) / 2;
  }

  private static BarTrack track(Side facing, ViewGeometry view, double fromS, double toS) {
    List<BarTrack.Look> looks = new ArrayList<>();
    double sign = facing == Side.RIGHT ? 1 : -1;
    for (int i = 0; i < 90; i++) {
      double t = i / 15.0;
      if (t > fromS && t < toS) {
        continue;
      }
      Point real =
          new Point(PX_PER_M * (0.3 + AHEAD_M * down(t)), PX_PER_M * (1.4 - TRAVEL_M * down(t)));
      Point seen = view.seen(real);
      looks.add(new BarTrack.Look(t, new Point(sign * seen.x(), seen.y()), PX_PER_M * DISC_M, 1));
    }
    return new BarTrack(DISC_M, looks);
  }

  private static Optional<BarDrive> drive(BarTrack track, Side facing, ViewGeometry view) {
    BarPath path = BarPath.of(track, GRID, facing, view).orElseThrow();
    BarPath whole = BarPath.of(track(facing, view, 9, 9), GRID, facing, view).orElseThrow();
    List<Rep> reps = new RepFinder().find(whole.upM(), 0.85).reps();
    assertThat(reps).hasSize(1);
    return BarDrive.of(path, reps).get(0);
  }

  private static void assertKnown(BarDrive drive) {
    double mean = 0.9 * TRAVEL_M / DRIVE_S;
    double peak = TRAVEL_M * Math.PI / 2 / HALF_S;
    assertThat(drive.speed().mean()).isCloseTo(mean, within(SPEED_SHARE * mean));
    assertThat(drive.speed().peak()).isCloseTo(peak, within(2 * SPEED_SHARE * peak));
    assertThat(drive.strayM()).isCloseTo(0.9 * AHEAD_M, within(0.005));
    Point top = drive.path().get(drive.path().size() - 1);
    assertThat(top.y()).isCloseTo(0.9 * TRAVEL_M, within(0.03));
    assertThat(top.x()).isCloseTo(-0.9 * AHEAD_M, within(0.01));
  }

  @Test
  void speedAndStrayAreThoseOfThePath() {
    assertKnown(
        drive(track(Side.RIGHT, ViewGeometry.SQUARE, 9, 9), Side.RIGHT, ViewGeometry.SQUARE)
            .orElseThrow());
  }

  @Test
  void facingLeftIsTheMirror() {
    assertKnown(
        drive(track(Side.LEFT, ViewGeometry.SQUARE, 9, 9), Side.LEFT, ViewGeometry.SQUARE)
            .orElseThrow());
  }

  @Test
  void aRolledCameraIsPutUpright() {
    ViewGeometry rolled = new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ofDegrees(6));
    assertKnown(drive(track(Side.RIGHT, rolled, 9, 9), Side.RIGHT, rolled).orElseThrow());
  }

  @Test
  void aDriveSeenInPartHasNoSpeed() {
    assertThat(
            drive(
                track(Side.RIGHT, ViewGeometry.SQUARE, 3.1, 3.7), Side.RIGHT, ViewGeometry.SQUARE))
        .isEmpty();
  }

  @Test
  void aFewLooksAreNoPath() {
    BarTrack whole = track(Side.RIGHT, ViewGeometry.SQUARE, 9, 9);
    BarTrack few = new BarTrack(DISC_M, whole.looks().subList(0, 10));
    assertThat(BarPath.of(few, GRID, Side.RIGHT, ViewGeometry.SQUARE)).isEmpty();
  }

  @Test
  void looksComeInTheirOrder() {
    BarTrack.Look look = new BarTrack.Look(1, new Point(0, 0), 100, 1);
    assertThatThrownBy(() -> new BarTrack(DISC_M, List.of(look, look)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
