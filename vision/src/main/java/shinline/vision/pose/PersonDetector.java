package shinline.vision.pose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.library.Cores;

/** Finds people in a whole frame, so that a tracker can start and a caller can warn of two. */
public final class PersonDetector implements AutoCloseable {
  private static final int INPUT_SIDE = DetectorAnchors.INPUT_SIDE;
  private static final int VALUES_PER_ROW = 12;
  private static final double LEAST_SCORE = 0.5;
  private static final byte GREY = (byte) 128;

  private static final DetectorAnchors.Anchor[] ANCHORS = DetectorAnchors.all();

  private final OnnxModel model;
  private final RegionCrop letterbox;

  private PersonDetector() {
    model = OnnxModel.load(ModelFile.DETECTOR, INPUT_SIDE, Cores.here().forPose());
    letterbox = new RegionCrop(INPUT_SIDE, RegionCrop.Border.ZERO, -1, 1);
  }

  /** Loads the detector; close it to free its memory. */
  public static PersonDetector open() {
    return new PersonDetector();
  }

  /** The people in an upright 8-bit BGR frame, the surest first; empty when there is nobody. */
  public List<DetectedPerson> detect(Mat bgrUpright) {
    return detect(bgrUpright, List.of());
  }

  /**
   * The people beside those who are known. One person in view makes the detector much less sure of
   * a second; with the first one painted over, it is as sure of the second as of anybody.
   *
   * @param known painted over, in a copy
   */
  List<DetectedPerson> detect(Mat bgrUpright, List<Patch> known) {
    RegionOfInterest frame = RegionOfInterest.letterbox(bgrUpright.cols(), bgrUpright.rows());
    byte[] pixels = letterbox.pixels(bgrUpright, frame);
    known.forEach(patch -> paintOver(pixels, frame, patch));
    List<float[]> outputs = model.run(letterbox.planes(pixels, ImageFlip.AS_FILMED));
    List<DetectorBox> boxes = new ArrayList<>();
    for (int row = 0; row < ANCHORS.length; row++) {
      double score = Sigmoid.of(outputs.get(1)[row]);
      if (score >= LEAST_SCORE) {
        DetectorBox box = box(outputs.get(0), row, score);
        if (box.values()[2] > box.values()[0] && box.values()[3] > box.values()[1]) {
          boxes.add(box);
        }
      }
    }
    return DetectorBox.onePerPerson(boxes).stream().map(box -> inFrame(box, frame)).toList();
  }

  private static void paintOver(byte[] bgr, RegionOfInterest frame, Patch patch) {
    int left = cell(frame.regionU(patch.left(), patch.top()));
    int right = cell(frame.regionU(patch.right(), patch.bottom()));
    int top = cell(frame.regionV(patch.left(), patch.top()));
    int bottom = cell(frame.regionV(patch.right(), patch.bottom()));
    for (int row = top; row < bottom; row++) {
      Arrays.fill(bgr, 3 * (row * INPUT_SIDE + left), 3 * (row * INPUT_SIDE + right), GREY);
    }
  }

  private static int cell(double share) {
    return (int) Math.max(0, Math.min(INPUT_SIDE, Math.round(share * INPUT_SIDE)));
  }

  /** A row holds centre x, y, width, height, then keypoints, in input pixels off the anchor. */
  private static DetectorBox box(float[] rows, int row, double score) {
    DetectorAnchors.Anchor anchor = ANCHORS[row];
    int at = row * VALUES_PER_ROW;
    double u = rows[at] / INPUT_SIDE + anchor.u();
    double v = rows[at + 1] / INPUT_SIDE + anchor.v();
    double halfWidth = rows[at + 2] / INPUT_SIDE / 2;
    double halfHeight = rows[at + 3] / INPUT_SIDE / 2;
    double[] values = {
      u - halfWidth,
      v - halfHeight,
      u + halfWidth,
      v + halfHeight,
      rows[at + 4] / INPUT_SIDE + anchor.u(),
      rows[at + 5] / INPUT_SIDE + anchor.v(),
      rows[at + 6] / INPUT_SIDE + anchor.u(),
      rows[at + 7] / INPUT_SIDE + anchor.v()
    };
    return new DetectorBox(values, score);
  }

  private static DetectedPerson inFrame(DetectorBox box, RegionOfInterest frame) {
    double[] b = box.values();
    double left = frame.frameX(b[0], b[1]);
    double top = frame.frameY(b[0], b[1]);
    RegionOfInterest body =
        RegionOfInterest.around(
            frame.frameX(b[4], b[5]),
            frame.frameY(b[4], b[5]),
            frame.frameX(b[6], b[7]),
            frame.frameY(b[6], b[7]));
    return new DetectedPerson(
        left,
        top,
        frame.frameX(b[2], b[3]) - left,
        frame.frameY(b[2], b[3]) - top,
        box.score(),
        body);
  }

  @Override
  public void close() {
    letterbox.close();
    model.close();
  }
}
