package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import shinline.metrics.bar.BarPath;
import shinline.metrics.bar.SteadiedHip;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.reps.Rep;
import shinline.metrics.scale.BodyScale;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.view.ArmReach;

/**
 * The athlete over the clip after correction, upright, with what stays the same: the planted front
 * foot, the size.
 *
 * @param arms a reach, which the trunk's lean is freed of already
 * @param lookDown how steeply the camera looks down on the feet, times the usual
 */
record Body(
    CleanTrack track,
    BodyScale scale,
    Point toe,
    Point heel,
    Kinematics kinematics,
    ArmReach arms,
    double lookDown,
    Calibration calibration) {

  private static final double STEEPEST = 3;

  /**
   * @param view what the picture made of the side plane
   * @param shoulders whether what needs them can be told
   */
  static Optional<Body> of(
      CleanTrack corrected,
      ViewGeometry view,
      ShoulderSight shoulders,
      ArmReach arms,
      Calibration calibration) {
    Optional<BodyScale> scale = BodyScale.of(corrected, calibration);
    Optional<Point> toe = planted(corrected.path(BodyPoint.FRONT_TOE));
    Optional<Point> heel = planted(corrected.path(BodyPoint.FRONT_HEEL));
    if (scale.isEmpty() || toe.isEmpty() || heel.isEmpty()) {
      return Optional.empty();
    }
    double reachDeg =
        arms == ArmReach.ONE_ARM ? calibration.value(CalibrationKey.TRUNK_REACH_LEAN) : 0;
    Kinematics possible =
        Kinematics.of(corrected, toe.get()).leaningLess(reachDeg).within(BodyLimits.DEFAULT);
    return Optional.of(
        new Body(
            corrected,
            scale.get(),
            toe.get(),
            heel.get(),
            shoulders == ShoulderSight.HIDDEN ? possible.withoutTrunk() : possible,
            arms,
            lookDown(view.lookDown(toe.get()), calibration),
            calibration));
  }

  /**
   * The same body with mid-hip's height steadied by the bar that lies on its back.
   *
   * @param metresPerPx empty where no length is known
   */
  Body steadied(BarPath bar, OptionalDouble metresPerPx) {
    Series height =
        SteadiedHip.of(kinematics.hipY(), bar, scale.staturePx(), metresPerPx, calibration);
    return new Body(
        track, scale, toe, heel, kinematics.withHipHeight(height), arms, lookDown, calibration);
  }

  private static double lookDown(double tangent, Calibration calibration) {
    double times = tangent / calibration.value(CalibrationKey.BODY_LOOK_DOWN);
    return Math.max(0, Math.min(STEEPEST, times));
  }

  /** Where a point of the planted foot rests: the middle over the clip, which lifts do not move. */
  private static Optional<Point> planted(CleanPath path) {
    OptionalDouble mx = RobustStatistics.median(path.x().seenValues());
    OptionalDouble my = RobustStatistics.median(path.y().seenValues());
    return mx.isPresent() && my.isPresent()
        ? Optional.of(new Point(mx.getAsDouble(), my.getAsDouble()))
        : Optional.empty();
  }

  /** Heel or toe above its level while the athlete stands between the reps, share of stature. */
  Series rise(BodyPoint point, List<Rep> reps) {
    CleanPath path = track.path(point);
    DoublePredicate standing =
        t -> reps.stream().noneMatch(r -> t >= r.times().startS() && t <= r.times().endS());
    double level =
        RobustStatistics.median(path.y().seenValues(standing))
            .orElse(point == BodyPoint.FRONT_HEEL ? heel.y() : toe.y());
    return path.y().map(y -> (y - level) / (scale.staturePx() * scale.frontPlane()));
  }

  /**
   * Rear knee above the floor, pixels of the middle plane. The floor is the front foot's; the rear
   * leg stands farther from or nearer to the camera, which lifts or lowers it in the picture, and
   * heel and toe points lie a little above the sole.
   */
  Series rearKneeHeight() {
    double stature = scale.staturePx();
    double soleBelow = calibration.value(CalibrationKey.BODY_SOLE_BELOW) * stature;
    double lifted = rearLift() * stature;
    double floor = (toe.y() + heel.y()) / 2;
    return track.path(BodyPoint.REAR_KNEE).y().map(y -> y - floor + soleBelow - lifted);
  }

  /**
   * How much higher the rear knee shows for standing in another plane, share of stature. Feet may
   * stand wide or narrow: a rear toe on the floor tells how far it is from the front one's plane,
   * if not very exactly; on a bench it tells nothing, and the usual stance is taken.
   */
  private double rearLift() {
    double usual = usualLift() * (track.source().frontLegNearCamera() ? 1 : -1);
    OptionalDouble rise = rearToeRise();
    if (rise.isEmpty() || rise.getAsDouble() > calibration.value(CalibrationKey.BODY_BENCH_RISE)) {
      return usual;
    }
    double seen =
        calibration.value(CalibrationKey.BODY_KNEE_OF_TOE)
            * (rise.getAsDouble() - calibration.value(CalibrationKey.BODY_REAR_TOE_ABOVE));
    return usual + calibration.value(CalibrationKey.BODY_TRUST_IN_TOE) * (seen - usual);
  }

  /** What stands farther away and below the lens shows higher, the more so from above. */
  private double usualLift() {
    double byNearness = calibration.value(CalibrationKey.BODY_LIFT_BY_NEARNESS);
    return calibration.value(CalibrationKey.BODY_REAR_KNEE_LIFT)
        * (1 + byNearness * (lookDown - 1));
  }

  /**
   * Standard deviation that a doubt about which leg is the near one adds to the rear knee's height,
   * pixels: taken for the far one it is put lower by as much as it is put higher for the near one.
   */
  double rearLiftSigma() {
    double sure = track.source().sideAgreement();
    return track.source().sideIsClear()
        ? 0
        : 2 * usualLift() * Math.sqrt(sure * (1 - sure)) * scale.staturePx();
  }

  /** The rear toe above the front one, share of stature; the middle over the clip. */
  private OptionalDouble rearToeRise() {
    CleanPath rear = track.path(BodyPoint.REAR_TOE);
    OptionalDouble middle = RobustStatistics.median(rear.y().seenValues());
    return middle.isPresent()
        ? OptionalDouble.of((middle.getAsDouble() - toe.y()) / scale.staturePx())
        : OptionalDouble.empty();
  }

  /**
   * Height of the bench under the rear toe, pixels of the middle plane; empty when the rear foot is
   * on the floor or was never seen. The rear foot stands farther from the camera than the front
   * one, or nearer, and a camera at hip height sees what is farther and below it higher up.
   */
  OptionalDouble benchRise() {
    double rise = rearToeRise().orElse(0);
    double depth =
        lookDown
            * calibration.value(CalibrationKey.BODY_BENCH_DEPTH)
            * (track.source().frontLegNearCamera() ? 1 : -1);
    return rise > calibration.value(CalibrationKey.BODY_BENCH_RISE)
        ? OptionalDouble.of((rise - depth) * scale.staturePx())
        : OptionalDouble.empty();
  }
}
