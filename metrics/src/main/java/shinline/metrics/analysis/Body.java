package shinline.metrics.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.geometry.Point;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.Rep;
import shinline.metrics.scale.BodyScale;
import shinline.metrics.signal.Series;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.RobustStatistics;

/**
 * The athlete over the clip after correction, upright, with what stays the same: the planted front
 * foot, the size.
 */
record Body(CleanTrack track, BodyScale scale, Point toe, Point heel, Kinematics kinematics) {

  /** A rear foot this much above the front one (share of stature) rests on something. */
  private static final double BENCH_RISE = 0.09;

  /**
   * How much higher or lower the rear foot on its bench shows for standing in another plane, share
   * of stature: mean of five clips with truth. Feet 0.14 m apart sideways, a camera at 0.8 m height
   * and 3.7 m distance and a bench of 0.43 m give the same.
   */
  private static final double BENCH_DEPTH = 0.0122;

  /** How far below the middle of heel and toe point the sole is, share of stature. */
  private static final double SOLE_BELOW = 0.0214;

  /**
   * How much higher or lower the rear knee shows for standing in another plane when nothing tells,
   * share of stature; like the sole's from clips with truth.
   */
  private static final double USUAL_LIFT = 0.023;

  /** The rear foot stands on its toes: its point lies this much above the front one's. */
  private static final double REAR_TOE_ABOVE = 0.0105;

  /** The knee is nearer to the camera's height than the toe, and moves less. */
  private static final double KNEE_OF_TOE = 0.9;

  /** A rear toe in the dark may be 3 cm off, as much as stances differ. */
  private static final double TRUST_IN_TOE = 0.6;

  static Optional<Body> of(CleanTrack corrected) {
    Optional<BodyScale> scale = BodyScale.of(corrected);
    Optional<Point> toe = planted(corrected.path(BodyPoint.FRONT_TOE));
    Optional<Point> heel = planted(corrected.path(BodyPoint.FRONT_HEEL));
    if (scale.isEmpty() || toe.isEmpty() || heel.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Body(
            corrected, scale.get(), toe.get(), heel.get(), Kinematics.of(corrected, toe.get())));
  }

  /** Where a point of the planted foot rests: the middle over the clip, which lifts do not move. */
  private static Optional<Point> planted(CleanPath path) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i < path.x().size(); i++) {
      if (path.seen(i)) {
        x.add(path.x().value(i));
        y.add(path.y().value(i));
      }
    }
    OptionalDouble mx = RobustStatistics.median(x);
    OptionalDouble my = RobustStatistics.median(y);
    return mx.isPresent() && my.isPresent()
        ? Optional.of(new Point(mx.getAsDouble(), my.getAsDouble()))
        : Optional.empty();
  }

  /** Heel or toe above its level while the athlete stands between the reps, share of stature. */
  Series rise(BodyPoint point, List<Rep> reps) {
    CleanPath path = track.path(point);
    List<Double> standing = new ArrayList<>();
    for (int i = 0; i < path.y().size(); i++) {
      double t = path.y().timeS(i);
      if (path.seen(i)
          && reps.stream().noneMatch(r -> t >= r.times().startS() && t <= r.times().endS())) {
        standing.add(path.y().value(i));
      }
    }
    double level =
        RobustStatistics.median(standing)
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
    double soleBelow = SOLE_BELOW * stature;
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
    double usual = USUAL_LIFT * (track.source().frontLegNearCamera() ? 1 : -1);
    OptionalDouble rise = rearToeRise();
    if (rise.isEmpty() || rise.getAsDouble() > BENCH_RISE) {
      return usual;
    }
    double seen = KNEE_OF_TOE * (rise.getAsDouble() - REAR_TOE_ABOVE);
    return usual + TRUST_IN_TOE * (seen - usual);
  }

  /**
   * Standard deviation that a doubt about which leg is the near one adds to the rear knee's height,
   * pixels: taken for the far one it is put lower by as much as it is put higher for the near one.
   */
  double rearLiftSigma() {
    double sure = track.source().sideAgreement();
    return track.source().sideIsClear()
        ? 0
        : 2 * USUAL_LIFT * Math.sqrt(sure * (1 - sure)) * scale.staturePx();
  }

  /** The rear toe above the front one, share of stature; the middle over the clip. */
  private OptionalDouble rearToeRise() {
    CleanPath rear = track.path(BodyPoint.REAR_TOE);
    List<Double> y = new ArrayList<>();
    for (int i = 0; i < rear.y().size(); i++) {
      if (rear.seen(i)) {
        y.add(rear.y().value(i));
      }
    }
    OptionalDouble middle = RobustStatistics.median(y);
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
    double depth = BENCH_DEPTH * (track.source().frontLegNearCamera() ? 1 : -1);
    return rise > BENCH_RISE
        ? OptionalDouble.of((rise - depth) * scale.staturePx())
        : OptionalDouble.empty();
  }
}
