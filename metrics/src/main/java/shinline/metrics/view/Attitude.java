package shinline.metrics.view;

import java.util.Map;
import java.util.Optional;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.Angle;
import shinline.metrics.geometry.Lens;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

/**
 * How the camera stood to the athlete, and how sure that is.
 *
 * @param roll turn of the picture, + clockwise
 * @param rollSource where it comes from
 * @param pitch + when the camera looks down
 * @param pitchSource where it comes from; with {@link Source#NONE} the pitch is the likeliest by
 *     how the athlete shows
 * @param yaw + when the camera stands ahead of the athlete
 */
public record Attitude(
    AngleEstimate roll,
    Source rollSource,
    AngleEstimate pitch,
    Source pitchSource,
    AngleEstimate yaw,
    Frame frame) {

  /** Where an angle comes from. */
  public enum Source {
    GIVEN,
    BACKGROUND,
    NONE
  }

  /**
   * What the picture is.
   *
   * @param facing side of the picture the athlete faces
   */
  record Frame(Side facing, double widthPx, double heightPx, Calibration calibration) {}

  /** What the coach says and the room shows of the camera. */
  public record Evidence(
      Optional<Double> givenRollDeg, Optional<Double> givenPitchDeg, Optional<RoomSight> room) {}

  /** From all that tells it. */
  public static Attitude of(
      Evidence evidence, RawTrack track, LegTrack legs, Calibration calibration) {
    Side facing = legs.facing().side();
    Frame frame = new Frame(facing, track.widthPx(), track.heightPx(), calibration);
    Optional<TrunkSight> trunk = TrunkSight.of(track, facing, calibration);
    Told roll =
        told(
            evidence.givenRollDeg,
            evidence.room.map(r -> new AngleEstimate(r.rollDeg(), r.rollSigmaDeg())),
            new AngleEstimate(0, calibration.value(CalibrationKey.CAMERA_ROLL)),
            calibration);
    Told pitch =
        told(
            evidence.givenPitchDeg,
            evidence
                .room
                .flatMap(RoomSight::uprights)
                .map(s -> s.angle(focalLongSides(calibration))),
            likelyPitch(trunk, calibration),
            calibration);
    double ahead = facing == Side.RIGHT ? -1 : 1;
    Optional<AngleEstimate> wall =
        evidence
            .room
            .flatMap(RoomSight::levels)
            .map(s -> s.angle(focalLongSides(calibration)))
            .map(a -> new AngleEstimate(ahead * a.deg(), a.sigmaDeg()));
    AngleEstimate yaw =
        new YawReading(calibration).of(trunk.map(t -> turned(t, legs, calibration)), wall);
    return new Attitude(roll.angle, roll.source, pitch.angle, pitch.source, yaw, frame);
  }

  private record Told(AngleEstimate angle, Source source) {}

  private static Told told(
      Optional<Double> given,
      Optional<AngleEstimate> background,
      AngleEstimate usual,
      Calibration calibration) {
    return given
        .map(
            deg ->
                new Told(
                    new AngleEstimate(deg, calibration.value(CalibrationKey.CAMERA_GIVEN)),
                    Source.GIVEN))
        .or(() -> background.map(angle -> new Told(angle, Source.BACKGROUND)))
        .orElse(new Told(usual, Source.NONE));
  }

  private static AngleEstimate likelyPitch(Optional<TrunkSight> trunk, Calibration calibration) {
    AngleEstimate usual =
        new AngleEstimate(
            calibration.value(CalibrationKey.CAMERA_PITCH),
            calibration.value(CalibrationKey.CAMERA_PITCH_SPREAD));
    return trunk
        .map(
            t ->
                usual.with(
                    new AngleEstimate(
                        calibration.value(CalibrationKey.TRUNK_PITCH_LEVEL)
                            + calibration.value(CalibrationKey.TRUNK_PITCH_SHOULDER)
                                * t.shoulderAbove()
                            + calibration.value(CalibrationKey.TRUNK_PITCH_HIP) * t.hipAbove()
                            + lineOfSight(t.placeAbove(), calibration),
                        calibration.value(CalibrationKey.TRUNK_PITCH_SPREAD))))
        .orElse(usual);
  }

  private static AngleEstimate turned(TrunkSight trunk, LegTrack legs, Calibration calibration) {
    return new AngleEstimate(
        calibration.value(CalibrationKey.TRUNK_YAW) * trunk.shoulderAhead()
            + (legs.frontLegNearCamera() ? 1 : -1)
                * calibration.value(CalibrationKey.TRUNK_YAW_FRONT_LEG)
            + lineOfSight(trunk.placeAhead(), calibration),
        calibration.value(CalibrationKey.TRUNK_YAW_SPREAD));
  }

  private static double focalLongSides(Calibration calibration) {
    return calibration.value(CalibrationKey.CAMERA_FOCAL);
  }

  /** Degrees between the camera's axis and the sight of a place in the picture. */
  private static double lineOfSight(double longSides, Calibration calibration) {
    return Math.toDegrees(Math.atan(longSides / focalLongSides(calibration)));
  }

  /** What the picture makes of the athlete's side plane; x forward. */
  public ViewGeometry view() {
    return view(0, 0, 0, 1);
  }

  /** What may be off. */
  public enum Doubt {
    ROLL,
    PITCH,
    YAW,
    FOCAL_LENGTH
  }

  /**
   * The view with each thing that is not sure off by its standard deviation, one at a time.
   *
   * @param rollOffDeg standard deviation of a roll that comes and goes, degrees; 0 for none
   */
  public Map<Doubt, ViewGeometry> doubts(double rollOffDeg) {
    double focal = 1 + frame.calibration.value(CalibrationKey.CAMERA_FOCAL_SHARE);
    // Lines tell the angle over the focal length, so that both are wrong together.
    double pitchWithFocal =
        pitchSource == Source.BACKGROUND
            ? Math.toDegrees(Math.atan(focal * tan(pitch))) - pitch.deg()
            : 0;
    return Map.of(
        Doubt.ROLL, view(Math.hypot(roll.sigmaDeg(), rollOffDeg), 0, 0, 1),
        Doubt.PITCH, view(0, pitch.sigmaDeg(), 0, 1),
        Doubt.YAW, view(0, 0, yaw.sigmaDeg(), 1),
        Doubt.FOCAL_LENGTH, view(0, pitchWithFocal, 0, focal));
  }

  private static double tan(AngleEstimate angle) {
    return Math.tan(Math.toRadians(angle.deg()));
  }

  private ViewGeometry view(double rollOff, double pitchOff, double yawOff, double focalFactor) {
    double ahead = frame.facing == Side.RIGHT ? 1 : -1;
    double longSide = Math.max(frame.widthPx, frame.heightPx);
    Point centre = new Point(ahead * (frame.widthPx - 1) / 2, (frame.heightPx - 1) / 2);
    return new ViewGeometry(
        Angle.ofDegrees(yaw.deg() + yawOff),
        Angle.ofDegrees(pitch.deg() + pitchOff),
        // A picture turned clockwise leans forward when the athlete faces right, else backward.
        Angle.ofDegrees(ahead * (roll.deg() + rollOff)),
        new Lens(centre, focalFactor * focalLongSides(frame.calibration) * longSide));
  }
}
