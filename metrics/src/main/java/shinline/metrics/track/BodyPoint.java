package shinline.metrics.track;

/** A named point of the body once the legs are told apart; near and far are from the camera. */
public enum BodyPoint {
  FRONT_HIP,
  FRONT_KNEE,
  FRONT_ANKLE,
  FRONT_HEEL,
  FRONT_TOE,
  REAR_HIP,
  REAR_KNEE,
  REAR_ANKLE,
  REAR_HEEL,
  REAR_TOE,
  NEAR_SHOULDER,
  FAR_SHOULDER,
  NEAR_EAR
}
