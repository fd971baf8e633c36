package shinline.vision.pose;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * The pose model's 33 body landmarks, in the order of its output. The only place that order is
 * known.
 */
public enum BodyLandmark {
  NOSE,
  LEFT_EYE_INNER,
  LEFT_EYE,
  LEFT_EYE_OUTER,
  RIGHT_EYE_INNER,
  RIGHT_EYE,
  RIGHT_EYE_OUTER,
  LEFT_EAR,
  RIGHT_EAR,
  MOUTH_LEFT,
  MOUTH_RIGHT,
  LEFT_SHOULDER,
  RIGHT_SHOULDER,
  LEFT_ELBOW,
  RIGHT_ELBOW,
  LEFT_WRIST,
  RIGHT_WRIST,
  LEFT_PINKY,
  RIGHT_PINKY,
  LEFT_INDEX,
  RIGHT_INDEX,
  LEFT_THUMB,
  RIGHT_THUMB,
  LEFT_HIP,
  RIGHT_HIP,
  LEFT_KNEE,
  RIGHT_KNEE,
  LEFT_ANKLE,
  RIGHT_ANKLE,
  LEFT_HEEL,
  RIGHT_HEEL,
  LEFT_FOOT_INDEX,
  RIGHT_FOOT_INDEX;

  /** Head and shoulders. */
  public static final Set<BodyLandmark> HEAD =
      Collections.unmodifiableSet(EnumSet.range(NOSE, RIGHT_SHOULDER));

  /** Shoulders and hips. */
  public static final Set<BodyLandmark> TRUNK =
      Collections.unmodifiableSet(EnumSet.of(LEFT_SHOULDER, RIGHT_SHOULDER, LEFT_HIP, RIGHT_HIP));

  /** Knee, ankle, heel or toe: a point of which the other leg has its like nearby. */
  boolean ofLeg() {
    return compareTo(LEFT_KNEE) >= 0;
  }

  /** The same point on the body's other side; the nose is its own. */
  BodyLandmark otherSide() {
    String name = name();
    if (name.contains("LEFT")) {
      return valueOf(name.replace("LEFT", "RIGHT"));
    }
    return valueOf(name.replace("RIGHT", "LEFT"));
  }
}
