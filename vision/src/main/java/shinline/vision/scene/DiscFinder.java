package shinline.vision.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point3f;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_imgproc.Vec3fVector;

/**
 * Finds a weight plate seen face-on, so that its known diameter gives the picture its scale.
 *
 * <p>Candidates come from OpenCV's gradient Hough transform for circles; each is then measured by
 * {@link DiscRim} to a fraction of a pixel. Of concentric circles (rim, inner ring, hub) the
 * outermost well-supported one is the plate. The answer is refused when too little of the rim is
 * seen, when it is not round enough, or when two separate discs of different size fit the request
 * equally.
 */
public final class DiscFinder {
  private static final double HOUGH_EDGE = 200;
  private static final double HOUGH_ROUNDNESS = 0.55;
  private static final double HOUGH_RESOLUTION = 1.5;

  /**
   * Circles are sought in a picture shrunk until the disc is about this large, pixels, about as in
   * a clip of 540 lines. The transform's cost grows with the fourth power of the size, and where a
   * candidate lies is enough: its rim is measured in the picture as it is. Plates drawn into frames
   * of 1080 lines were found as often with 110 to 170 as without shrinking.
   */
  private static final double SOUGHT_DIAMETER = 110;

  /** Discs whose support is this close to the best one's are equally good. */
  private static final double AS_GOOD = 0.9;

  private static final double SAME_SIZE = 0.05;

  private final DiscFinderParameters parameters;

  /** Uses the given settings. */
  public DiscFinder(DiscFinderParameters parameters) {
    this.parameters = parameters;
  }

  /**
   * Looks for the disc.
   *
   * @param picture upright, square pixels, 8-bit BGR or grey; stays the caller's
   * @param search where, and how large
   */
  public DiscFinding find(Mat picture, DiscSearch search) {
    return find(picture, search, DiscPlane.of(picture));
  }

  /** The same in some of the picture's planes only. */
  public DiscFinding find(Mat picture, DiscSearch search, List<DiscPlane> planes) {
    double half = search.reachPx() + 0.6 * search.mostDiameterPx();
    int left = (int) Math.max(0, Math.floor(search.nearX() - half));
    int top = (int) Math.max(0, Math.floor(search.nearY() - half));
    int right = (int) Math.min(picture.cols(), Math.ceil(search.nearX() + half));
    int bottom = (int) Math.min(picture.rows(), Math.ceil(search.nearY() + half));
    if (right - left < search.leastDiameterPx() || bottom - top < search.leastDiameterPx()) {
      return new DiscFinding.NotFound(NoDiscReason.OUTSIDE_PICTURE);
    }
    List<DiscRim> discs = new ArrayList<>();
    try (Rect place = new Rect(left, top, right - left, bottom - top);
        Mat cut = new Mat(picture, place);
        Mat plane = new Mat()) {
      for (DiscPlane kind : planes) {
        kind.read(cut, plane);
        GreyPicture pixels = GreyPicture.smoothed(plane);
        for (Circle circle : candidates(plane, search)) {
          DiscRim.measure(pixels, circle.x, circle.y, circle.radius, parameters)
              .filter(rim -> fits(rim, search, left, top))
              .ifPresent(discs::add);
        }
      }
    }
    return choose(discs, left, top);
  }

  private boolean fits(DiscRim rim, DiscSearch search, int left, int top) {
    double dx = rim.centreX() + left - search.nearX();
    double dy = rim.centreY() + top - search.nearY();
    return Math.hypot(dx, dy) <= search.reachPx() + 0.05 * rim.diameter()
        && rim.diameter() >= search.leastDiameterPx()
        && rim.diameter() <= search.mostDiameterPx()
        && rim.roundness() >= parameters.leastRoundness();
  }

  private static DiscFinding choose(List<DiscRim> discs, int left, int top) {
    Optional<DiscRim> chosen = Optional.empty();
    for (DiscRim disc : discs) {
      if (chosen.isEmpty() || better(disc, chosen.get())) {
        chosen = Optional.of(disc);
      }
    }
    if (chosen.isEmpty()) {
      return new DiscFinding.NotFound(NoDiscReason.NO_RIM);
    }
    DiscRim best = chosen.get();
    for (DiscRim other : discs) {
      boolean apart = best.distanceTo(other) > 0.25 * best.diameter();
      boolean otherSize = Math.abs(other.diameter() / best.diameter() - 1) > SAME_SIZE;
      if (apart && otherSize && other.rimShare() > AS_GOOD * best.rimShare()) {
        return new DiscFinding.NotFound(new NoDisc.TwoSizes(best.diameter(), other.diameter()));
      }
    }
    return new DiscFinding.Found(
        best.centreX() + left,
        best.centreY() + top,
        best.diameter(),
        best.plusMinus(),
        best.roundness());
  }

  /** The outer of two concentric circles, else the one whose rim is seen more fully. */
  private static boolean better(DiscRim a, DiscRim b) {
    if (a.distanceTo(b) < 0.1 * Math.max(a.diameter(), b.diameter())
        && Math.abs(a.diameter() / b.diameter() - 1) > 0.02) {
      return a.diameter() > b.diameter();
    }
    return a.rimShare() > b.rimShare();
  }

  private List<Circle> candidates(Mat grey, DiscSearch search) {
    List<Circle> circles = new ArrayList<>();
    double middle = Math.sqrt(search.leastDiameterPx() * search.mostDiameterPx());
    double factor = Math.min(1, SOUGHT_DIAMETER / middle);
    int least = (int) Math.floor(0.45 * factor * search.leastDiameterPx());
    int most = (int) Math.ceil(0.55 * factor * search.mostDiameterPx());
    try (Mat small = new Mat();
        Mat calm = new Mat();
        Vec3fVector found = new Vec3fVector();
        Size kernel = new Size(5, 5);
        Size size =
            new Size(
                (int) Math.ceil(factor * grey.cols()), (int) Math.ceil(factor * grey.rows()))) {
      opencv_imgproc.resize(grey, small, size, 0, 0, opencv_imgproc.INTER_AREA);
      opencv_imgproc.GaussianBlur(small, calm, kernel, 1.5);
      opencv_imgproc.HoughCircles(
          calm,
          found,
          opencv_imgproc.HOUGH_GRADIENT_ALT,
          HOUGH_RESOLUTION,
          4,
          HOUGH_EDGE,
          HOUGH_ROUNDNESS,
          least,
          most);
      double across = (double) grey.cols() / small.cols();
      double down = (double) grey.rows() / small.rows();
      long count = Math.min(parameters.candidates(), found.size());
      for (long i = 0; i < count; i++) {
        Point3f circle = found.get(i);
        circles.add(
            new Circle(inFull(circle.x(), across), inFull(circle.y(), down), circle.z() * across));
      }
    }
    return circles;
  }

  /** Both pictures have the middle of their first pixel at 0. */
  private static double inFull(double small, double times) {
    return (small + 0.5) * times - 0.5;
  }

  private record Circle(double x, double y, double radius) {}
}
