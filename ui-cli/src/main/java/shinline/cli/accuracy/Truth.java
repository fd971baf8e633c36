package shinline.cli.accuracy;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import shinline.metrics.track.BodyPoint;

/**
 * What is known of a clip from the outside, read from its truth file.
 *
 * @param athlete tells one body from another: the truth's own name for it, else its height
 * @param yawDeg how far the camera is off a true side view, unsigned
 * @param pitchDeg how far it looks down; empty when the file does not say
 * @param shaken whether the camera was held in the hand
 * @param timeS seconds of each frame, rising
 * @param columns values of each frame, by the names of the result format
 * @param pixels joint centres in the picture; none where the file tells none
 */
record Truth(
    String clip,
    double fps,
    boolean facesLeft,
    boolean frontLegLeft,
    boolean frontLegNear,
    boolean onBench,
    String athlete,
    double athleteHeightM,
    double yawDeg,
    OptionalDouble pitchDeg,
    boolean shaken,
    List<Scripted> reps,
    double[] timeS,
    Map<String, double[]> columns,
    Map<BodyPoint, Pixels> pixels) {

  /** Where a joint centre is seen in each frame: pixels of the shown picture, y down. */
  record Pixels(double[] x, double[] y) {}

  /**
   * A rep as the motion was scripted.
   *
   * @param faults names of flag kinds that were put in
   */
  record Scripted(double startS, double endS, Set<String> faults) {}
}
