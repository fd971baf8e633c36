package shinline.cli.crossing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import shinline.metrics.track.RawTrack;
import shinline.vision.clip.FrameStamp;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.CameraPath;

/**
 * Everybody's track through one clip, so that at its end the one can be taken who went down and up,
 * from the first frame on.
 */
public final class PeopleCrossing {
  private static final PoseSighting NOT_YET =
      new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED);

  private final int widthPx;
  private final int heightPx;
  private final List<FrameStamp> stamps = new ArrayList<>();
  private final Map<Integer, TrackCrossing> tracks = new TreeMap<>();
  private PeopleInView last = PeopleInView.alone(NOT_YET);

  /**
   * @param widthPx width of the upright picture
   * @param heightPx height of the upright picture
   */
  public PeopleCrossing(int widthPx, int heightPx) {
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    tracks.put(last.mover(), new TrackCrossing(widthPx, heightPx));
  }

  /**
   * Adds what was seen in one frame.
   *
   * @param frame index of the frame in the clip
   * @param timeS seconds from the first frame, after the last frame's
   */
  public void add(int frame, double timeS, PeopleInView people) {
    people.people().keySet().forEach(number -> tracks.computeIfAbsent(number, n -> unseenSoFar()));
    tracks.forEach((number, track) -> track.add(frame, timeS, people.of(number)));
    stamps.add(new FrameStamp(frame, timeS));
    last = people;
  }

  private TrackCrossing unseenSoFar() {
    TrackCrossing track = new TrackCrossing(widthPx, heightPx);
    stamps.forEach(stamp -> track.add(stamp.index(), stamp.timeS(), NOT_YET));
    return track;
  }

  /** Whether somebody else is in view, and moves. */
  public PeopleInView.Company company() {
    return last.company();
  }

  /**
   * The track of the one who went down and up, in the still view of the camera.
   *
   * @param camera how it moved, one look for each frame added
   */
  public RawTrack ofMover(CameraPath camera) {
    return Objects.requireNonNull(tracks.get(last.mover())).track(camera);
  }
}
