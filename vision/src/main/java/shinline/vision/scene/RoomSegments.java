package shinline.vision.scene;

import java.util.List;
import java.util.Optional;

/**
 * The straight segments of one picture of a room.
 *
 * @param of the picture
 * @param segments in pixels of the shrunk picture
 */
public record RoomSegments(Size of, List<Segment> segments) {

  /**
   * How large a picture is; it is shrunk to look for segments, if it is large.
   *
   * @param fullCols columns of the picture itself
   * @param fullRows rows of the picture itself
   */
  record Size(int fullCols, int fullRows) {

    /** Columns of the shrunk picture. */
    int cols() {
      return (int) Math.round(fullCols * shrink());
    }

    /** Rows of the shrunk picture. */
    int rows() {
      return (int) Math.round(fullRows * shrink());
    }

    /** Pixels of the shrunk picture for one of the picture itself. */
    double shrink() {
      double longSide = Math.max(fullCols, fullRows);
      return Math.min(1, BackgroundRollParameters.WORK_LONG_SIDE_PX / longSide);
    }
  }

  public RoomSegments {
    segments = List.copyOf(segments);
  }

  /** A detected segment, pixels of the shrunk picture. */
  record Segment(double x1, double y1, double x2, double y2) {

    /** Whether more than a third of the segment lies in the athlete's grown box. */
    boolean touches(PersonBox box, double marginShare) {
      int inside = 0;
      int steps = 12;
      for (int i = 0; i <= steps; i++) {
        double t = (double) i / steps;
        if (box.contains(x1 + t * (x2 - x1), y1 + t * (y2 - y1), marginShare * box.height())) {
          inside++;
        }
      }
      return inside * 3 > steps + 1;
    }

    Segment moved(Similarity move) {
      return new Segment(move.x(x1, y1), move.y(x1, y1), move.x(x2, y2), move.y(x2, y2));
    }

    /** The line in the common view; empty for what is too short, too oblique, or the rim. */
    Optional<RoomLine> asRoomLine(int cols, int rows, Similarity move) {
      return runsAlongTheEdge(cols, rows) ? Optional.empty() : moved(move).asRoomLine(cols, rows);
    }

    private Optional<RoomLine> asRoomLine(int cols, int rows) {
      double unit = Math.max(cols, rows);
      double dx = x2 - x1;
      double dy = y2 - y1;
      double length = Math.hypot(dx, dy) / unit;
      if (length < BackgroundRollParameters.MIN_LINE_SHARE) {
        return Optional.empty();
      }
      double range = Math.toRadians(BackgroundRollParameters.LEAN_RANGE_DEG);
      double mx = ((x1 + x2) / 2 - (cols - 1) / 2.0) / unit;
      double my = ((y1 + y2) / 2 - (rows - 1) / 2.0) / unit;
      if (Math.abs(dy) > Math.abs(dx)) {
        // up along the line is (dx, dy) with dy < 0; leaning right at the top is clockwise
        double lean = Math.atan(-dx / dy);
        double offset = mx * Math.cos(lean) + my * Math.sin(lean);
        double middle = -mx * Math.sin(lean) + my * Math.cos(lean);
        return Math.abs(lean) <= range
            ? Optional.of(new RoomLine(RoomLine.Kind.NEAR_VERTICAL, lean, offset, middle, length))
            : Optional.empty();
      }
      double lean = Math.atan(dy / dx);
      double offset = -mx * Math.sin(lean) + my * Math.cos(lean);
      double middle = mx * Math.cos(lean) + my * Math.sin(lean);
      return Math.abs(lean) <= range
          ? Optional.of(new RoomLine(RoomLine.Kind.NEAR_HORIZONTAL, lean, offset, middle, length))
          : Optional.empty();
    }

    /** A line on the rim of the picture is the rim (a black bar, a crop), not the room. */
    private boolean runsAlongTheEdge(int cols, int rows) {
      double rim = 3;
      return Math.max(x1, x2) < rim
          || Math.max(y1, y2) < rim
          || Math.min(x1, x2) > cols - 1 - rim
          || Math.min(y1, y2) > rows - 1 - rim;
    }
  }
}
