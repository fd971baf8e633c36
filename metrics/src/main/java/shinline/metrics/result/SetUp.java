package shinline.metrics.result;

import java.util.List;
import java.util.Optional;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.track.ShownLegs;
import shinline.metrics.track.Side;
import shinline.metrics.view.Attitude;

/**
 * How the set was filmed and what that does to the numbers.
 *
 * @param facing side of the picture the athlete faces
 * @param frontLeg the athlete's own leg that is ahead
 * @param camera how the camera stood to the athlete
 * @param cmPerPx centimetres a pixel at the athlete's plane; empty without a scale
 * @param shownLegs what the clip alone tells of the stance
 * @param warnings most important first
 */
public record SetUp(
    Side facing,
    Side frontLeg,
    boolean frontLegNearCamera,
    RearFoot rearFoot,
    Camera camera,
    Optional<Double> cmPerPx,
    ScaleSource scaleSource,
    CameraHold cameraHold,
    ShownLegs shownLegs,
    List<Warning> warnings) {
  public SetUp {
    warnings = List.copyOf(warnings);
  }

  /** Where the rear foot rests. */
  public enum RearFoot {
    FLOOR,
    BENCH
  }

  /**
   * How the camera stood.
   *
   * @param rollDeg turn about its line of sight, + clockwise picture; 0 when unknown
   * @param pitchDeg how far it looked down, minus for up; the likeliest when unknown
   * @param yawDeg how far off a true side view, + when it stood ahead of the athlete; empty when
   *     unknown
   * @param view what the picture makes of the athlete's side plane, x forward
   */
  public record Camera(
      double rollDeg,
      Attitude.Source rollSource,
      double pitchDeg,
      Attitude.Source pitchSource,
      Optional<Double> yawDeg,
      ViewGeometry view) {}

  /** How the camera was held. */
  public enum CameraHold {
    /** It stood still. */
    STILL,
    /** It moved, and its movement was taken out against the background. */
    STEADIED,
    /** The background shows too little to tell whether it moved. */
    NOT_FOLLOWED
  }

  /** Where centimetres come from. */
  public enum ScaleSource {
    HEIGHT,
    BENCH,
    DISC,
    NONE
  }
}
