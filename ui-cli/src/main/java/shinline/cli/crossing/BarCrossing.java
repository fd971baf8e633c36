package shinline.cli.crossing;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import shinline.metrics.bar.BarTrack;
import shinline.metrics.geometry.Point;
import shinline.vision.observation.BarSighting;
import shinline.vision.scene.CameraPath;

/** Brings the bar's disc from the pixels of its frames to metrics' points, y up. */
public final class BarCrossing {
  private BarCrossing() {}

  /**
   * The bar in the still view of the camera; empty when it was never seen.
   *
   * @param sightings each in pixels of its own frame
   * @param diameterM the disc's true diameter, metres
   * @param axis of the upright picture
   */
  public static Optional<BarTrack> track(
      List<BarSighting> sightings, double diameterM, CameraPath camera, PictureAxis axis) {
    return sightings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new BarTrack(diameterM, sightings.stream().map(s -> look(s, camera, axis)).toList()));
  }

  private static BarTrack.Look look(BarSighting seen, CameraPath camera, PictureAxis axis) {
    double half = seen.diameterPx() / 2;
    Point2D left = camera.inStillView(seen.timeS(), seen.centreX() - half, seen.centreY());
    Point2D right = camera.inStillView(seen.timeS(), seen.centreX() + half, seen.centreY());
    return new BarTrack.Look(
        seen.timeS(),
        new Point(
            (left.getX() + right.getX()) / 2, axis.heightOf((left.getY() + right.getY()) / 2)),
        left.distance(right),
        seen.roundness());
  }
}
