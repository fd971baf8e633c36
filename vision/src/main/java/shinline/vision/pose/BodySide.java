package shinline.vision.pose;

/** A side of the body, as the model names it. */
enum BodySide {
  LEFT(BodyLandmark.LEFT_HIP, BodyLandmark.LEFT_KNEE, BodyLandmark.LEFT_ANKLE),
  RIGHT(BodyLandmark.RIGHT_HIP, BodyLandmark.RIGHT_KNEE, BodyLandmark.RIGHT_ANKLE);

  private final BodyLandmark hip;
  private final BodyLandmark knee;
  private final BodyLandmark ankle;

  BodySide(BodyLandmark hip, BodyLandmark knee, BodyLandmark ankle) {
    this.hip = hip;
    this.knee = knee;
    this.ankle = ankle;
  }

  BodyLandmark hip() {
    return hip;
  }

  BodyLandmark knee() {
    return knee;
  }

  BodyLandmark ankle() {
    return ankle;
  }
}
