package shinline.vision.scene;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_imgproc.LineSegmentDetector;

/** A picture of a room, grey and shrunk, in which straight segments are looked for. */
public final class RoomPicture implements AutoCloseable {
  private final RoomSegments.Size size;
  private final Mat small;

  private RoomPicture(RoomSegments.Size size, Mat small) {
    this.size = size;
    this.small = small;
  }

  /**
   * @param picture upright, square pixels, 8-bit BGR or grey; stays the caller's, and is not needed
   *     any more
   */
  public static RoomPicture of(Mat picture) {
    RoomSegments.Size size = new RoomSegments.Size(picture.cols(), picture.rows());
    Mat small = new Mat();
    try (Mat grey = new Mat();
        Size to = new Size(size.cols(), size.rows())) {
      if (picture.channels() == 1) {
        picture.copyTo(grey);
      } else {
        opencv_imgproc.cvtColor(picture, grey, opencv_imgproc.COLOR_BGR2GRAY);
      }
      opencv_imgproc.resize(grey, small, to, 0, 0, opencv_imgproc.INTER_AREA);
    }
    return new RoomPicture(size, small);
  }

  /**
   * Finds its segments with OpenCV's line segment detector (von Gioi, Jakubowicz, Morel, Randall,
   * <i>LSD: a Line Segment Detector</i>, IPOL 2, 2012, doi:10.5201/ipol.2012.gjmr-lsd), whose
   * false-alarm control keeps texture and noise from becoming lines.
   */
  public RoomSegments segments() {
    try (Mat found = new Mat();
        LineSegmentDetector detector = opencv_imgproc.createLineSegmentDetector()) {
      detector.detect(small, found);
      return new RoomSegments(size, read(found));
    }
  }

  private static List<RoomSegments.Segment> read(Mat found) {
    List<RoomSegments.Segment> segments = new ArrayList<>();
    if (found.empty() || found.depth() != opencv_core.CV_32F) {
      return segments;
    }
    try (FloatIndexer ends = found.createIndexer()) {
      long count = (long) found.rows() * found.cols();
      for (long i = 0; i < count; i++) {
        long row = found.cols() == 1 ? i : 0;
        long col = found.cols() == 1 ? 0 : i;
        segments.add(
            new RoomSegments.Segment(
                ends.get(row, col, 0),
                ends.get(row, col, 1),
                ends.get(row, col, 2),
                ends.get(row, col, 3)));
      }
    }
    return segments;
  }

  @Override
  public void close() {
    small.close();
  }
}
