package shinline.vision.pose;

import java.util.EnumMap;
import java.util.Map;

/** A body of straight lines, seen from the side, in proportions of its height. */
record DrawnPerson(double hipX, double hipY, double staturePx) {
  private static final double SURE = 0.99;

  /** Standing upright, the legs a little apart. */
  PoseSighting.Found upright(RegionOfInterest region, double poseFlag) {
    return pose(region, poseFlag, 1, SURE);
  }

  /** The same body on its head, as where a disc passes for the hips. */
  PoseSighting.Found onItsHead(RegionOfInterest region, double legsSeen) {
    return pose(region, SURE, -1, legsSeen);
  }

  /** The same with a thigh that is too long. */
  PoseSighting.Found withKneeAt(RegionOfInterest region, double x, double y) {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(upright(region, SURE).keypoints());
    points.put(BodyLandmark.LEFT_KNEE, point(x, y, SURE));
    return new PoseSighting.Found(points, SURE, region);
  }

  DrawnPerson lower(double px) {
    return new DrawnPerson(hipX, hipY + px, staturePx);
  }

  private PoseSighting.Found pose(
      RegionOfInterest region, double poseFlag, int down, double legsSeen) {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      double visibility = landmark.ofLeg() ? legsSeen : SURE;
      points.put(landmark, at(landmark, down, visibility));
    }
    return new PoseSighting.Found(points, poseFlag, region);
  }

  private Keypoint at(BodyLandmark landmark, int down, double visibility) {
    double side = landmark.name().contains("LEFT") ? 1 : -1;
    double below =
        switch (landmark) {
          case LEFT_SHOULDER, RIGHT_SHOULDER -> -0.30;
          case LEFT_ELBOW, RIGHT_ELBOW -> -0.15;
          case LEFT_HIP, RIGHT_HIP -> 0;
          case LEFT_KNEE, RIGHT_KNEE -> 0.22;
          case LEFT_ANKLE, RIGHT_ANKLE -> 0.46;
          case LEFT_HEEL, RIGHT_HEEL, LEFT_FOOT_INDEX, RIGHT_FOOT_INDEX -> 0.49;
          default -> landmark.compareTo(BodyLandmark.LEFT_SHOULDER) < 0 ? -0.40 : 0;
        };
    double apart = landmark.ofLeg() ? 0.03 + 0.1 * below : 0;
    return point(hipX + side * apart * staturePx, hipY + down * below * staturePx, visibility);
  }

  private static Keypoint point(double x, double y, double visibility) {
    return new Keypoint(x, y, 0, visibility, SURE);
  }

  /** The model's auxiliary points for the upright body. */
  BodyCircle circle() {
    return new BodyCircle(hipX, hipY, hipX, hipY - 0.55 * staturePx);
  }
}
