package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.metrics.target.Target;

/**
 * What the coach and the picture say beside the track.
 *
 * @param athleteHeightM standing height, 1.0 to 2.5 m
 * @param benchHeightM height of the bench the rear foot rests on, 0.1 to 1.0 m
 * @param disc a disc of known size seen beside the athlete
 * @param givenRollDeg turn of the camera the coach states, + when the picture must be turned
 *     counter-clockwise to stand upright
 * @param backgroundRoll turn found from the background's straight lines
 * @param hold how the camera was held; the track is steadied already when it moved
 * @param grade how good the pose model's points are
 * @param outlines the trunk's outline in some frames, in standing and at the bottoms
 */
public record AnalysisOptions(
    Optional<Double> athleteHeightM,
    Optional<Double> benchHeightM,
    Optional<Disc> disc,
    Optional<Double> givenRollDeg,
    Optional<BackgroundRoll> backgroundRoll,
    Target target,
    CameraHold hold,
    PoseGrade grade,
    List<TrunkOutline> outlines) {
  public AnalysisOptions {
    outlines = List.copyOf(outlines);
  }

  /** For a camera on a tripod, points of the fine grade, and no outline. */
  public AnalysisOptions(
      Optional<Double> athleteHeightM,
      Optional<Double> benchHeightM,
      Optional<Disc> disc,
      Optional<Double> givenRollDeg,
      Optional<BackgroundRoll> backgroundRoll,
      Target target) {
    this(
        athleteHeightM,
        benchHeightM,
        disc,
        givenRollDeg,
        backgroundRoll,
        target,
        CameraHold.STILL,
        PoseGrade.FINE,
        List.of());
  }

  /** The same wishes with what the picture and the model add. */
  public AnalysisOptions seen(
      Optional<BackgroundRoll> roll,
      CameraHold cameraHold,
      Optional<Disc> seenDisc,
      PoseGrade poseGrade,
      List<TrunkOutline> outlines) {
    return new AnalysisOptions(
        athleteHeightM,
        benchHeightM,
        seenDisc,
        givenRollDeg,
        roll,
        target,
        cameraHold,
        poseGrade,
        outlines);
  }

  /** How good the pose model's points are; the smaller model exchanges legs and lifts heels. */
  public enum PoseGrade {
    FINE,
    COARSE
  }

  /**
   * @param diameterM true diameter, metres
   * @param diameterPx seen diameter, pixels of the view measured in
   * @param share standard deviation of the seen diameter, share of it
   */
  public record Disc(double diameterM, double diameterPx, double share) {}

  /**
   * @param rollDeg as {@code givenRollDeg}
   * @param plusMinusDeg half width of its 95 % interval
   */
  public record BackgroundRoll(double rollDeg, double plusMinusDeg) {}

  public static AnalysisOptions plain() {
    return new AnalysisOptions(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Target.none());
  }
}
