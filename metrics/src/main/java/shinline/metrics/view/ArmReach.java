package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

/**
 * Whether a hand reaches forward to a support. The shoulder goes with the arm, and the middle of
 * the shoulders with it: the trunk seems to lean more than it does.
 */
public enum ArmReach {
  NONE,
  ONE_ARM;

  /** A hand is seen for what it is when the model trusts it at least this much. */
  private static final double SEEN = 0.5;

  /**
   * Of the clip's middle: a hand farther ahead of its shoulder than any load is held, and higher
   * than it hangs, while the other one is not. Both before the chest hold a load.
   */
  public static ArmReach of(RawTrack track, Side facing, Calibration calibration) {
    boolean left = reaches(track, facing, calibration, Arm.LEFT);
    boolean right = reaches(track, facing, calibration, Arm.RIGHT);
    return left != right ? ONE_ARM : NONE;
  }

  private enum Arm {
    LEFT(RawPoint.LEFT_SHOULDER, RawPoint.LEFT_HIP, RawPoint.LEFT_WRIST),
    RIGHT(RawPoint.RIGHT_SHOULDER, RawPoint.RIGHT_HIP, RawPoint.RIGHT_WRIST);

    private final RawPoint shoulder;
    private final RawPoint hip;
    private final RawPoint wrist;

    Arm(RawPoint shoulder, RawPoint hip, RawPoint wrist) {
      this.shoulder = shoulder;
      this.hip = hip;
      this.wrist = wrist;
    }
  }

  private static boolean reaches(RawTrack track, Side facing, Calibration calibration, Arm arm) {
    double forward = facing == Side.RIGHT ? 1 : -1;
    List<Double> ahead = new ArrayList<>();
    List<Double> above = new ArrayList<>();
    int bodies = 0;
    for (RawPose pose : track.poses()) {
      RawSighting shoulder = pose.points().get(arm.shoulder);
      RawSighting hip = pose.points().get(arm.hip);
      RawSighting wrist = pose.points().get(arm.wrist);
      if (shoulder == null || hip == null) {
        continue;
      }
      bodies++;
      if (wrist != null && wrist.confidence() >= SEEN) {
        double trunk = Math.hypot(shoulder.x() - hip.x(), shoulder.y() - hip.y());
        ahead.add(forward * (wrist.x() - shoulder.x()) / trunk);
        above.add((wrist.y() - shoulder.y()) / trunk);
      }
    }
    OptionalDouble middleAhead = RobustStatistics.median(ahead);
    OptionalDouble middleAbove = RobustStatistics.median(above);
    return 2 * ahead.size() >= bodies
        && middleAhead.isPresent()
        && middleAbove.isPresent()
        && middleAhead.getAsDouble() > calibration.value(CalibrationKey.TRUNK_REACH_AHEAD)
        && middleAbove.getAsDouble() > calibration.value(CalibrationKey.TRUNK_REACH_ABOVE);
  }
}
