package shinline.metrics.track;

/**
 * Which side of the picture the athlete faces, voted over the whole clip.
 *
 * @param side side of the picture
 * @param agreement share of the votes for that side, 0.5…1
 */
public record Facing(Side side, double agreement) {

  /**
   * Feet point forward, the nose is ahead of the ears, and knees bend forward: five votes a frame,
   * each as strong as the distance it rests on, so that a foot seen end-on or a straight leg hardly
   * counts. Knees matter where the rear foot lies on its bench with the toes backward.
   */
  public static Facing of(RawTrack track) {
    double right = 0;
    double left = 0;
    for (RawPose pose : track.poses()) {
      for (double vote :
          new double[] {
            ahead(pose, RawPoint.LEFT_HEEL, RawPoint.LEFT_TOE),
            ahead(pose, RawPoint.RIGHT_HEEL, RawPoint.RIGHT_TOE),
            ahead(pose, RawPoint.LEFT_EAR, RawPoint.NOSE)
                + ahead(pose, RawPoint.RIGHT_EAR, RawPoint.NOSE),
            bent(pose, RawPoint.LEFT_HIP, RawPoint.LEFT_KNEE, RawPoint.LEFT_ANKLE),
            bent(pose, RawPoint.RIGHT_HIP, RawPoint.RIGHT_KNEE, RawPoint.RIGHT_ANKLE)
          }) {
        if (vote > 0) {
          right += vote;
        } else {
          left -= vote;
        }
      }
    }
    double total = right + left;
    double share = total == 0 ? 0.5 : Math.max(right, left) / total;
    return new Facing(right >= left ? Side.RIGHT : Side.LEFT, share);
  }

  private static double ahead(RawPose pose, RawPoint back, RawPoint front) {
    RawSighting a = pose.points().get(back);
    RawSighting b = pose.points().get(front);
    return a == null || b == null ? 0 : (b.x() - a.x()) * Math.min(a.confidence(), b.confidence());
  }

  /** How far a knee lies to the right of the line from the hip down to the ankle, pixels. */
  private static double bent(RawPose pose, RawPoint hip, RawPoint knee, RawPoint ankle) {
    RawSighting h = pose.points().get(hip);
    RawSighting k = pose.points().get(knee);
    RawSighting a = pose.points().get(ankle);
    if (h == null || k == null || a == null) {
      return 0;
    }
    double alongX = a.x() - h.x();
    double alongY = a.y() - h.y();
    double length = Math.hypot(alongX, alongY);
    double sure = Math.min(h.confidence(), Math.min(k.confidence(), a.confidence()));
    return length == 0 ? 0 : (alongX * (k.y() - h.y()) - alongY * (k.x() - h.x())) / length * sure;
  }
}
