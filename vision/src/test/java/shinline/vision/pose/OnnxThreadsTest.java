package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A result must not depend on how many cores the machine has. */
final class OnnxThreadsTest {
  @ParameterizedTest
  @EnumSource(PoseModel.class)
  void moreThreadsGiveTheSameBits(PoseModel size) {
    int side = LandmarkModel.INPUT_SIDE;
    float[] planes = new float[3 * side * side];
    Random random = new Random(1);
    for (int i = 0; i < planes.length; i++) {
      planes[i] = random.nextFloat();
    }
    List<float[]> one = run(size, planes, 1);
    for (int threads : new int[] {2, 3, 4}) {
      List<float[]> more = run(size, planes, threads);
      assertThat(more).hasSameSizeAs(one);
      for (int i = 0; i < one.size(); i++) {
        assertThat(more.get(i)).as(size + ", output " + i).isEqualTo(one.get(i));
      }
    }
  }

  private static List<float[]> run(PoseModel size, float[] planes, int threads) {
    try (OnnxModel model =
        OnnxModel.load(size.landmarksFile(), LandmarkModel.INPUT_SIDE, threads)) {
      return model.run(planes);
    }
  }
}
