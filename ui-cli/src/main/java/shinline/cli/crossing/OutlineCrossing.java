package shinline.cli.crossing;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.geometry.Point;
import shinline.vision.observation.PicturePoint;
import shinline.vision.observation.TrunkSilhouette;
import shinline.vision.scene.CameraPath;

/** Brings the trunk's edges from the pixels of their frames to metrics' points, y up. */
public final class OutlineCrossing {
  private OutlineCrossing() {}

  /** Where along the line from hip to shoulder metrics wants the edges, shares of the way. */
  public static double[] places() {
    return IntStream.range(0, TrunkOutline.PLACES).mapToDouble(TrunkOutline::place).toArray();
  }

  /**
   * The outlines in the still view of the camera.
   *
   * @param silhouettes each in pixels of its own frame, at {@link #places}
   * @param axis of the upright picture
   */
  public static List<TrunkOutline> outlines(
      List<TrunkSilhouette> silhouettes, CameraPath camera, PictureAxis axis) {
    return silhouettes.stream().map(s -> outline(s, camera, axis)).toList();
  }

  private static TrunkOutline outline(TrunkSilhouette seen, CameraPath camera, PictureAxis axis) {
    Function<PicturePoint, Point> move =
        p -> {
          Point2D at = camera.inStillView(seen.timeS(), p.x(), p.y());
          return new Point(at.getX(), axis.heightOf(at.getY()));
        };
    return new TrunkOutline(
        seen.frame(),
        seen.timeS(),
        move.apply(seen.hip()),
        move.apply(seen.shoulder()),
        moved(seen.left(), move),
        moved(seen.right(), move));
  }

  private static List<Optional<Point>> moved(
      List<Optional<PicturePoint>> edge, Function<PicturePoint, Point> move) {
    return edge.stream().map(p -> p.map(move)).toList();
  }
}
