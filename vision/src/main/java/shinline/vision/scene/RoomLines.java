package shinline.vision.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the straight lines of a room that stay where they are while the athlete moves. */
final class RoomLines {

  /** The lines seen at the same place in enough of the frames, each once. */
  List<RoomLine> lasting(List<RoomFrame> frames) {
    List<Group> groups = new ArrayList<>();
    for (int f = 0; f < frames.size(); f++) {
      for (Sighting sighting : inFrame(frames.get(f))) {
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
    RoomSegments room = frame.segments();
    Optional<PersonBox> athlete = frame.athlete().map(box -> box.scaled(room.of().shrink()));
    Similarity move = frame.toCommonView().enlarged(room.of().shrink(), room.of().shrink());
    List<Sighting> lines = new ArrayList<>();
    for (RoomSegments.Segment segment : room.segments()) {
      boolean atAthlete =
          athlete.isPresent()
              && segment.touches(athlete.get(), BackgroundRollParameters.ATHLETE_MARGIN_SHARE);
      segment
          .asRoomLine(room.of().cols(), room.of().rows(), move)
          .ifPresent(line -> lines.add(new Sighting(line, atAthlete)));
    }
    return lines;
  }

  /** A line in one frame, and whether it lay in the athlete's grown box there. */
  private record Sighting(RoomLine line, boolean atAthlete) {}

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
