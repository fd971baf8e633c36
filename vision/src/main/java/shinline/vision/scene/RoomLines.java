package shinline.vision.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.javacpp.indexer.FloatIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;
import org.bytedeco.opencv.opencv_imgproc.LineSegmentDetector;

/**
 * Finds the straight lines of a room that stay where they are while the athlete moves.
 *
 * <p>Segments come from OpenCV's line segment detector (von Gioi, Jakubowicz, Morel, Randall,
 * <i>LSD: a Line Segment Detector</i>, IPOL 2, 2012, doi:10.5201/ipol.2012.gjmr-lsd), whose
 * false-alarm control keeps texture and noise from becoming lines.
 */
final class RoomLines {

  /** The lines seen at the same place in enough of the frames, each once. */
  List<RoomLine> lasting(List<RoomFrame> frames) {
    List<Group> groups = new ArrayList<>();
    // On all cores: nothing else is left to do by then.
    List<List<Sighting>> seen = frames.parallelStream().map(RoomLines::inFrame).toList();
    for (int f = 0; f < seen.size(); f++) {
      for (Sighting sighting : seen.get(f)) {
        assign(groups, sighting, f);
      }
    }
    List<RoomLine> lasting = new ArrayList<>();
    for (Group group : groups) {
      if (group.lasts(frames.size())) {
        lasting.add(group.mean());
      }
    }
    return lasting;
  }

  private void assign(List<Group> groups, Sighting sighting, int frame) {
    Group best = null;
    double bestGap = Double.POSITIVE_INFINITY;
    for (Group group : groups) {
      double gap = group.gapTo(sighting.line);
      if (gap < bestGap) {
        best = group;
        bestGap = gap;
      }
    }
    if (best == null) {
      groups.add(new Group(sighting, frame));
    } else {
      best.add(sighting, frame);
    }
  }

  private static List<Sighting> inFrame(RoomFrame frame) {
    List<Sighting> lines = new ArrayList<>();
    Mat source = frame.picture();
    double longSide = Math.max(source.cols(), source.rows());
    double shrink = Math.min(1, BackgroundRollParameters.WORK_LONG_SIDE_PX / longSide);
    try (Mat grey = new Mat();
        Mat small = new Mat();
        Mat found = new Mat();
        LineSegmentDetector detector = opencv_imgproc.createLineSegmentDetector()) {
      if (source.channels() == 1) {
        source.copyTo(grey);
      } else {
        opencv_imgproc.cvtColor(source, grey, opencv_imgproc.COLOR_BGR2GRAY);
      }
      Size size =
          new Size(
              (int) Math.round(source.cols() * shrink), (int) Math.round(source.rows() * shrink));
      opencv_imgproc.resize(grey, small, size, 0, 0, opencv_imgproc.INTER_AREA);
      size.close();
      Optional<PersonBox> athlete = frame.athlete().map(box -> box.scaled(shrink));
      Similarity move = frame.toCommonView().enlarged(shrink, shrink);
      detector.detect(small, found);
      if (found.empty() || found.depth() != opencv_core.CV_32F) {
        return lines;
      }
      try (FloatIndexer ends = found.createIndexer()) {
        long count = (long) found.rows() * found.cols();
        for (long i = 0; i < count; i++) {
          Segment segment =
              found.cols() == 1
                  ? new Segment(
                      ends.get(i, 0, 0), ends.get(i, 0, 1), ends.get(i, 0, 2), ends.get(i, 0, 3))
                  : new Segment(
                      ends.get(0, i, 0), ends.get(0, i, 1), ends.get(0, i, 2), ends.get(0, i, 3));
          boolean atAthlete =
              athlete.isPresent()
                  && segment.touches(athlete.get(), BackgroundRollParameters.ATHLETE_MARGIN_SHARE);
          segment
              .asRoomLine(small.cols(), small.rows(), move)
              .ifPresent(line -> lines.add(new Sighting(line, atAthlete)));
        }
      }
    }
    return lines;
  }

  /** A line in one frame, and whether it lay in the athlete's grown box there. */
  private record Sighting(RoomLine line, boolean atAthlete) {}

  /** A detected segment, pixels of the shrunk picture. */
  private record Segment(double x1, double y1, double x2, double y2) {

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

  /** Sightings of one line. */
  private static final class Group {
    private final RoomLine.Kind kind;
    private boolean atAthlete;
    private double lean;
    private double offset;
    private double middle;
    private double length;
    private double weight;
    private int lastFrame;
    private int frames = 1;

    Group(Sighting sighting, int frame) {
      RoomLine first = sighting.line;
      atAthlete = sighting.atAthlete;
      kind = first.kind();
      lean = first.leanRad();
      offset = first.offset();
      middle = first.middle();
      length = first.length();
      weight = first.length();
      lastFrame = frame;
    }

    /** How badly the line fits this group, 0…; infinite when it is another line. */
    double gapTo(RoomLine line) {
      double leanGap =
          Math.abs(line.leanRad() - lean) / Math.toRadians(BackgroundRollParameters.MATCH_LEAN_DEG);
      double offsetGap =
          Math.abs(line.offset() - offset) / BackgroundRollParameters.MATCH_OFFSET_SHARE;
      double middleGap = Math.abs(line.middle() - middle) / (0.5 * (line.length() + length));
      return line.kind() != kind || leanGap > 1 || offsetGap > 1 || middleGap > 1
          ? Double.POSITIVE_INFINITY
          : leanGap + offsetGap + middleGap;
    }

    /**
     * Whether the line was there often enough. One at the athlete must be there nearly always, and
     * in several frames: limbs and weights move, a rack behind them does not.
     */
    boolean lasts(int of) {
      double share =
          atAthlete
              ? BackgroundRollParameters.SIGHTINGS_SHARE_AT_ATHLETE
              : BackgroundRollParameters.SIGHTINGS_SHARE;
      int fewest = atAthlete ? BackgroundRollParameters.FEWEST_SIGHTINGS_AT_ATHLETE : 1;
      return frames >= fewest && frames >= share * of - 1e-9;
    }

    void add(Sighting sighting, int frame) {
      RoomLine line = sighting.line;
      atAthlete |= sighting.atAthlete;
      double share = line.length() / (weight + line.length());
      lean += share * (line.leanRad() - lean);
      offset += share * (line.offset() - offset);
      middle += share * (line.middle() - middle);
      length = Math.max(length, line.length());
      weight += line.length();
      if (frame != lastFrame) {
        lastFrame = frame;
        frames++;
      }
    }

    RoomLine mean() {
      return new RoomLine(kind, lean, offset, middle, length);
    }
  }
}
