package shinline.vision.scene;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where a hand-held camera looked through a clip. Measuring is done in one view that stands still
 * (the middle view of the camera); this leads from there to the pixels of each frame, where
 * pictures and image coordinates are, and back.
 */
public final class CameraPath {
  private static final CameraPath STILL = new CameraPath(List.of(), new TreeMap<>());

  private final List<Similarity> toStill;

  /** From the still view to the frame of each look, by its time. */
  private final NavigableMap<Double, Similarity> toFrame;

  private CameraPath(List<Similarity> toStill, NavigableMap<Double, Similarity> toFrame) {
    this.toStill = toStill;
    this.toFrame = toFrame;
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
    NavigableMap<Double, Similarity> toFrame = new TreeMap<>();
    for (int i = 0; i < toStill.size(); i++) {
      toFrame.put(timesS.get(i), toStill.get(i).inverse());
    }
    return new CameraPath(List.copyOf(toStill), toFrame);
  }

  /** Moves a point of the frame of the {@code look}-th look to the still view. */
  public Similarity toStill(int look) {
    return toStill.isEmpty() ? Similarity.IDENTITY : toStill.get(look);
  }

  /** From the still view to the frame of an instant, pixels with y down. */
  public AffineTransform toFrame(double timeS) {
    if (toStill.isEmpty()) {
      return new AffineTransform();
    }
    Map.Entry<Double, Similarity> next =
        Optional.ofNullable(toFrame.ceilingEntry(timeS)).orElseGet(toFrame::lastEntry);
    Map.Entry<Double, Similarity> last =
        Optional.ofNullable(toFrame.lowerEntry(timeS)).orElseGet(toFrame::firstEntry);
    double span = next.getKey() - last.getKey();
    double share = span <= 0 ? 0 : Math.max(0, Math.min(1, (timeS - last.getKey()) / span));
    Similarity a = last.getValue();
    Similarity b = next.getValue();
    // Between two looks, less than a tenth of a second apart, a hand moves in a straight line.
    double cos = mix(a.a(), b.a(), share);
    double sin = mix(a.b(), b.b(), share);
    return new AffineTransform(
        cos, sin, -sin, cos, mix(a.tx(), b.tx(), share), mix(a.ty(), b.ty(), share));
  }

  /** Where a point of the still view, y down, is in the frame of an instant. */
  public Point2D inFrame(double timeS, double x, double y) {
    Point2D place = new Point2D.Double(x, y);
    return toStill.isEmpty() ? place : toFrame(timeS).transform(place, null);
  }

  /** Where a point of the frame of an instant, y down, is in the still view. */
  public Point2D inStillView(double timeS, double x, double y) {
    Point2D place = new Point2D.Double(x, y);
    if (toStill.isEmpty()) {
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
}
