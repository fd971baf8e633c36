package shinline.vision.pose;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Objects;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgcodecs;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * A computer-made athlete low in a split squat, facing left, left leg in front: part of one frame
 * (244, from column 190 and row 60) of the development clip gym2-floor-heel, with its truth.
 */
final class SplitSquatPicture {
  private static final double LEFT = 190;
  private static final double TOP = 60;

  /** True joint centres, pixels of the picture. */
  static final Map<BodyLandmark, double[]> TRUTH =
      Map.of(
          BodyLandmark.LEFT_KNEE, new double[] {362.2 - LEFT, 347.9 - TOP},
          BodyLandmark.RIGHT_KNEE, new double[] {434.9 - LEFT, 418.1 - TOP},
          BodyLandmark.LEFT_ANKLE, new double[] {402.1 - LEFT, 427.7 - TOP},
          BodyLandmark.RIGHT_ANKLE, new double[] {520.0 - LEFT, 408.6 - TOP});

  private SplitSquatPicture() {}

  static Mat read() {
    try (InputStream in = SplitSquatPicture.class.getResourceAsStream("split-squat.jpg")) {
      byte[] jpeg = Objects.requireNonNull(in).readAllBytes();
      Mat bytes = new Mat(1, jpeg.length, opencv_core.CV_8UC1, new BytePointer(jpeg));
      return opencv_imgcodecs.imdecode(bytes, opencv_imgcodecs.IMREAD_COLOR);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
