package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.bar.BarTrack;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.metrics.view.Attitude;
import shinline.metrics.view.RoomSight;

/**
 * What the clip tells beside the track.
 *
 * @param hold how the camera was held; the track is steadied already when it moved
 * @param room what the background's straight lines tell of the camera
 * @param disc a disc of known size seen beside the athlete
 * @param outlines the trunk's outline in some frames, in standing and at the bottoms
 * @param doubtful stretches whose pictures are not sound
 * @param bar the near disc of a bar on the back; empty when there is none
 */
public record ClipObservations(
    CameraHold hold,
    Optional<RoomSight> room,
    Optional<Disc> disc,
    List<TrunkOutline> outlines,
    List<DoubtfulSpan> doubtful,
    Optional<BarTrack> bar) {
  public ClipObservations {
    outlines = List.copyOf(outlines);
    doubtful = List.copyOf(doubtful);
  }

  /**
   * A stretch of the clip whose pictures rest on one that could not be decoded whole, or are
   * missing.
   *
   * @param fromS seconds from the first frame
   * @param toS seconds from the first frame
   */
  public record DoubtfulSpan(double fromS, double toS) {}

  /**
   * @param diameterM true diameter, metres
   * @param diameterPx seen diameter, pixels of the view measured in
   * @param share standard deviation of the seen diameter, share of it
   */
  public record Disc(double diameterM, double diameterPx, double share) {}

  /** A camera that stood still before a room that tells nothing. */
  public static ClipObservations none() {
    return new ClipObservations(
        CameraHold.STILL,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  /** What tells how the camera stood: the coach's word, and the room. */
  Attitude.Evidence ofCamera(SetRequest.Overrides told) {
    return new Attitude.Evidence(told.rollDeg(), told.pitchDeg(), room);
  }

  public ClipObservations withHold(CameraHold cameraHold) {
    return new ClipObservations(cameraHold, room, disc, outlines, doubtful, bar);
  }

  public ClipObservations withRoom(Optional<RoomSight> seen) {
    return new ClipObservations(hold, seen, disc, outlines, doubtful, bar);
  }

  public ClipObservations withDisc(Optional<Disc> seen) {
    return new ClipObservations(hold, room, seen, outlines, doubtful, bar);
  }

  public ClipObservations withOutlines(List<TrunkOutline> seen) {
    return new ClipObservations(hold, room, disc, seen, doubtful, bar);
  }

  public ClipObservations withDoubtful(List<DoubtfulSpan> spans) {
    return new ClipObservations(hold, room, disc, outlines, spans, bar);
  }

  public ClipObservations withBar(Optional<BarTrack> seen) {
    return new ClipObservations(hold, room, disc, outlines, doubtful, seen);
  }
}
