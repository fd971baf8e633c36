package shinline.vision.scene;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a hand-held camera looked through a clip. Measuring is done in one view that stands still
 * (the middle view of the camera); this leads from there to the pixels of each frame, where
 * pictures and image coordinates are, and back.
 */
public final class CameraPath {
  private static final CameraPath STILL = new CameraPath(List.of());

  private final List<Look> looks;

  /** How one frame lies against the still view. */
  private record Look(double timeS, Similarity toStill, Similarity toFrame) {}

  private CameraPath(List<Look> looks) {
    this.looks = looks;
  }

  /** A camera on a tripod: the still view is every frame. */
  public static CameraPath still() {
    return STILL;
  }

  /**
   * @param timesS seconds of each look, rising
   * @param toStill one for each look: moves a point of its frame to the still view
   */
  public static CameraPath of(List<Double> timesS, List<Similarity> toStill) {
    if (timesS.size() != toStill.size()) {
      throw new IllegalArgumentException(toStill.size() + " moves for " + timesS.size() + " looks");
    }
    List<Look> looks = new ArrayList<>();
    for (int i = 0; i < toStill.size(); i++) {
      Similarity move = toStill.get(i);
      looks.add(new Look(timesS.get(i), move, move.inverse()));
    }
    return new CameraPath(List.copyOf(looks));
  }

  /** Moves a point of the frame of the {@code look}-th look to the still view. */
  public Similarity toStill(int look) {
    return looks.isEmpty() ? Similarity.IDENTITY : looks.get(look).toStill();
  }

  /** From the still view to the frame of an instant, pixels with y down. */
  public AffineTransform toFrame(double timeS) {
    if (looks.isEmpty()) {
      return new AffineTransform();
    }
    int after = firstNotBefore(timeS);
    Look next = looks.get(Math.min(after, looks.size() - 1));
    Look last = looks.get(Math.max(0, after - 1));
    double span = next.timeS() - last.timeS();
    double share = span <= 0 ? 0 : Math.max(0, Math.min(1, (timeS - last.timeS()) / span));
    Similarity a = last.toFrame();
    Similarity b = next.toFrame();
    // Between two looks, less than a tenth of a second apart, a hand moves in a straight line.
    double cos = mix(a.a(), b.a(), share);
    double sin = mix(a.b(), b.b(), share);
    return new AffineTransform(
        cos, sin, -sin, cos, mix(a.tx(), b.tx(), share), mix(a.ty(), b.ty(), share));
  }

  /** Where a point of the still view, y down, is in the frame of an instant. */
  public Point2D inFrame(double timeS, double x, double y) {
    Point2D place = new Point2D.Double(x, y);
    return looks.isEmpty() ? place : toFrame(timeS).transform(place, null);
  }

  /** Where a point of the frame of an instant, y down, is in the still view. */
  public Point2D inStillView(double timeS, double x, double y) {
    Point2D place = new Point2D.Double(x, y);
    if (looks.isEmpty()) {
      return place;
    }
    try {
      return toFrame(timeS).inverseTransform(place, null);
    } catch (NoninvertibleTransformException e) {
      throw new IllegalStateException("a camera that zooms to nothing", e);
    }
  }

  private static double mix(double a, double b, double share) {
    return (1 - share) * a + share * b;
  }

  private int firstNotBefore(double timeS) {
    int low = 0;
    int high = looks.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (looks.get(middle).timeS() < timeS) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
