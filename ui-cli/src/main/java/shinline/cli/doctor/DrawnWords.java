package shinline.cli.doctor;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import shinline.cli.words.Words;

/**
 * Whether words can be drawn into pictures: Java takes fonts, and on Linux more, from the system.
 */
final class DrawnWords {
  private static final int WIDTH = 120;
  private static final int HEIGHT = 40;

  private DrawnWords() {}

  static Health look() {
    try {
      BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
      Graphics2D pen = image.createGraphics();
      pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, HEIGHT / 2));
      pen.drawString("31°", HEIGHT / 2, HEIGHT / 2);
      pen.dispose();
      if (blank(image) || !ImageIO.write(image, "jpeg", new ByteArrayOutputStream())) {
        return Health.poor(Part.PICTURES, Words.say("doctor.pictures.no-fonts"));
      }
      return Health.good(Part.PICTURES, Words.say("doctor.pictures"));
    } catch (IOException | RuntimeException | LinkageError e) {
      return Health.poor(Part.PICTURES, Words.say("doctor.pictures.no-fonts"));
    }
  }

  private static boolean blank(BufferedImage image) {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        if ((image.getRGB(x, y) & 0xffffff) != 0) {
          return false;
        }
      }
    }
    return true;
  }
}
