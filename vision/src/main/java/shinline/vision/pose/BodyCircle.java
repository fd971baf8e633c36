package shinline.vision.pose;

/**
 * The model's two auxiliary points: mid-hip, and a point above it on the circle around the body.
 * Pixels of the frame.
 */
record BodyCircle(double hipX, double hipY, double scaleX, double scaleY) {
  double radius() {
    return Math.hypot(scaleX - hipX, scaleY - hipY);
  }

  RegionOfInterest region() {
    return RegionOfInterest.around(hipX, hipY, scaleX, scaleY);
  }
}
