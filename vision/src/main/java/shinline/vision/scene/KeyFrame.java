package shinline.vision.scene;

import java.util.List;
import java.util.Optional;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.bytedeco.opencv.global.opencv_calib3d;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.global.opencv_video;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_core.TermCriteria;
import shinline.vision.library.OpenCvParts;

/** A shrunk grey picture with the background points in it that others are compared with. */
final class KeyFrame implements AutoCloseable {
  private static final double CORNER_QUALITY = 0.003;
  private static final double BODY_MARGIN_PX = 4;
  private static final int WINDOW_PX = 13;
  private static final int PYRAMID_LEVELS = 3;
  private static final double WEAKEST_TEXTURE = 1e-4;
  private static final int FEWEST_TO_ANCHOR = 8;
  private static final int FEWEST_AROUND = 8;
  private static final double SHARE_AROUND = 0.3;
  private static final double SHARE_ALONE = 0.5;
  private static final int RANSAC_SEED = 20_000;
  private static final int RANSAC_ROUNDS = 400;
  private static final double RANSAC_CONFIDENCE = 0.995;
  private static final int REFINE_ROUNDS = 10;

  static {
    OpenCvParts.choose();
  }

  private final Mat picture;
  private final Mat points;
  private final int size;
  private final boolean bodyCounts;

  private KeyFrame(Mat picture, Mat points, boolean bodyCounts) {
    this.bodyCounts = bodyCounts;
    this.picture = picture;
    this.points = points;
    this.size = count(points);
  }

  /**
   * How a later frame lies against this one.
   *
   * @param toKey moves a point of the later frame to its place here, shrunk pixels
   * @param points points that agree
   */
  record Match(Similarity toKey, int points) {}

  /** Picks the background's corners; those at the athlete too when there are few around. */
  static KeyFrame of(Mat grey, List<PersonBox> body) {
    try (Scalar all = new Scalar(255);
        Mat around = new Mat(grey.rows(), grey.cols(), opencv_core.CV_8UC1, all)) {
      body.forEach(part -> hide(around, part));
      Mat points = corners(grey, around);
      int outside = count(points);
      boolean bodyCounts =
          outside >= FEWEST_TO_ANCHOR
              && outside < CameraMotionParameters.PLENTY_OF_POINTS
              && !body.isEmpty();
      if (bodyCounts) {
        try (Mat within = new Mat()) {
          opencv_core.bitwise_not(around, within);
          Mat more = corners(grey, within);
          if (points.empty()) {
            points = more;
          } else if (!more.empty()) {
            points.push_back(more);
          }
        }
      }
      return new KeyFrame(grey.clone(), points, bodyCounts);
    }
  }

  private static Mat corners(Mat grey, Mat where) {
    Mat points = new Mat();
    opencv_imgproc.goodFeaturesToTrack(
        grey,
        points,
        CameraMotionParameters.POINTS,
        CORNER_QUALITY,
        CameraMotionParameters.POINT_SPACING_PX,
        where,
        3,
        false,
        0.04);
    return points;
  }

  private static int count(Mat points) {
    return points.empty() ? 0 : points.rows() * points.cols();
  }

  private static void hide(Mat mask, PersonBox box) {
    double margin = BODY_MARGIN_PX;
    int left = clamp(box.left() - margin, mask.cols());
    int top = clamp(box.top() - margin, mask.rows());
    int right = clamp(box.left() + box.width() + margin, mask.cols());
    int bottom = clamp(box.top() + box.height() + margin, mask.rows());
    try (Rect rect = new Rect(left, top, right - left, bottom - top);
        Scalar none = new Scalar(0)) {
      if (!rect.empty()) {
        opencv_imgproc.rectangle(mask, rect, none, opencv_imgproc.FILLED, 8, 0);
      }
    }
  }

  private static int clamp(double value, int limit) {
    return (int) Math.max(0, Math.min(limit, Math.round(value)));
  }

  int size() {
    return size;
  }

  /** Finds the points again in a later frame; {@code guess} is the move of the frame before. */
  Optional<Match> match(Mat grey, List<PersonBox> body, Similarity guess) {
    try (Mat found = guessed(guess);
        Mat status = new Mat();
        Mat error = new Mat();
        Size window = new Size(WINDOW_PX, WINDOW_PX);
        TermCriteria stop = new TermCriteria(TermCriteria.COUNT + TermCriteria.EPS, 20, 0.01)) {
      opencv_video.calcOpticalFlowPyrLK(
          picture,
          grey,
          points,
          found,
          status,
          error,
          window,
          PYRAMID_LEVELS,
          stop,
          opencv_video.OPTFLOW_USE_INITIAL_FLOW,
          WEAKEST_TEXTURE);
      return fit(found, status, body);
    }
  }

  private Mat guessed(Similarity toKey) {
    Similarity fromKey = toKey.inverse();
    Mat found = points.clone();
    try (FloatIndexer at = found.createIndexer()) {
      for (int i = 0; i < size; i++) {
        double x = at.get(i, 0, 0);
        double y = at.get(i, 0, 1);
        at.put(i, 0, 0, (float) fromKey.x(x, y));
        at.put(i, 0, 1, (float) fromKey.y(x, y));
      }
    }
    return found;
  }

  private Optional<Match> fit(Mat found, Mat status, List<PersonBox> body) {
    try (Mat from = new Mat(size, 1, opencv_core.CV_32FC2);
        Mat to = new Mat(size, 1, opencv_core.CV_32FC2);
        FloatIndexer here = found.createIndexer();
        FloatIndexer there = points.createIndexer();
        UByteIndexer followed = status.createIndexer();
        FloatIndexer fromAt = from.createIndexer();
        FloatIndexer toAt = to.createIndexer()) {
      boolean[] around = new boolean[size];
      int n = 0;
      for (int i = 0; i < size; i++) {
        float x = here.get(i, 0, 0);
        float y = here.get(i, 0, 1);
        boolean atBody = body.stream().anyMatch(part -> part.contains(x, y, BODY_MARGIN_PX));
        if (followed.get(i, 0) != 0 && (bodyCounts || !atBody)) {
          around[n] = !atBody;
          fromAt.put(n, 0, 0, x);
          fromAt.put(n, 0, 1, y);
          toAt.put(n, 0, 0, there.get(i, 0, 0));
          toAt.put(n, 0, 1, there.get(i, 0, 1));
          n++;
        }
      }
      if (n < CameraMotionParameters.FEWEST_POINTS) {
        return Optional.empty();
      }
      try (Mat fromUsed = from.rowRange(0, n);
          Mat toUsed = to.rowRange(0, n);
          Mat agree = new Mat()) {
        opencv_core.setRNGSeed(RANSAC_SEED);
        try (Mat affine =
            opencv_calib3d.estimateAffinePartial2D(
                fromUsed,
                toUsed,
                agree,
                opencv_calib3d.RANSAC,
                CameraMotionParameters.AGREE_PX,
                RANSAC_ROUNDS,
                RANSAC_CONFIDENCE,
                REFINE_ROUNDS)) {
          int agreeing = affine.empty() ? 0 : opencv_core.countNonZero(agree);
          if (agreeing < Math.max(CameraMotionParameters.FEWEST_POINTS, n / 3)
              || !roomAgrees(agree, around, n)) {
            return Optional.empty();
          }
          try (DoubleIndexer m = affine.createIndexer()) {
            return Optional.of(
                new Match(
                    new Similarity(m.get(0, 0), m.get(1, 0), m.get(0, 2), m.get(1, 2)), agreeing));
          }
        }
      }
    }
  }

  /** Whether what lies around the athlete takes part in the move: else the athlete moved. */
  private boolean roomAgrees(Mat agree, boolean[] around, int n) {
    if (!bodyCounts) {
      return true;
    }
    int outside = 0;
    int agreeing = 0;
    try (UByteIndexer votes = agree.createIndexer()) {
      for (int i = 0; i < n; i++) {
        if (around[i]) {
          outside++;
          agreeing += votes.get(i, 0);
        }
      }
    }
    // A body can cover all that lay around it; then the rest has to speak with one voice.
    return outside < FEWEST_AROUND
        ? opencv_core.countNonZero(agree) >= SHARE_ALONE * n
        : agreeing >= SHARE_AROUND * outside;
  }

  @Override
  public void close() {
    picture.close();
    points.close();
  }
}
