package shinline.metrics.bar;

import java.util.List;
import shinline.metrics.geometry.Point;

/**
 * The near disc of a bar as the clip shows it.
 *
 * @param diameterM its true diameter, metres
 * @param looks in the order of time
 */
public record BarTrack(double diameterM, List<Look> looks) {
  public BarTrack {
    if (!(diameterM > 0) || !Double.isFinite(diameterM)) {
      throw new IllegalArgumentException("a disc of " + diameterM + " m");
    }
    looks = List.copyOf(looks);
    for (int i = 1; i < looks.size(); i++) {
      if (looks.get(i).timeS() <= looks.get(i - 1).timeS()) {
        throw new IllegalArgumentException("looks at the bar out of order: " + looks.get(i));
      }
    }
  }

  /**
   * One look.
   *
   * @param timeS seconds from the first frame
   * @param centre of the disc in the still view, pixels, y up
   * @param diameterPx longer axis of its rim in the still view, pixels
   * @param roundness shorter over longer axis, 0…1
   */
  public record Look(double timeS, Point centre, double diameterPx, double roundness) {
    public Look {
      if (!(diameterPx > 0) || !(roundness > 0 && roundness <= 1)) {
        throw new IllegalArgumentException(
            "a disc of " + diameterPx + " px, roundness " + roundness);
      }
    }
  }
}
