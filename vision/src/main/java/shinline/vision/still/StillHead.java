package shinline.vision.still;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.stream.ImageInputStream;
import shinline.vision.clip.Orientation;

/**
 * What a picture's file says before its pixels: size and orientation. Read here and not by the
 * decoder, so that a picture that is too large is refused before memory is asked for.
 */
record StillHead(long widthPx, long heightPx, int components, Orientation orientation) {
  /** More parts than any picture's head has; bounds the walk through nonsense. */
  private static final int MOST_PARTS = 100_000;

  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final int PNG_MARK_BYTES = 8;
  private static final int MOST_EXIF_BYTES = 1 << 20;

  /** Of a PNG file (W3C PNG, third edition: IHDR, eXIf); empty when it has no size. */
  static Optional<StillHead> ofPng(ImageInputStream in) throws IOException {
    in.seek(PNG_MARK_BYTES);
    long width = 0;
    long height = 0;
    Orientation orientation = Orientation.UPRIGHT;
    try {
      for (int part = 0; part < MOST_PARTS; part++) {
        long length = in.readUnsignedInt();
        String name = name(in);
        long next = in.getStreamPosition() + length + 4;
        if (name.equals("IHDR")) {
          width = in.readUnsignedInt();
          height = in.readUnsignedInt();
        } else if (name.equals("eXIf") && length <= MOST_EXIF_BYTES) {
          orientation = ExifOrientation.of(bytes(in, (int) length)).orElse(orientation);
        } else if (name.equals("IEND")) {
          break;
        }
        in.seek(next);
      }
    } catch (EOFException e) {
      // Where the file ends in the middle of a part the decoder will tell.
    }
    return width > 0 && height > 0
        ? Optional.of(new StillHead(width, height, 3, orientation))
        : Optional.empty();
  }

  private static String name(ImageInputStream in) throws IOException {
    return new String(bytes(in, 4), StandardCharsets.ISO_8859_1);
  }

  /**
   * Of a JPEG file (ITU-T T.81, annex B): APP1 may hold EXIF, a start of frame holds the size;
   * empty when there is none before the pixels.
   */
  static Optional<StillHead> ofJpeg(ImageInputStream in) throws IOException {
    in.seek(2);
    Optional<Orientation> orientation = Optional.empty();
    try {
      for (int part = 0; part < MOST_PARTS; part++) {
        int marker = marker(in);
        if (marker == 0xD9 || marker == 0xDA) {
          return Optional.empty();
        }
        if (marker == 0x01 || (marker >= 0xD0 && marker <= 0xD7)) {
          continue;
        }
        int length = in.readUnsignedShort();
        long next = in.getStreamPosition() - 2 + length;
        if (marker == 0xE1 && length > EXIF.length + 2 && orientation.isEmpty()) {
          byte[] block = bytes(in, length - 2);
          if (Arrays.equals(block, 0, EXIF.length, EXIF, 0, EXIF.length)) {
            orientation = ExifOrientation.of(Arrays.copyOfRange(block, EXIF.length, block.length));
          }
        } else if (startsFrame(marker)) {
          in.skipBytes(1);
          int height = in.readUnsignedShort();
          int width = in.readUnsignedShort();
          int components = in.readUnsignedByte();
          return width > 0 && height > 0
              ? Optional.of(
                  new StillHead(width, height, components, orientation.orElse(Orientation.UPRIGHT)))
              : Optional.empty();
        }
        in.seek(next);
      }
    } catch (EOFException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  /** The next marker; fill bytes of 0xFF may stand before it. */
  private static int marker(ImageInputStream in) throws IOException {
    int b = in.readUnsignedByte();
    while (b != 0xFF) {
      b = in.readUnsignedByte();
    }
    while (b == 0xFF) {
      b = in.readUnsignedByte();
    }
    return b;
  }

  /** SOF0 to SOF15, which DHT, JPG and DAC lie among. */
  private static boolean startsFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  private static byte[] bytes(ImageInputStream in, int count) throws IOException {
    byte[] bytes = new byte[count];
    in.readFully(bytes);
    return bytes;
  }
}
