package shinline.metrics.kinematics;

import java.util.function.DoublePredicate;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.SegmentAngles;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.Range;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.track.BodyPoint;

/**
 * Angles in degrees and lengths in pixels over the even time grid; definitions and signs as in
 * docs/measures.md. A value whose points were not all seen is missing.
 *
 * @param hipY height of mid-hip above the picture's bottom edge
 * @param kneePastToe knee ahead of the planted toe tip
 */
public record Kinematics(
    UniformTimeGrid grid,
    Series shinDeg,
    Series trunkLeanDeg,
    Series thighDeg,
    Series kneeFlexionDeg,
    Series hipFlexionDeg,
    Series kneePastToe,
    Series hipX,
    Series hipY,
    Series shoulderX,
    Series shoulderY) {

  public static Kinematics of(CleanTrack track, Point frontToe) {
    UniformTimeGrid grid = track.grid();
    CleanPath hip = track.path(BodyPoint.FRONT_HIP);
    CleanPath rearHip = track.path(BodyPoint.REAR_HIP);
    CleanPath knee = track.path(BodyPoint.FRONT_KNEE);
    CleanPath ankle = track.path(BodyPoint.FRONT_ANKLE);
    CleanPath near = track.path(BodyPoint.NEAR_SHOULDER);
    CleanPath far = track.path(BodyPoint.FAR_SHOULDER);
    Frames frames = new Frames(grid);
    return new Kinematics(
        grid,
        frames.of(i -> SegmentAngles.shinForward(ankle.at(i), knee.at(i)).degrees(), ankle, knee),
        frames.of(
            i -> SegmentAngles.trunkLean(middle(hip, rearHip, i), middle(near, far, i)).degrees(),
            hip,
            rearHip,
            near,
            far),
        frames.of(
            i -> SegmentAngles.thighFromHorizontal(knee.at(i), hip.at(i)).degrees(), knee, hip),
        frames.of(
            i -> SegmentAngles.kneeFlexion(hip.at(i), knee.at(i), ankle.at(i)).degrees(),
            hip,
            knee,
            ankle),
        frames.of(
            i ->
                SegmentAngles.hipFlexion(
                        SegmentAngles.segment(knee.at(i), hip.at(i)),
                        SegmentAngles.segment(middle(hip, rearHip, i), middle(near, far, i)))
                    .degrees(),
            hip,
            rearHip,
            knee,
            near,
            far),
        frames.of(i -> SegmentAngles.kneePastToe(knee.at(i), frontToe), knee),
        frames.of(i -> middle(hip, rearHip, i).x(), hip, rearHip),
        frames.of(i -> middle(hip, rearHip, i).y(), hip, rearHip),
        frames.of(i -> middle(near, far, i).x(), near, far),
        frames.of(i -> middle(near, far, i).y(), near, far));
  }

  /** The same without the angles that no body can have. */
  public Kinematics within(BodyLimits limits) {
    return new Kinematics(
        grid,
        within(shinDeg, limits.shin()),
        within(trunkLeanDeg, limits.trunkLean()),
        within(thighDeg, limits.thigh()),
        within(kneeFlexionDeg, limits.kneeFlexion()),
        hipFlexionDeg,
        kneePastToe,
        hipX,
        hipY,
        shoulderX,
        shoulderY);
  }

  /**
   * The same with a trunk that leans less, and a hip that bends less with it.
   *
   * @param deg 0 changes nothing
   */
  public Kinematics leaningLess(double deg) {
    return new Kinematics(
        grid,
        shinDeg,
        trunkLeanDeg.map(lean -> lean - deg),
        thighDeg,
        kneeFlexionDeg,
        hipFlexionDeg.map(bend -> bend - deg),
        kneePastToe,
        hipX,
        hipY,
        shoulderX,
        shoulderY);
  }

  /** The same with another height of mid-hip. */
  public Kinematics withHipHeight(Series height) {
    return new Kinematics(
        grid,
        shinDeg,
        trunkLeanDeg,
        thighDeg,
        kneeFlexionDeg,
        hipFlexionDeg,
        kneePastToe,
        hipX,
        height,
        shoulderX,
        shoulderY);
  }

  /** The same without what needs the shoulders. */
  public Kinematics withoutTrunk() {
    return new Kinematics(
        grid,
        shinDeg,
        none(trunkLeanDeg),
        thighDeg,
        kneeFlexionDeg,
        none(hipFlexionDeg),
        kneePastToe,
        hipX,
        hipY,
        none(shoulderX),
        none(shoulderY));
  }

  private static Series within(Series series, Range range) {
    return kept(series, value -> range.holds(value, 0));
  }

  private static Series none(Series series) {
    return kept(series, value -> false);
  }

  private static Series kept(Series series, DoublePredicate stays) {
    double[] value = new double[series.size()];
    boolean[] seen = new boolean[series.size()];
    for (int i = 0; i < value.length; i++) {
      seen[i] = series.seen(i) && stays.test(series.value(i));
      value[i] = seen[i] ? series.value(i) : 0;
    }
    return Series.of(series.times(), value, seen);
  }

  private static Point middle(CleanPath a, CleanPath b, int i) {
    return a.at(i).middle(b.at(i));
  }

  /** Builds series over the grid where all points asked for are seen. */
  private record Frames(UniformTimeGrid grid) {
    interface AtFrame {
      double value(int i);
    }

    Series of(AtFrame value, CleanPath... needed) {
      double[] v = new double[grid.size()];
      boolean[] seen = new boolean[grid.size()];
      for (int i = 0; i < v.length; i++) {
        seen[i] = true;
        for (CleanPath path : needed) {
          seen[i] &= path.seen(i);
        }
        if (seen[i]) {
          v[i] = value.value(i);
        }
      }
      return Series.of(grid.times(), v, seen);
    }
  }
}
