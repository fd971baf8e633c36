package shinline.metrics.result;

import java.util.List;
import java.util.Optional;
import shinline.metrics.track.Side;

/**
 * How the set was filmed and what that does to the numbers.
 *
 * @param facing side of the picture the athlete faces
 * @param frontLeg the athlete's own leg that is ahead
 * @param rollDeg turn of the camera about its line of sight, + clockwise picture; 0 when unknown
 * @param yawDeg how far the camera is off a true side view, unsigned; empty when unknown
 * @param cmPerPx centimetres a pixel at the athlete's plane; empty without a scale
 * @param warnings plain words, most important first
 */
public record SetUp(
    Side facing,
    Side frontLeg,
    boolean frontLegNearCamera,
    RearFoot rearFoot,
    double rollDeg,
    RollSource rollSource,
    Optional<Double> yawDeg,
    Optional<Double> cmPerPx,
    ScaleSource scaleSource,
    CameraHold cameraHold,
    List<String> warnings) {
  public SetUp {
    warnings = List.copyOf(warnings);
  }

  /** Where the rear foot rests. */
  public enum RearFoot {
    FLOOR,
    BENCH
  }

  /** Where the vertical comes from. */
  public enum RollSource {
    GIVEN,
    BACKGROUND,
    NONE
  }

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
