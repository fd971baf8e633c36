package shinline.metrics.back;

import java.util.List;
import shinline.metrics.geometry.Point;

/**
 * The back of one look as it can be drawn, from low to high; pixels of the upright picture, y up.
 *
 * @param now where it is
 * @param standing where it would be with the bow it has in standing: shifted and turned so that
 *     both lines share their chord, and the gap between them is the bow
 */
public record BackLine(List<Point> now, List<Point> standing) {
  public BackLine {
    now = List.copyOf(now);
    standing = List.copyOf(standing);
  }
}
