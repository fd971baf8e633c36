package shinline.metrics.track;

/**
 * Which side of the picture the athlete faces, voted over the whole clip.
 *
 * @param side side of the picture
 * @param agreement share of the votes for that side, 0.5…1
 */
public record Facing(Side side, double agreement) {

  /**
   * Feet point forward and the nose is ahead of the ears: three votes a frame, each as strong as
   * the distance it rests on, so that a foot seen end-on hardly counts.
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
                + ahead(pose, RawPoint.RIGHT_EAR, RawPoint.NOSE)
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
}
