package shinline.metrics.result;

import java.util.List;
import shinline.metrics.geometry.Point;

/**
 * The bar in the drive of a rep: the centre of its near disc, at its own distance.
 *
 * @param meanSpeed upward, over the drive, metres a second
 * @param peakSpeed highest within it, metres a second
 * @param strayCm how far it strays forward and back from bottom to top, centimetres
 * @param trunkChangeDeg how much more the trunk leans at the bottom than standing, as far as the
 *     bar's end against the hip tells, degrees
 * @param speedLossPct mean speed below that of the set's fastest rep, per cent of that; advisory
 *     (Jukic 2023, doi 10.1186/s40798-023-00626-z)
 * @param pathCm from bottom to top, centimetres ahead of and above the bottom
 */
public record BarReading(
    Reading meanSpeed,
    Reading peakSpeed,
    Reading strayCm,
    Reading trunkChangeDeg,
    Reading speedLossPct,
    List<Point> pathCm) {
  public BarReading {
    pathCm = List.copyOf(pathCm);
  }
}
