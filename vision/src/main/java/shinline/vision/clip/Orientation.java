package shinline.vision.clip;

import static org.bytedeco.opencv.global.opencv_core.ROTATE_180;
import static org.bytedeco.opencv.global.opencv_core.ROTATE_90_CLOCKWISE;
import static org.bytedeco.opencv.global.opencv_core.ROTATE_90_COUNTERCLOCKWISE;
import static org.bytedeco.opencv.global.opencv_core.flip;
import static org.bytedeco.opencv.global.opencv_core.rotate;

import org.bytedeco.opencv.opencv_core.Mat;

/**
 * How a stored picture is turned upright: a flip top to bottom if the film is mirrored, then
 * clockwise quarter turns.
 *
 * @param quarterTurns clockwise, 0…3
 * @param mirrored whether the display matrix mirrors, as some front cameras write
 */
public record Orientation(int quarterTurns, boolean mirrored) {

  /** Stored as shown. */
  public static final Orientation UPRIGHT = new Orientation(0, false);

  /**
   * Reads a film's 3 × 3 display matrix, row by row [a b u; c d v; x y w], which takes a stored
   * point (p, q), y down, to (a p + c q, b p + d q) (ISO/IEC 14496-12, track header box). Turns
   * between the quarters do not come from phones and go to the nearest quarter.
   */
  static Orientation ofDisplayMatrix(int a, int b, int c, int d) {
    if ((a == 0 && b == 0) || (c == 0 && d == 0)) {
      return UPRIGHT;
    }
    double clockwiseDeg = Math.toDegrees(Math.atan2(b, a));
    int quarterTurns = Math.floorMod(Math.round(clockwiseDeg / 90), 4);
    boolean mirrored = (double) a * d - (double) b * c < 0;
    return new Orientation(quarterTurns, mirrored);
  }

  /** This orientation followed by more clockwise quarter turns. */
  public Orientation turnedMore(int more) {
    return new Orientation(Math.floorMod(quarterTurns + more, 4), mirrored);
  }

  /** Whether the upright picture is as wide as the stored one is high. */
  public boolean swapsSides() {
    return quarterTurns % 2 == 1;
  }

  /** Whether the stored picture is shown as it is. */
  public boolean asStored() {
    return quarterTurns == 0 && !mirrored;
  }

  /** The turn, clockwise, degrees. */
  public int clockwiseDeg() {
    return 90 * quarterTurns;
  }

  /** Writes {@code stored} turned upright into {@code upright}; changes {@code stored} too. */
  public void apply(Mat stored, Mat upright) {
    if (mirrored) {
      flip(stored, stored, 0);
    }
    switch (quarterTurns) {
      case 1 -> rotate(stored, upright, ROTATE_90_CLOCKWISE);
      case 2 -> rotate(stored, upright, ROTATE_180);
      case 3 -> rotate(stored, upright, ROTATE_90_COUNTERCLOCKWISE);
      default -> stored.copyTo(upright);
    }
  }
}
