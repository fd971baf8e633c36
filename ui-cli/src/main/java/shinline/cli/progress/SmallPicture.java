package shinline.cli.progress;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** A picture made small enough that a page with many of them stays light. */
final class SmallPicture {
  private static final int HEIGHT_PX = 480;

  private SmallPicture() {}

  /** As JPEG; empty when the file is no picture, or gone. */
  static Optional<byte[]> of(Path file) {
    try {
      @Nullable BufferedImage whole = ImageIO.read(file.toFile());
      if (whole == null) {
        return Optional.empty();
      }
      ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
      return ImageIO.write(small(whole), "jpg", jpeg)
          ? Optional.of(jpeg.toByteArray())
          : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static BufferedImage small(BufferedImage whole) {
    double by = Math.min(1, (double) HEIGHT_PX / whole.getHeight());
    int width = Math.max(1, (int) Math.round(by * whole.getWidth()));
    int height = Math.max(1, (int) Math.round(by * whole.getHeight()));
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(whole, 0, 0, width, height, null);
    pen.dispose();
    return small;
  }
}
