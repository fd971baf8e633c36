package shinline.metrics.correction;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.BodyPoint;

/**
 * Fits {@link CorrectionTable} to clips whose joint centres are known: least squares over every
 * frame, each clip with the same weight. Constant offsets are means; those of the hips grow with
 * the bend of the hip and are lines through them.
 *
 * <p>How far the toe lies ahead is not fitted but kept as it is: it was set on the distance of knee
 * and toe in the side plane, which the toe's place in the picture, on a foot that turns out, does
 * not tell.
 */
public final class OffsetFit {

  /** A point whose offset is fitted, and the frame it is told in. */
  private enum Fitted {
    HIP,
    SHOULDER,
    FRONT_HIP,
    FRONT_KNEE,
    FRONT_ANKLE,
    FRONT_TOE,
    FRONT_HEEL,
    REAR_KNEE
  }

  private final List<Map<Fitted, Sums>> clips = new ArrayList<>();
  private final double toeAhead;

  /**
   * @param kept calibration that tells what is not fitted
   */
  public OffsetFit(Calibration kept) {
    toeAhead = kept.value(CalibrationKey.OFFSET_FRONT_TOE_AHEAD);
  }

  /**
   * @param landmarks cleaned and square, not corrected
   * @param centres the same frames' true joint centres on the same grid
   * @return this
   */
  public OffsetFit add(CleanTrack landmarks, CleanTrack centres) {
    Map<Fitted, Sums> sums = new EnumMap<>(Fitted.class);
    for (Fitted fitted : Fitted.values()) {
      sums.put(fitted, new Sums());
    }
    double size = JointCentreCorrection.size(landmarks);
    for (int i = 0; size > 0 && i < landmarks.grid().size(); i++) {
      new Instant(landmarks, centres, i, size, sums).add();
    }
    clips.add(sums);
    return this;
  }

  /**
   * The offsets that bring the clips' landmarks nearest to their joint centres.
   *
   * @throws IllegalStateException when no clip showed one of the points
   */
  public CorrectionTable table() {
    Line hip = line(Fitted.FRONT_HIP);
    Line middle = line(Fitted.HIP);
    return new CorrectionTable(
        middle.at0(),
        middle.slope(),
        mean(Fitted.SHOULDER),
        hip.at0(),
        hip.slope(),
        mean(Fitted.FRONT_KNEE),
        mean(Fitted.FRONT_ANKLE),
        new Offset(mean(Fitted.FRONT_TOE).along(), toeAhead),
        mean(Fitted.FRONT_HEEL),
        mean(Fitted.REAR_KNEE));
  }

  private Offset mean(Fitted fitted) {
    Sums all = together(fitted);
    return new Offset(all.along / all.n, all.ahead / all.n);
  }

  private record Line(Offset at0, Offset slope) {}

  private Line line(Fitted fitted) {
    Sums s = together(fitted);
    double spread = s.n * s.bendBend - s.bend * s.bend;
    Offset slope =
        spread > 1e-9
            ? new Offset(
                (s.n * s.bendAlong - s.bend * s.along) / spread,
                (s.n * s.bendAhead - s.bend * s.ahead) / spread)
            : new Offset(0, 0);
    return new Line(
        new Offset(
            (s.along - slope.along() * s.bend) / s.n, (s.ahead - slope.ahead() * s.bend) / s.n),
        slope);
  }

  private Sums together(Fitted fitted) {
    Sums all = new Sums();
    for (Map<Fitted, Sums> clip : clips) {
      Sums one = clip.getOrDefault(fitted, all);
      if (one.n > 0) {
        all.addShare(one);
      }
    }
    if (all.n == 0) {
      throw new IllegalStateException("no clip showed " + fitted);
    }
    return all;
  }

  /** Sums of the normal equations. */
  private static final class Sums {
    private double n;
    private double bend;
    private double bendBend;
    private double along;
    private double ahead;
    private double bendAlong;
    private double bendAhead;

    void add(Offset offset, double bendRad) {
      n++;
      bend += bendRad;
      bendBend += bendRad * bendRad;
      along += offset.along();
      ahead += offset.ahead();
      bendAlong += bendRad * offset.along();
      bendAhead += bendRad * offset.ahead();
    }

    /** A clip counts once, however long it is. */
    void addShare(Sums clip) {
      n += 1;
      bend += clip.bend / clip.n;
      bendBend += clip.bendBend / clip.n;
      along += clip.along / clip.n;
      ahead += clip.ahead / clip.n;
      bendAlong += clip.bendAlong / clip.n;
      bendAhead += clip.bendAhead / clip.n;
    }
  }

  /** One frame's share of the sums. */
  private record Instant(
      CleanTrack landmarks, CleanTrack centres, int i, double size, Map<Fitted, Sums> sums) {

    void add() {
      take(Fitted.FRONT_TOE, SegmentAxis.PICTURE, BodyPoint.FRONT_TOE);
      take(Fitted.FRONT_HEEL, SegmentAxis.PICTURE, BodyPoint.FRONT_HEEL);
      take(Fitted.REAR_KNEE, SegmentAxis.PICTURE, BodyPoint.REAR_KNEE);
      if (seen(BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE)) {
        SegmentAxis shank = SegmentAxis.from(at(BodyPoint.FRONT_ANKLE), at(BodyPoint.FRONT_KNEE));
        take(Fitted.FRONT_KNEE, shank, BodyPoint.FRONT_KNEE);
        take(Fitted.FRONT_ANKLE, shank, BodyPoint.FRONT_ANKLE);
      }
      if (seen(
          BodyPoint.FRONT_HIP,
          BodyPoint.REAR_HIP,
          BodyPoint.NEAR_SHOULDER,
          BodyPoint.FAR_SHOULDER)) {
        SegmentAxis trunk =
            SegmentAxis.from(
                middle(landmarks, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP),
                middle(landmarks, BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER));
        takeMiddle(Fitted.SHOULDER, trunk, BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER, 0);
        if (seen(BodyPoint.FRONT_KNEE)) {
          double bend =
              trunk.bend(SegmentAxis.from(at(BodyPoint.FRONT_KNEE), at(BodyPoint.FRONT_HIP)));
          take(Fitted.FRONT_HIP, trunk, BodyPoint.FRONT_HIP, bend);
          takeMiddle(Fitted.HIP, trunk, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP, bend);
        }
      }
    }

    private boolean seen(BodyPoint... points) {
      for (BodyPoint point : points) {
        if (!landmarks.path(point).seen(i) || !centres.path(point).seen(i)) {
          return false;
        }
      }
      return true;
    }

    private Point at(BodyPoint point) {
      return landmarks.path(point).at(i);
    }

    private Point middle(CleanTrack track, BodyPoint a, BodyPoint b) {
      return track.path(a).at(i).middle(track.path(b).at(i));
    }

    private void take(Fitted fitted, SegmentAxis axis, BodyPoint point) {
      take(fitted, axis, point, 0);
    }

    private void take(Fitted fitted, SegmentAxis axis, BodyPoint point, double bendRad) {
      if (seen(point)) {
        take(fitted, axis, at(point), centres.path(point).at(i), bendRad);
      }
    }

    private void takeMiddle(
        Fitted fitted, SegmentAxis axis, BodyPoint a, BodyPoint b, double bendRad) {
      take(fitted, axis, middle(landmarks, a, b), middle(centres, a, b), bendRad);
    }

    private void take(Fitted fitted, SegmentAxis axis, Point from, Point to, double bendRad) {
      Sums into = sums.get(fitted);
      if (into != null) {
        into.add(axis.offset((to.x() - from.x()) / size, (to.y() - from.y()) / size), bendRad);
      }
    }
  }
}
