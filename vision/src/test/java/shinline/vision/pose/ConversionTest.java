package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.bytedeco.javacpp.FloatPointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_dnn;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.MatVector;
import org.bytedeco.opencv.opencv_core.StringVector;
import org.bytedeco.opencv.opencv_dnn.Net;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Our converted models against an independent reader of the same weights: OpenCV's own TFLite
 * importer.
 */
final class ConversionTest {
  /**
   * Both compute in 32-bit floats, in another order: landmarks reach a few hundred, and 2^-24 of
   * that, grown over some hundred layers, stays well below this.
   */
  private static final double TOLERANCE = 0.02;

  private static final int SIDE = LandmarkModel.INPUT_SIDE;

  @ParameterizedTest
  @EnumSource(PoseModel.class)
  void landmarksAgreeWithOpenCv(PoseModel size) {
    String weights = size.name().toLowerCase(Locale.ROOT);
    try (OnnxModel ours = OnnxModel.load(size.landmarksFile(), SIDE, 1);
        Net theirs =
            opencv_dnn.readNetFromTFLite(
                "node_modules/@mediapipe/pose/pose_landmark_" + weights + ".tflite");
        RegionCrop crop = LandmarkModel.newCrop()) {
      Mat picture = SplitSquatPicture.read();
      RegionOfInterest region = RegionOfInterest.letterbox(picture.cols(), picture.rows());
      for (float[] input : List.of(crop.cut(picture, region, ImageFlip.AS_FILMED), noise())) {
        List<float[]> outputs = ours.run(input);
        Mat blob = new Mat(new int[] {1, 3, SIDE, SIDE}, opencv_core.CV_32F);
        new FloatPointer(blob.data()).put(input);
        theirs.setInput(blob);
        MatVector reference = new MatVector();
        theirs.forward(reference, new StringVector("Identity", "Identity_1"));
        assertClose(outputs.get(0), reference.get(0));
        assertClose(outputs.get(1), reference.get(1));
        assertThat(ours.run(input)).usingRecursiveComparison().isEqualTo(outputs);
      }
    }
  }

  private static float[] noise() {
    Random random = new Random(5);
    float[] values = new float[3 * SIDE * SIDE];
    for (int i = 0; i < values.length; i++) {
      values[i] = random.nextFloat();
    }
    return values;
  }

  private static void assertClose(float[] ours, Mat theirs) {
    float[] reference = new float[(int) theirs.total()];
    new FloatPointer(theirs.data()).get(reference);
    assertThat(ours).hasSameSizeAs(reference);
    double largest = 0;
    for (int i = 0; i < ours.length; i++) {
      largest = Math.max(largest, Math.abs(ours[i] - reference[i]));
    }
    assertThat(largest).isLessThan(TOLERANCE);
  }
}
