package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;

/** Read back with the JDK's own image reader, not with the library that wrote them. */
final class FramePictureTest {

  @Test
  void pngKeepsColoursExactly() throws IOException {
    try (Mat image = TestFilm.quarters(40, 30)) {
      BufferedImage read = ImageIO.read(new ByteArrayInputStream(FramePicture.png(image)));
      assertThat(read.getWidth()).isEqualTo(40);
      assertThat(read.getHeight()).isEqualTo(30);
      assertThat(read.getRGB(5, 5)).isEqualTo(0xffff0000);
      assertThat(read.getRGB(35, 5)).isEqualTo(0xff00ff00);
      assertThat(read.getRGB(5, 25)).isEqualTo(0xff0000ff);
    }
  }

  @Test
  void jpegIsReadableAndSmallerAtLowerQuality() throws IOException {
    try (Mat image = TestFilm.moving(160, 120, 1)) {
      byte[] fine = FramePicture.jpeg(image, 95);
      byte[] coarse = FramePicture.jpeg(image, 30);
      assertThat(ImageIO.read(new ByteArrayInputStream(fine)).getWidth()).isEqualTo(160);
      assertThat(coarse.length).isLessThan(fine.length);
    }
  }

  @Test
  void refusesNothingAndNonsense() {
    try (Mat nothing = new Mat();
        Mat image = TestFilm.quarters(8, 8)) {
      assertThatThrownBy(() -> FramePicture.png(nothing))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> FramePicture.jpeg(image, 0))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
