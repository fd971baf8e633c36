package shinline.metrics.track;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * A track whose legs are told apart; x forward, y up, pixels.
 *
 * @param frames frame index in the clip of each row
 * @param timeS seconds of each row
 * @param frontLeg the athlete's own leg that is ahead
 * @param sideAgreement share of the evidence for {@code frontLeg}, 0…1: the model's names and which
 *     knee was hidden
 * @param sideIsClear whether that evidence leaves no doubt
 * @param swappedShare share of the frames in which the model had the legs exchanged
 * @param bodyPx rough stature in pixels
 * @param shown what the clip alone tells of the stance
 * @param splitShare share of the frames that show a split stance
 */
public record LegTrack(
    int[] frames,
    double[] timeS,
    Map<BodyPoint, PointPath> paths,
    Facing facing,
    Side frontLeg,
    double sideAgreement,
    boolean sideIsClear,
    double swappedShare,
    double bodyPx,
    double splitShare,
    ShownLegs shown) {
  public LegTrack {
    frames = frames.clone();
    timeS = timeS.clone();
    paths = Collections.unmodifiableMap(new EnumMap<>(paths));
  }

  /** The same track with other paths. */
  public LegTrack with(Map<BodyPoint, PointPath> others) {
    return new LegTrack(
        frames,
        timeS,
        others,
        facing,
        frontLeg,
        sideAgreement,
        sideIsClear,
        swappedShare,
        bodyPx,
        splitShare,
        shown);
  }

  public PointPath path(BodyPoint point) {
    return Objects.requireNonNull(paths.get(point));
  }

  /** Share of the looks within a time that saw a point, 0…1; 0 when there is no look. */
  public double seenShare(BodyPoint point, double fromS, double toS) {
    PointPath path = path(point);
    int inside = 0;
    int seen = 0;
    for (int i = 0; i < timeS.length; i++) {
      if (timeS[i] >= fromS && timeS[i] <= toS) {
        inside++;
        seen += path.seen(i) ? 1 : 0;
      }
    }
    return inside == 0 ? 0 : seen / (double) inside;
  }

  /** The near leg is the one on the side the athlete faces: facing right shows the right side. */
  public boolean frontLegNearCamera() {
    return frontLeg == facing.side();
  }
}
