package shinline.cli.picture;

import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.clip.ClipWriter;
import shinline.vision.clip.WriterOpening;

/** A film full of detail, with frames that come at uneven times. */
final class NoiseFilm {
  static final int FRAMES = 42;

  private NoiseFilm() {}

  /** Every seventh frame comes late by a third of the usual gap. */
  static double timeS(int frame) {
    return frame / 30.0 + (frame % 7 == 3 ? 1 / 90.0 : 0);
  }

  static void write(Path file) throws IOException {
    try (ClipWriter writer =
            ClipWriter.open(file, StandingSet.WIDTH, StandingSet.HEIGHT, 30)
                .fold(
                    WriterOpening.Ready::writer,
                    refused -> {
                      throw new IllegalStateException(refused.toString());
                    });
        Mat frame = new Mat(StandingSet.HEIGHT, StandingSet.WIDTH, CV_8UC3)) {
      FrameImage.copy(picture(), frame);
      for (int i = 0; i < FRAMES; i++) {
        writer.write(frame, timeS(i));
      }
    }
  }

  /** Blocks of eight pixels, each of its own grey. */
  static BufferedImage picture() {
    BufferedImage image =
        new BufferedImage(StandingSet.WIDTH, StandingSet.HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
    Random random = new Random(7);
    for (int y = 0; y < image.getHeight(); y += 8) {
      for (int x = 0; x < image.getWidth(); x += 8) {
        int grey = 60 + random.nextInt(120);
        for (int i = 0; i < 64; i++) {
          image.setRGB(x + i % 8, y + i / 8, 0x010101 * grey);
        }
      }
    }
    return image;
  }
}
