package shinline.vision.still;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.bytedeco.javacpp.indexer.UByteIndexer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.vision.still.StillRefusal.PlainStillRefusal;

class StillReaderTest {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 200;
  private static final long MOST_PIXELS = 1 << 20;

  /** Of a corner, far enough from the edges that JPEG's blocks of 16 do not mix. */
  private static final int INSIDE = 24;

  @TempDir Path folder;

  /** The shown picture's corners, from the top left clockwise. */
  private enum Corner {
    RED(Color.RED, 0, 0),
    GREEN(Color.GREEN, 1, 0),
    BLUE(Color.BLUE, 1, 1),
    WHITE(Color.WHITE, 0, 1);

    private final Color colour;
    private final int right;
    private final int bottom;

    Corner(Color colour, int right, int bottom) {
      this.colour = colour;
      this.right = right;
      this.bottom = bottom;
    }

    int x(int width) {
      return right == 1 ? width - 1 - INSIDE : INSIDE;
    }

    int y(int height) {
      return bottom == 1 ? height - 1 - INSIDE : INSIDE;
    }
  }

  /** A quarter of the picture in the colour of each corner. */
  private static BufferedImage shown(int type) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, type);
    Graphics2D g = image.createGraphics();
    for (Corner corner : Corner.values()) {
      g.setColor(corner.colour);
      g.fillRect(corner.right * WIDTH / 2, corner.bottom * HEIGHT / 2, WIDTH / 2, HEIGHT / 2);
    }
    g.dispose();
    return image;
  }

  /**
   * What a camera would store of the shown picture under an orientation: by the standard's own
   * words, the side of the shown picture that the stored first row (0th row) and first column (0th
   * column) are (CIPA DC-008, Exif 2.32, tag 0x0112).
   */
  private static BufferedImage stored(BufferedImage shown, int orientation) {
    int w = shown.getWidth();
    int h = shown.getHeight();
    boolean turned = orientation >= 5;
    BufferedImage stored = new BufferedImage(turned ? h : w, turned ? w : h, shown.getType());
    for (int row = 0; row < stored.getHeight(); row++) {
      for (int column = 0; column < stored.getWidth(); column++) {
        int x =
            switch (orientation) {
              case 1, 4 -> column; // 0th column at the left
              case 2, 3 -> w - 1 - column; // at the right
              case 5, 8 -> row; // 0th row at the left
              default -> w - 1 - row; // at the right
            };
        int y =
            switch (orientation) {
              case 1, 2 -> row; // 0th row at the top
              case 3, 4 -> h - 1 - row; // at the bottom
              case 5, 6 -> column; // 0th column at the top
              default -> h - 1 - column; // at the bottom
            };
        stored.setRGB(column, row, shown.getRGB(x, y));
      }
    }
    return stored;
  }

  private static byte[] bytes(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, format, out)).isTrue();
    return out.toByteArray();
  }

  /** A TIFF header, one directory, one entry: the orientation. */
  private static byte[] exif(int orientation, boolean littleEndian) {
    byte[] big = {
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      0x01,
      0x12,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      (byte) orientation,
      0,
      0,
      0,
      0,
      0,
      0
    };
    byte[] little = {
      'I',
      'I',
      42,
      0,
      8,
      0,
      0,
      0,
      1,
      0,
      0x12,
      0x01,
      3,
      0,
      1,
      0,
      0,
      0,
      (byte) orientation,
      0,
      0,
      0,
      0,
      0,
      0,
      0
    };
    return littleEndian ? little : big;
  }

  private static byte[] jpegWithExif(byte[] jpeg, byte[] tiff) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.write(jpeg, 0, 2);
    data.writeShort(0xFFE1);
    data.writeShort(2 + 6 + tiff.length);
    data.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    data.write(tiff);
    data.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static byte[] pngWithExif(byte[] png, byte[] tiff) throws IOException {
    int afterHead = 8 + 12 + 13;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(out);
    data.write(png, 0, afterHead);
    data.writeInt(tiff.length);
    byte[] name = "eXIf".getBytes(StandardCharsets.US_ASCII);
    data.write(name);
    data.write(tiff);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(tiff);
    data.writeInt((int) crc.getValue());
    data.write(png, afterHead, png.length - afterHead);
    return out.toByteArray();
  }

  private StillOpening open(byte[] content) throws IOException {
    Path file = folder.resolve("a picture");
    Files.write(file, content);
    return new StillReader(MOST_PIXELS).open(file);
  }

  private static StillRefusal refusal(StillOpening opening) {
    return opening.fold(
        opened -> {
          opened.still().close();
          throw new AssertionError("opened");
        },
        StillOpening.Refused::why);
  }

  private static void assertShown(StillOpening opening, int turnedDeg) {
    try (Still still =
        opening.fold(
            StillOpening.Opened::still,
            refused -> {
              throw new AssertionError(refused.why().toString());
            })) {
      assertThat(still.widthPx()).isEqualTo(WIDTH);
      assertThat(still.heightPx()).isEqualTo(HEIGHT);
      assertThat(still.turnedDeg()).isEqualTo(turnedDeg);
      try (UByteIndexer pixels = still.image().createIndexer()) {
        for (Corner corner : Corner.values()) {
          int x = corner.x(WIDTH);
          int y = corner.y(HEIGHT);
          int[] bgr = {
            pixels.get(y, x, 0), pixels.get(y, x, 1), pixels.get(y, x, 2),
          };
          // JPEG's colours are off by a few of 255.
          assertThat(Math.abs(bgr[0] - corner.colour.getBlue())).as(corner.name()).isLessThan(12);
          assertThat(Math.abs(bgr[1] - corner.colour.getGreen())).as(corner.name()).isLessThan(12);
          assertThat(Math.abs(bgr[2] - corner.colour.getRed())).as(corner.name()).isLessThan(12);
        }
      }
    }
  }

  /** Turns as EXIF's readers describe them: mirrored left to right first, then clockwise. */
  @ParameterizedTest
  @CsvSource({"1, 0", "2, 0", "3, 180", "4, 180", "5, 270", "6, 90", "7, 90", "8, 270"})
  void everyOrientationIsTurnedUpright(int orientation, int turnedDeg) throws IOException {
    BufferedImage stored = stored(shown(BufferedImage.TYPE_3BYTE_BGR), orientation);
    for (boolean littleEndian : new boolean[] {true, false}) {
      byte[] tiff = exif(orientation, littleEndian);
      assertShown(open(jpegWithExif(bytes(stored, "jpeg"), tiff)), turnedDeg);
      assertShown(open(pngWithExif(bytes(stored, "png"), tiff)), turnedDeg);
    }
  }

  @Test
  void nonsenseInTheOrientationIsNoOrientation() throws IOException {
    byte[] jpeg = bytes(shown(BufferedImage.TYPE_3BYTE_BGR), "jpeg");
    assertShown(open(jpegWithExif(jpeg, exif(0, true))), 0);
    assertShown(open(jpegWithExif(jpeg, exif(9, false))), 0);
    assertShown(open(jpegWithExif(jpeg, new byte[] {'M', 'M', 0, 42, 127, 0, 0, 8})), 0);
    assertShown(open(jpegWithExif(jpeg, Arrays.copyOf(exif(6, true), 15))), 0);
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_BYTE_INDEXED,
        BufferedImage.TYPE_4BYTE_ABGR,
        BufferedImage.TYPE_INT_RGB
      })
  void everyKindOfPngIsRead(int type) throws IOException {
    assertShown(open(bytes(shown(type), "png")), 0);
  }

  @Test
  void whatIsTransparentLiesOnWhite() throws IOException {
    BufferedImage clear = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
    try (Still still = open(bytes(clear, "png")).fold(StillOpening.Opened::still, r -> null);
        UByteIndexer pixels = still.image().createIndexer()) {
      assertThat(pixels.get(100, 100, 1)).isEqualTo(255);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png"})
  void aPictureThatIsCutOffIsBroken(String format) throws IOException {
    byte[] whole = bytes(shown(BufferedImage.TYPE_3BYTE_BGR), format);
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      byte[] cut = Arrays.copyOf(whole, (int) (share * whole.length));
      assertThat(refusal(open(cut)))
          .as("%s %.1f", format, share)
          .isEqualTo(PlainStillRefusal.BROKEN);
    }
  }

  @Test
  void whatIsNoPictureIsToldApart() throws IOException {
    assertThat(refusal(open(new byte[0]))).isEqualTo(PlainStillRefusal.EMPTY);
    assertThat(refusal(open("shin".getBytes(StandardCharsets.UTF_8))))
        .isEqualTo(PlainStillRefusal.NO_PICTURE);
    assertThat(refusal(open("\0\0\0\30ftypisom....".getBytes(StandardCharsets.ISO_8859_1))))
        .isEqualTo(PlainStillRefusal.FILM);
    assertThat(refusal(open("\0\0\0\30ftypheic....".getBytes(StandardCharsets.ISO_8859_1))))
        .isEqualTo(PlainStillRefusal.HEIC);
    assertThat(refusal(open("GIF89a".getBytes(StandardCharsets.ISO_8859_1))))
        .isEqualTo(PlainStillRefusal.OTHER_PICTURE);
    assertThat(refusal(new StillReader(MOST_PIXELS).open(folder)))
        .isEqualTo(PlainStillRefusal.FOLDER);
    assertThat(refusal(new StillReader(MOST_PIXELS).open(folder.resolve("gone"))))
        .isEqualTo(PlainStillRefusal.MISSING);
  }

  @Test
  void sizesAreCheckedBeforeAnythingIsDecoded() throws IOException {
    byte[] png = bytes(shown(BufferedImage.TYPE_3BYTE_BGR), "png");
    // Width and height stand at the head's begin; with the check sum wrong no decoder would read
    // it.
    byte[] huge = png.clone();
    huge[17] = 1;
    huge[21] = 1;
    assertThat(refusal(open(huge)))
        .isEqualTo(new StillRefusal.TooLarge(WIDTH + (1 << 16), HEIGHT + (1 << 16), MOST_PIXELS));
    byte[] small = bytes(new BufferedImage(90, 300, BufferedImage.TYPE_3BYTE_BGR), "jpeg");
    assertThat(refusal(open(small)))
        .isEqualTo(new StillRefusal.TooSmall(90, 300, StillReader.LEAST_SIDE_PX));
  }
}
