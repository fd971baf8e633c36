package shinline.vision.still;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import shinline.vision.clip.Orientation;

/**
 * The orientation a camera notes in a picture's EXIF block (CIPA DC-008, Exif 2.32, tag 0x0112): a
 * TIFF header, and a first directory of entries of 12 bytes each.
 */
final class ExifOrientation {
  private static final int ORIENTATION_TAG = 0x0112;
  private static final int SHORT_TYPE = 3;
  private static final int ENTRY_BYTES = 12;
  private static final int TIFF_MARK = 42;

  private ExifOrientation() {}

  /**
   * What the block says; empty when it says nothing, or nonsense.
   *
   * @param tiff the block from its TIFF header on
   */
  static Optional<Orientation> of(byte[] tiff) {
    if (tiff.length < 8) {
      return Optional.empty();
    }
    ByteBuffer bytes = ByteBuffer.wrap(tiff);
    if (tiff[0] == 'I' && tiff[1] == 'I') {
      bytes.order(ByteOrder.LITTLE_ENDIAN);
    } else if (tiff[0] != 'M' || tiff[1] != 'M') {
      return Optional.empty();
    }
    long directory = Integer.toUnsignedLong(bytes.getInt(4));
    if (bytes.getShort(2) != TIFF_MARK || directory > tiff.length - 2) {
      return Optional.empty();
    }
    int entries = Short.toUnsignedInt(bytes.getShort((int) directory));
    for (int i = 0; i < entries; i++) {
      long at = directory + 2 + (long) i * ENTRY_BYTES;
      if (at > tiff.length - ENTRY_BYTES) {
        return Optional.empty();
      }
      int entry = (int) at;
      if (Short.toUnsignedInt(bytes.getShort(entry)) == ORIENTATION_TAG) {
        return bytes.getShort(entry + 2) == SHORT_TYPE
            ? of(Short.toUnsignedInt(bytes.getShort(entry + 8)))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /**
   * The eight orientations, by which side of the shown picture the stored picture's first row and
   * first column are.
   */
  private static Optional<Orientation> of(int number) {
    return switch (number) {
      case 1 -> Optional.of(new Orientation(0, false)); // row at the top, column at the left
      case 2 -> Optional.of(new Orientation(2, true)); // top, right
      case 3 -> Optional.of(new Orientation(2, false)); // bottom, right
      case 4 -> Optional.of(new Orientation(0, true)); // bottom, left
      case 5 -> Optional.of(new Orientation(1, true)); // left, top
      case 6 -> Optional.of(new Orientation(1, false)); // right, top
      case 7 -> Optional.of(new Orientation(3, true)); // right, bottom
      case 8 -> Optional.of(new Orientation(3, false)); // left, bottom
      default -> Optional.empty();
    };
  }
}
