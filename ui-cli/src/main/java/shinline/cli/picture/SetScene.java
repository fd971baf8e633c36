package shinline.cli.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import shinline.cli.crossing.PictureAxis;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.PhotoReport;
import shinline.metrics.back.BackLine;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.Verdict;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.Side;
import shinline.vision.scene.CameraPath;

/**
 * A measured set as something to draw: where everything is at any instant, in the still view of the
 * camera. {@link #toFrame} leads from there into the picture of an instant.
 */
final class SetScene {
  /** Hip to shoulder, share of stature (Drillis and Contini 1966: 0.818 less 0.530). */
  private static final double TRUNK_SHARE = 0.288;

  /** The foot is flat around the start of lowering: the athlete stands on it. */
  private static final double FLAT_S = 0.35;

  private final SetUp setUp;
  private final SeriesTable series;
  private final List<RepResult> reps;
  private final Map<Integer, BackLine> backs;
  private final PoseTimeline timeline;
  private final int widthPx;
  private final int heightPx;
  private final CameraPath camera;
  private final OptionalDouble staturePx;

  /** Looked up at every frame of an annotated clip. */
  private final Map<Integer, Optional<FootPrint>> footPrints = new ConcurrentHashMap<>();

  SetScene(ClipReport.Measured report) {
    this(
        report.set().setUp(),
        report.set().series(),
        report.set().reps(),
        report.set().backs(),
        report.clip(),
        report.camera());
  }

  /** Of a still picture: the same posture at any instant, and no rep. */
  SetScene(PhotoReport.Measured report) {
    this(
        report.posture().setUp(),
        report.posture().shown(),
        List.of(),
        Map.of(),
        report.photo(),
        CameraPath.still());
  }

  private SetScene(
      SetUp setUp,
      SeriesTable series,
      List<RepResult> reps,
      Map<Integer, BackLine> backs,
      ClipFacts facts,
      CameraPath camera) {
    this.setUp = setUp;
    this.series = series;
    this.reps = List.copyOf(reps);
    this.backs = Map.copyOf(backs);
    widthPx = facts.widthPx();
    heightPx = facts.heightPx();
    this.camera = camera;
    timeline = new PoseTimeline(series, heightPx);
    List<Double> trunks = new ArrayList<>();
    for (int row = 0; row < series.rows(); row++) {
      PoseAt pose = pose(series.timeS(row));
      pose.midHip()
          .ifPresent(hip -> pose.midShoulder().ifPresent(s -> trunks.add(hip.distance(s))));
    }
    // The longest trunks are the ones seen square on; the very longest are outliers.
    OptionalDouble trunk = RobustStatistics.quantile(trunks, 0.8);
    staturePx =
        trunk.isPresent()
            ? OptionalDouble.of(trunk.getAsDouble() / TRUNK_SHARE)
            : OptionalDouble.empty();
  }

  List<RepResult> reps() {
    return reps;
  }

  /** The back's outline at a rep's bottom, where it is a fault. */
  Optional<BackLine> back(RepResult rep) {
    return Optional.ofNullable(backs.get(rep.rep()));
  }

  SeriesTable series() {
    return series;
  }

  int widthPx() {
    return widthPx;
  }

  int heightPx() {
    return heightPx;
  }

  /** The athlete's standing height in pixels, as the trunk tells it; empty when never seen. */
  OptionalDouble staturePx() {
    return staturePx;
  }

  PoseAt pose(double timeS) {
    return timeline.at(timeS);
  }

  /** Metrics' pixels count up, the picture's down. */
  Point2D pixel(Point point) {
    return new Point2D.Double(point.x(), new PictureAxis(heightPx).rowOf(point.y()));
  }

  /** From places of this scene to pixels of the upright picture of an instant. */
  AffineTransform toFrame(double timeS) {
    return camera.toFrame(timeS);
  }

  /** The athlete where the picture of that very instant shows it. */
  PoseAt poseInFrame(double timeS) {
    return pose(timeS).moved(toFrame(timeS));
  }

  /** +1 when the athlete faces the right side of the picture, else -1. */
  int ahead() {
    return setUp.facing() == Side.RIGHT ? 1 : -1;
  }

  /**
   * The point that lies {@code up} pixels above and {@code ahead} pixels ahead of another in the
   * athlete's side plane, as the camera shows it: in a picture that looks down, uprights lean.
   */
  Point2D from(Point2D place, double aheadPx, double upPx) {
    Point seen = setUp.camera().view().seen(real(place).plus(aheadPx, upPx));
    return new Point2D.Double(ahead() * seen.x(), new PictureAxis(heightPx).rowOf(seen.y()));
  }

  /** How many pixels a place lies ahead of another, along the true horizontal. */
  double aheadOf(Point2D place, Point2D other) {
    return real(place).x() - real(other).x();
  }

  /** How many pixels a place lies above another, along the true vertical. */
  double above(Point2D place, Point2D other) {
    return real(place).y() - real(other).y();
  }

  /** The place in the athlete's side plane, x forward, y up. */
  private Point real(Point2D place) {
    double height = new PictureAxis(heightPx).heightOf(place.getY());
    return setUp.camera().view().real(new Point(ahead() * place.getX(), height));
  }

  /**
   * Where the front foot stands at an instant: as in the rep it belongs to, else as in the first
   * one, else as in all there is; empty when it was not seen.
   */
  Optional<FootPrint> footPrint(double timeS) {
    Optional<RepResult> rep = repAt(timeS).or(() -> reps.stream().findFirst());
    return rep.isPresent()
        ? footPrint(rep.get())
        : print(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** Where the front foot stands in a rep; empty when it was not seen. */
  Optional<FootPrint> footPrint(RepResult rep) {
    return footPrints.computeIfAbsent(rep.rep(), r -> look(rep));
  }

  private Optional<FootPrint> look(RepResult rep) {
    return print(rep.startS() - FLAT_S, rep.startS() + FLAT_S)
        .or(() -> print(rep.startS(), rep.endS()));
  }

  private Optional<FootPrint> print(double fromS, double toS) {
    return median(BodyPoint.FRONT_HEEL, fromS, toS)
        .flatMap(
            heel -> median(BodyPoint.FRONT_TOE, fromS, toS).map(toe -> new FootPrint(heel, toe)));
  }

  private Optional<Point2D> median(BodyPoint point, double fromS, double toS) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int row = series().firstRowNotBefore(fromS);
        row < series().rows() && series().timeS(row) <= toS;
        row++) {
      pose(series().timeS(row))
          .point(point)
          .ifPresent(
              p -> {
                x.add(p.getX());
                y.add(p.getY());
              });
    }
    OptionalDouble mx = RobustStatistics.median(x);
    OptionalDouble my = RobustStatistics.median(y);
    return mx.isPresent() && my.isPresent()
        ? Optional.of(new Point2D.Double(mx.getAsDouble(), my.getAsDouble()))
        : Optional.empty();
  }

  /** The rep an instant belongs to, the rest after it included; empty before the first. */
  Optional<RepResult> repAt(double timeS) {
    Optional<RepResult> last = Optional.empty();
    for (RepResult rep : reps) {
      if (rep.startS() <= timeS) {
        last = Optional.of(rep);
      }
    }
    return last;
  }

  /** The rep with the lowest hip, against which a shallow one is shown. */
  Optional<RepResult> deepest() {
    RepResult best = null;
    double lowest = Double.POSITIVE_INFINITY;
    for (RepResult rep : reps) {
      Optional<Point2D> hip = pose(rep.bottomS()).midHip();
      if (hip.isPresent() && above(hip.get(), new Point2D.Double()) < lowest) {
        lowest = above(hip.get(), new Point2D.Double());
        best = rep;
      }
    }
    return Optional.ofNullable(best);
  }

  /** What the athlete is doing at an instant. */
  Phase phaseAt(double timeS) {
    return repAt(timeS)
        .map(
            rep -> {
              if (timeS < rep.bottomStartS()) {
                return Phase.LOWERING;
              }
              if (timeS <= rep.bottomEndS()) {
                return Phase.HOLD;
              }
              return timeS < rep.endS() ? Phase.DRIVE : Phase.TOP;
            })
        .orElse(Phase.TOP);
  }

  /** Parts of a rep. */
  enum Phase {
    LOWERING,
    HOLD,
    DRIVE,
    TOP
  }

  /** Reps whose bottom is worth a picture when there are too many for all of them. */
  static boolean notable(RepResult rep) {
    return !rep.flags().isEmpty() || rep.verdict().equals(Optional.of(Verdict.MISS));
  }
}
