package shinline.vision.scene;

import java.util.Optional;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Size;

/**
 * A disc that is followed from picture to picture. Where it went is told by the normalised
 * cross-correlation of a small picture of it (Lewis, <i>Fast normalized cross-correlation</i>,
 * 1995), and its centre and size then by its rim, {@link DiscRim}, to a fraction of a pixel: so no
 * error adds up.
 */
public final class FollowedDisc implements AutoCloseable {
  /** The disc is compared when shrunk to about this many pixels; finding it needs no more. */
  private static final double COMPARED_PX = 40;

  /**
   * How far from where it is expected it is sought, share of its diameter. At 1.5 m/s and 15 looks
   * a second a disc of 0.45 m goes 0.22 diameters from one look to the next.
   */
  private static final double REACH = 0.3;

  /** How sure a place found by comparing alone is; a copy has 1. */
  private static final double LEAST_LIKENESS = 0.6;

  /** Further than this from the place compared, a rim is another's; share of the diameter. */
  private static final double SAME_PLACE = 0.1;

  /** A rim of another size is another rim, share of the diameter. */
  private static final double SAME_SIZE = 0.04;

  private final DiscFinderParameters parameters;
  private final Mat likeness = new Mat();
  private double centreX;
  private double centreY;
  private double diameter;
  private double stepX;
  private double stepY;

  /**
   * @param parameters of its rim
   * @param picture upright, 8-bit BGR or grey, in which it was found; stays the caller's
   * @param found where
   */
  public FollowedDisc(DiscFinderParameters parameters, Mat picture, DiscFinding.Found found) {
    this.parameters = parameters;
    centreX = found.centreX();
    centreY = found.centreY();
    diameter = found.diameterPx();
    remember(picture);
  }

  /**
   * Where the disc is in the next picture.
   *
   * @param picture as large as the ones before; stays the caller's
   * @return empty when it is hidden, or has left the picture
   */
  public Optional<DiscFinding.Found> next(Mat picture) {
    Optional<DiscFinding.Found> seen = compare(picture).flatMap(at -> measure(picture, at));
    if (seen.isPresent()) {
      stepX = seen.get().centreX() - centreX;
      stepY = seen.get().centreY() - centreY;
      centreX = seen.get().centreX();
      centreY = seen.get().centreY();
      // Slowly: a disc comes nearer by a little only, and one bad rim must not lead to another.
      diameter += 0.1 * (seen.get().diameterPx() - diameter);
      remember(picture);
    } else {
      stepX = 0;
      stepY = 0;
    }
    return seen;
  }

  private record Place(double x, double y) {}

  private double shrink() {
    return Math.min(1, COMPARED_PX / diameter);
  }

  private Optional<Place> compare(Mat picture) {
    double half = (0.5 + REACH) * diameter;
    Optional<Rect> window = square(picture, centreX + stepX, centreY + stepY, half);
    if (window.isEmpty() || likeness.empty()) {
      return Optional.empty();
    }
    try (Rect place = window.get();
        Mat cut = new Mat(picture, place);
        Mat grey = new Mat();
        Mat small = new Mat();
        Mat alike = new Mat();
        DoublePointer best = new DoublePointer(1);
        Point at = new Point()) {
      shrunk(cut, grey, small);
      if (small.cols() < likeness.cols() || small.rows() < likeness.rows()) {
        return Optional.empty();
      }
      opencv_imgproc.matchTemplate(small, likeness, alike, opencv_imgproc.TM_CCOEFF_NORMED);
      opencv_core.minMaxLoc(alike, null, best, null, at, null);
      if (!(best.get() >= LEAST_LIKENESS)) {
        return Optional.empty();
      }
      double x = place.x() + (at.x() + likeness.cols() / 2.0) * cut.cols() / small.cols();
      double y = place.y() + (at.y() + likeness.rows() / 2.0) * cut.rows() / small.rows();
      return Optional.of(new Place(x - 0.5, y - 0.5));
    }
  }

  private void shrunk(Mat cut, Mat grey, Mat small) {
    DiscPlane.GREY.read(cut, grey);
    try (Size size =
        new Size(
            (int) Math.max(1, Math.round(shrink() * cut.cols())),
            (int) Math.max(1, Math.round(shrink() * cut.rows())))) {
      opencv_imgproc.resize(grey, small, size, 0, 0, opencv_imgproc.INTER_AREA);
    }
  }

  /** Keeps a small picture of the disc; near the edge of the picture the one before stays. */
  private void remember(Mat picture) {
    double half = 0.5 * diameter;
    boolean whole =
        centreX >= half
            && centreY >= half
            && centreX + half < picture.cols()
            && centreY + half < picture.rows();
    Optional<Rect> window =
        whole || likeness.empty() ? square(picture, centreX, centreY, half) : Optional.empty();
    if (window.isEmpty()) {
      return;
    }
    try (Rect place = window.get();
        Mat cut = new Mat(picture, place);
        Mat grey = new Mat()) {
      shrunk(cut, grey, likeness);
    }
  }

  private Optional<DiscFinding.Found> measure(Mat picture, Place at) {
    Optional<Rect> window = square(picture, at.x, at.y, 0.68 * diameter);
    if (window.isEmpty()) {
      return Optional.empty();
    }
    Optional<DiscRim> best = Optional.empty();
    try (Rect place = window.get();
        Mat cut = new Mat(picture, place);
        Mat plane = new Mat()) {
      double x = at.x - place.x();
      double y = at.y - place.y();
      for (DiscPlane kind : DiscPlane.of(cut)) {
        kind.read(cut, plane);
        Optional<DiscRim> rim =
            DiscRim.measure(GreyPicture.smoothed(plane), x, y, diameter / 2, parameters)
                .filter(
                    r ->
                        Math.hypot(r.centreX() - x, r.centreY() - y) <= SAME_PLACE * diameter
                            && Math.abs(r.diameter() / diameter - 1) <= SAME_SIZE
                            && r.roundness() >= parameters.leastRoundness());
        if (rim.isPresent() && (best.isEmpty() || rim.get().rimShare() > best.get().rimShare())) {
          best = rim;
        }
      }
      return best.map(
          rim ->
              new DiscFinding.Found(
                  rim.centreX() + place.x(),
                  rim.centreY() + place.y(),
                  rim.diameter(),
                  rim.plusMinus(),
                  rim.roundness()));
    }
  }

  /** What of a square lies in the picture; empty when that is next to nothing. */
  private static Optional<Rect> square(Mat picture, double x, double y, double half) {
    int left = (int) Math.max(0, Math.round(x - half));
    int top = (int) Math.max(0, Math.round(y - half));
    int right = (int) Math.min(picture.cols(), Math.round(x + half) + 1);
    int bottom = (int) Math.min(picture.rows(), Math.round(y + half) + 1);
    return right - left < half || bottom - top < half
        ? Optional.empty()
        : Optional.of(new Rect(left, top, right - left, bottom - top));
  }

  @Override
  public void close() {
    likeness.close();
  }
}
