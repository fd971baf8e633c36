package shinline.vision.still;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.still.StillRefusal.PlainStillRefusal;

/**
 * Reads a still picture, JPEG or PNG, and turns it as its EXIF block says. What cannot be read is a
 * value, not an exception.
 */
public final class StillReader {
  /** Below this no joint can be placed: a shin would be some forty pixels long. */
  static final int LEAST_SIDE_PX = 160;

  /** Colour components of a picture made for print. */
  private static final int PRINT_COMPONENTS = 4;

  private final long mostPixels;

  /**
   * @param mostPixels pixels of a picture, at most
   */
  public StillReader(long mostPixels) {
    this.mostPixels = mostPixels;
  }

  /** Opens a picture; close it to free its memory. */
  public StillOpening open(Path file) {
    Optional<PlainStillRefusal> none = StillProbe.noFile(file);
    if (none.isPresent()) {
      return new StillOpening.Refused(none.get());
    }
    try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
      return StillProbe.kind(in).fold(kind -> open(in, kind), StillOpening.Refused::new);
    } catch (IOException | SecurityException e) {
      return new StillOpening.Refused(PlainStillRefusal.DISK_FAILS);
    }
  }

  private StillOpening open(ImageInputStream in, StillProbe.Kind kind) {
    try {
      Optional<StillHead> head =
          kind == StillProbe.Kind.PNG ? StillHead.ofPng(in) : StillHead.ofJpeg(in);
      if (head.isEmpty()) {
        return new StillOpening.Refused(PlainStillRefusal.BROKEN);
      }
      long width = head.get().widthPx();
      long height = head.get().heightPx();
      if (width > mostPixels || height > mostPixels || width * height > mostPixels) {
        return new StillOpening.Refused(new StillRefusal.TooLarge(width, height, mostPixels));
      }
      if (Math.min(width, height) < LEAST_SIDE_PX) {
        return new StillOpening.Refused(new StillRefusal.TooSmall(width, height, LEAST_SIDE_PX));
      }
      if (head.get().components() == PRINT_COMPONENTS) {
        return new StillOpening.Refused(PlainStillRefusal.PRINT_COLOURS);
      }
      in.seek(0);
      try (Mat stored = mat(decoded(in, kind))) {
        Mat upright = new Mat();
        head.get().orientation().apply(stored, upright);
        return new StillOpening.Opened(new Still(upright, head.get().orientation()));
      }
    } catch (OutOfMemoryError e) {
      return new StillOpening.Refused(PlainStillRefusal.NO_MEMORY);
    } catch (IOException | RuntimeException e) {
      // Readers of pictures throw whatever a damaged file leads them to.
      return new StillOpening.Refused(PlainStillRefusal.BROKEN);
    }
  }

  private static BufferedImage decoded(ImageInputStream in, StillProbe.Kind kind)
      throws IOException {
    ImageReader reader =
        ImageIO.getImageReadersByFormatName(kind.name().toLowerCase(Locale.ROOT)).next();
    boolean[] damaged = new boolean[1];
    try {
      reader.addIIOReadWarningListener((source, warning) -> damaged[0] |= tellsDamage(warning));
      reader.setInput(in, true, true);
      BufferedImage image = reader.read(0);
      if (damaged[0]) {
        throw new EOFException();
      }
      return image;
    } finally {
      reader.dispose();
    }
  }

  /** Bytes too many between two parts are no loss; anything else the decoder makes up. */
  private static boolean tellsDamage(String warning) {
    String said = warning.toLowerCase(Locale.ROOT);
    return said.contains("premature") || (said.contains("corrupt") && !said.contains("extraneous"));
  }

  /** BGR, 8 bits; what is transparent lies on white. */
  private static Mat mat(BufferedImage image) {
    byte[] bgr = bgr(image);
    Mat mat = new Mat(image.getHeight(), image.getWidth(), opencv_core.CV_8UC3);
    try (BytePointer data = mat.data()) {
      data.put(bgr, 0, bgr.length);
    }
    return mat;
  }

  private static byte[] bgr(BufferedImage image) {
    Raster raster = image.getRaster();
    boolean plain =
        raster.getNumBands() == 3
            && image.getColorModel().getComponentSize(0) == Byte.SIZE
            && image.getColorModel().getColorSpace().getType()
                == java.awt.color.ColorSpace.TYPE_RGB;
    if (plain) {
      // Without its colour profile: shades do not move joints, and turning them takes long.
      return bgr(raster);
    }
    BufferedImage drawn =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    Graphics2D g = drawn.createGraphics();
    g.drawImage(image, 0, 0, Color.WHITE, null);
    g.dispose();
    return ((DataBufferByte) drawn.getRaster().getDataBuffer()).getData();
  }

  private static byte[] bgr(Raster raster) {
    int width = raster.getWidth();
    int height = raster.getHeight();
    byte[] bgr = new byte[Math.multiplyExact(3, Math.multiplyExact(width, height))];
    int[] row = new int[3 * width];
    for (int y = 0; y < height; y++) {
      raster.getPixels(raster.getMinX(), raster.getMinY() + y, width, 1, row);
      for (int x = 0; x < width; x++) {
        int at = 3 * (y * width + x);
        bgr[at] = (byte) row[3 * x + 2];
        bgr[at + 1] = (byte) row[3 * x + 1];
        bgr[at + 2] = (byte) row[3 * x];
      }
    }
    return bgr;
  }
}
