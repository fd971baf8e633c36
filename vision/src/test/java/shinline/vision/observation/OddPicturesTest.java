package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;

import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;

class OddPicturesTest {
  private static final int WIDTH = 960;
  private static final int HEIGHT = 540;

  /** A grey room with a dark athlete of 40 × 300 pixels whose left edge is at {@code x}. */
  private static Mat room(int x) {
    Mat picture = new Mat(HEIGHT, WIDTH, CV_8UC3, new Scalar(150, 150, 150, 0));
    fill(picture, x, 150, 40, 300, 40);
    return picture;
  }

  private static void fill(Mat picture, int x, int y, int width, int height, int level) {
    opencv_imgproc.rectangle(
        picture,
        new Rect(x, y, width, height),
        new Scalar(level, level, level, 0),
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_8,
        0);
  }

  @Test
  void anAthleteWhoMovesIsNothingOdd() {
    OddPictures odd = new OddPictures();
    for (int i = 0; i < 40; i++) {
      // To and fro at up to 24 pixels a picture: 1.4 m a second, 4 m from the camera.
      odd.look(i / 15.0, room(400 + (int) (120 * Math.sin(i * 0.2))));
    }
    assertThat(odd.found()).isEmpty();
  }

  @Test
  void aBandThatIsThereInOnePictureOnlyIsFound() {
    OddPictures odd = new OddPictures();
    for (int i = 0; i < 20; i++) {
      Mat picture = room(400 + 3 * i);
      if (i == 9) {
        fill(picture, 0, 240, WIDTH, 120, 20);
      }
      odd.look(i / 10.0, picture);
    }
    assertThat(odd.found()).hasSize(1);
    assertThat(odd.found().get(0).fromS()).isEqualTo(0.8);
    assertThat(odd.found().get(0).toS()).isEqualTo(1.0);
  }

  @Test
  void twoOddPicturesAreOneStretch() {
    OddPictures odd = new OddPictures();
    for (int i = 0; i < 20; i++) {
      Mat picture = room(400);
      if (i == 9 || i == 11) {
        fill(picture, 0, 240, WIDTH, 120, 20);
      }
      odd.look(i / 10.0, picture);
    }
    assertThat(odd.found()).hasSize(1);
    assertThat(odd.found().get(0).fromS()).isEqualTo(0.8);
    assertThat(odd.found().get(0).toS()).isEqualTo(1.2);
  }

  @Test
  void aSceneThatChangesForGoodIsNotOdd() {
    OddPictures odd = new OddPictures();
    for (int i = 0; i < 20; i++) {
      Mat picture = room(400);
      if (i >= 9) {
        fill(picture, 0, 240, WIDTH, 120, 20);
      }
      odd.look(i / 10.0, picture);
    }
    assertThat(odd.found()).isEmpty();
  }
}
