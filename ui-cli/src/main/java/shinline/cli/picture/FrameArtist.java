package shinline.cli.picture;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.picture.Ink.Hang;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.back.BackLine;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Readings;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.track.BodyPoint;

/**
 * Draws what was measured onto a picture: front leg, trunk, the plumb line through the front ankle,
 * the toe line, the floor; and, for a fault, the thing that is wrong against how it should be.
 */
final class FrameArtist {
  private static final double TAG_SIZE = 4.6;
  private static final double OTHER_TAG_SIZE = 3.6;

  private final SetScene scene;
  private final Units units;
  private final AffineTransform toPicture;

  /**
   * @param toPicture from the scene to pixels of the picture drawn on
   */
  FrameArtist(SetScene scene, Units units, AffineTransform toPicture) {
    this.scene = scene;
    this.units = units;
    this.toPicture = toPicture;
  }

  /** Everything that every picture has, without numbers. */
  void lines(Ink ink, double timeS) {
    PoseAt pose = scene.pose(timeS);
    scene.footPrint(timeS).ifPresent(p -> ground(ink, pose, p));
    body(ink, pose, Ink.LEG, Ink.TRUNK);
  }

  private void body(Ink ink, PoseAt pose, Color leg, Color trunk) {
    // Shoulders behind the disc of a bar are a guess, and a line to a guess would look like a
    // reading.
    if (pose.number(Column.TRUNK_LEAN).isPresent()) {
      bone(ink, pose.midHip(), pose.midShoulder(), trunk);
    }
    chain(ink, pose, leg, BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE);
    chain(ink, pose, leg, BodyPoint.FRONT_HEEL, BodyPoint.FRONT_TOE);
  }

  private void chain(Ink ink, PoseAt pose, Color colour, BodyPoint... points) {
    for (int i = 1; i < points.length; i++) {
      bone(ink, pose.point(points[i - 1]), pose.point(points[i]), colour);
    }
    for (BodyPoint point : points) {
      pose.point(point).ifPresent(p -> ink.joint(on(p), colour));
    }
  }

  private void bone(Ink ink, Optional<Point2D> a, Optional<Point2D> b, Color colour) {
    if (a.isPresent() && b.isPresent()) {
      ink.line(on(a.get()), on(b.get()), colour, 1);
      ink.joint(on(a.get()), colour);
      ink.joint(on(b.get()), colour);
    }
  }

  private void ground(Ink ink, PoseAt pose, FootPrint print) {
    double foot = print.heel().distance(print.toe());
    Point2D sole =
        scene.above(print.heel(), print.toe()) < 0
            ? scene.from(print.toe(), 0, scene.above(print.heel(), print.toe()))
            : print.toe();
    ink.line(
        on(scene.from(sole, -2.2 * foot, 0)), on(scene.from(sole, 0.9 * foot, 0)), Ink.PLUMB, 0.35);
    double high = toeLineHeight(pose, print);
    ink.line(on(print.toe()), on(scene.from(print.toe(), 0, high)), Ink.TOE_LINE, 0.7);
    pose.point(BodyPoint.FRONT_ANKLE)
        .ifPresent(
            ankle ->
                ink.dashed(
                    on(scene.from(ankle, 0, scene.above(sole, ankle))),
                    on(scene.from(ankle, 0, high - scene.above(ankle, print.toe()))),
                    Ink.PLUMB,
                    0.6));
  }

  /** Well over the knee, so that the words at its top hide nothing. */
  private static final double OVER_KNEE_FEET = 0.8;

  private double toeLineHeight(PoseAt pose, FootPrint print) {
    double foot = print.heel().distance(print.toe());
    return pose.point(BodyPoint.FRONT_KNEE)
        .map(knee -> scene.above(knee, print.toe()) + OVER_KNEE_FEET * foot)
        .orElse(2 * foot);
  }

  private void toeLineWords(Ink ink, double timeS, String words, Color colour, double size) {
    PoseAt pose = scene.pose(timeS);
    scene
        .footPrint(timeS)
        .ifPresent(
            p -> {
              Point2D top = scene.from(p.toe(), 0, toeLineHeight(pose, p));
              Point2D above = on(top);
              ink.tag(
                  words,
                  new Point2D.Double(above.getX(), above.getY() - 2 * ink.unit()),
                  Hang.CENTRE,
                  colour,
                  size);
            });
  }

  private Hang away() {
    return scene.ahead() > 0 ? Hang.RIGHT : Hang.LEFT;
  }

  private Hang behind() {
    return scene.ahead() > 0 ? Hang.LEFT : Hang.RIGHT;
  }

  /** The numbers of a bottom or a posture, as the table has them. */
  void numbers(Ink ink, double timeS, Readings readings) {
    PoseAt pose = scene.pose(timeS);
    shinTag(ink, pose, value(readings, Measure.SHIN));
    trunkTag(ink, pose, value(readings, Measure.TRUNK_LEAN));
    kneeTag(
        ink,
        timeS,
        value(readings, Measure.KNEE_PAST_TOE),
        value(readings, Measure.KNEE_PAST_TOE_FOOT));
  }

  /** The angles that {@link #numbers} leaves out, for a picture of one posture. */
  void otherAngles(Ink ink, double timeS, Readings readings) {
    PoseAt pose = scene.pose(timeS);
    tag(
        ink,
        between(pose.point(BodyPoint.FRONT_HIP), pose.point(BodyPoint.FRONT_KNEE)),
        value(readings, Measure.THIGH).map(v -> Words.say("picture.thigh", v)),
        behind(),
        Ink.LEG);
    tag(
        ink,
        pose.point(BodyPoint.FRONT_KNEE),
        value(readings, Measure.KNEE_FLEXION).map(v -> Words.say("picture.knee-flexion", v)),
        away(),
        Ink.LEG);
    tag(
        ink,
        pose.midHip(),
        value(readings, Measure.HIP_FLEXION).map(v -> Words.say("picture.hip-flexion", v)),
        behind(),
        Ink.TRUNK);
  }

  private void tag(Ink ink, Optional<Point2D> at, Optional<String> words, Hang hang, Color colour) {
    at.ifPresent(
        place -> words.ifPresent(w -> ink.tag(w, on(place), hang, colour, OTHER_TAG_SIZE)));
  }

  /** A shin that is not where it was asked for: its line, and how far the knee is off the toe. */
  void shinOffTarget(Ink ink, double timeS) {
    PoseAt pose = scene.pose(timeS);
    bone(ink, pose.point(BodyPoint.FRONT_KNEE), pose.point(BodyPoint.FRONT_ANKLE), Ink.FAULT);
    kneeGap(ink, timeS, pose);
  }

  /** The numbers of an instant, each in the colour of its line. */
  Map<String, Color> liveWords(double timeS) {
    PoseAt pose = scene.pose(timeS);
    Map<String, Color> words = new LinkedHashMap<>();
    pose.number(Column.SHIN).ifPresent(v -> words.put(Words.say("picture.shin", v), Ink.LEG));
    knee(pose.number(Column.KNEE_PAST_TOE), pose.number(Column.KNEE_PAST_TOE_FOOT))
        .ifPresent(w -> words.put(w, Ink.TOE_LINE));
    pose.number(Column.TRUNK_LEAN)
        .ifPresent(v -> words.put(Words.say("picture.trunk", v), Ink.TRUNK));
    return words;
  }

  private static Optional<Double> value(Readings readings, Measure measure) {
    return readings.at(measure).measured().map(m -> m.value());
  }

  private void shinTag(Ink ink, PoseAt pose, Optional<Double> shin) {
    between(pose.point(BodyPoint.FRONT_KNEE), pose.point(BodyPoint.FRONT_ANKLE))
        .ifPresent(
            at ->
                shin.ifPresent(
                    v ->
                        ink.tag(
                            Words.say("picture.shin", v), on(at), behind(), Ink.LEG, TAG_SIZE)));
  }

  /** High on the trunk, away from the words at the knee. */
  private void trunkTag(Ink ink, PoseAt pose, Optional<Double> lean) {
    between(between(pose.midHip(), pose.midShoulder()), pose.midShoulder())
        .ifPresent(
            at ->
                lean.ifPresent(
                    v ->
                        ink.tag(
                            Words.say("picture.trunk", v), on(at), behind(), Ink.TRUNK, TAG_SIZE)));
  }

  /** At the top of the toe line, so that the knee itself stays in view. */
  private void kneeTag(Ink ink, double timeS, Optional<Double> cm, Optional<Double> footPercent) {
    String words = knee(cm, footPercent).orElse(Words.say("picture.toe-line"));
    toeLineWords(ink, timeS, words, Ink.TOE_LINE, TAG_SIZE);
  }

  private Optional<String> knee(Optional<Double> cm, Optional<Double> footPercent) {
    return cm.map(v -> knee(v, FlagCaption.length(Math.abs(v), units)))
        .or(() -> footPercent.map(v -> knee(v, Words.say("picture.foot", Math.abs(v)))));
  }

  private static String knee(double past, String amount) {
    return Words.say(past < 0 ? "picture.knee.behind" : "picture.knee.past", amount);
  }

  private static Optional<Point2D> between(Optional<Point2D> a, Optional<Point2D> b) {
    return a.flatMap(
        p -> b.map(q -> new Point2D.Double((p.getX() + q.getX()) / 2, (p.getY() + q.getY()) / 2)));
  }

  /** What is wrong, against how it should be. */
  void fault(Ink ink, RepResult rep, Flag flag, double timeS) {
    PoseAt pose = scene.pose(timeS);
    toeLineWords(ink, timeS, Words.say("picture.toe-line"), Ink.TOE_LINE, 3.6);
    switch (flag.kind().picture()) {
      case HEEL -> rise(ink, rep, flag, pose.point(BodyPoint.FRONT_HEEL), RisingEnd.HEEL);
      case FOREFOOT -> rise(ink, rep, flag, pose.point(BodyPoint.FRONT_TOE), RisingEnd.TOE);
      case TRUNK_CHANGE ->
          TrunkChange.of(scene, rep, flag).ifPresent(change -> trunkAgainst(ink, pose, change));
      case BACK_OUTLINE -> scene.back(rep).ifPresent(b -> back(ink, b));
      case REAR_LEG -> {
        chain(
            ink,
            pose,
            Ink.FAULT,
            BodyPoint.REAR_HIP,
            BodyPoint.REAR_KNEE,
            BodyPoint.REAR_ANKLE,
            BodyPoint.REAR_TOE);
        pose.point(BodyPoint.REAR_TOE).ifPresent(at -> ink.ring(on(at), 5 * ink.unit(), Ink.FAULT));
      }
      case DEPTH -> depth(ink, rep, pose);
      case KNEE_WAY -> kneeTrail(ink, rep);
      case SHIN -> {
        shinOffTarget(ink, timeS);
        shinTag(ink, pose, value(rep, Measure.SHIN));
      }
      case LOWERING, HOLD, DRIVE -> {}
    }
  }

  /** The back as it is against the bow it has in standing. */
  private void back(Ink ink, BackLine line) {
    float dash = (float) (2.6 * ink.unit());
    ink.shape(through(line.standing()), Color.WHITE, 0.7, new float[] {dash, dash});
    ink.shape(through(line.now()), Ink.FAULT, 1.2, new float[0]);
    // High up, so that the gap between the lines stays in view.
    Point top = line.standing().get(line.standing().size() - 1);
    ink.tag(Words.say("picture.standing"), on(scene.pixel(top)), behind(), Color.WHITE, TAG_SIZE);
  }

  private Path2D through(List<Point> points) {
    Path2D path = new Path2D.Double();
    for (Point point : points) {
      Point2D at = on(scene.pixel(point));
      if (path.getCurrentPoint() == null) {
        path.moveTo(at.getX(), at.getY());
      } else {
        path.lineTo(at.getX(), at.getY());
      }
    }
    return path;
  }

  /** Which end of the foot has left the floor. */
  private enum RisingEnd {
    HEEL,
    TOE
  }

  private void rise(Ink ink, RepResult rep, Flag flag, Optional<Point2D> now, RisingEnd end) {
    Optional<FootPrint> print = scene.footPrint(rep);
    if (now.isEmpty() || print.isEmpty()) {
      return;
    }
    FootPrint flat = print.get();
    double foot = flat.heel().distance(flat.toe());
    ink.dashed(on(flat.heel()), on(flat.toe()), Color.WHITE, 0.7);
    Point2D level = end == RisingEnd.HEEL ? flat.heel() : flat.toe();
    // Beside the foot, where nothing hides it.
    double aside =
        scene.aheadOf(now.get(), level) + (end == RisingEnd.HEEL ? -0.3 * foot : 0.3 * foot);
    Point2D low = scene.from(level, aside, 0);
    Point2D high = scene.from(level, aside, scene.above(now.get(), level));
    ink.line(on(low), on(level), Color.WHITE, 0.4);
    ink.line(on(high), on(now.get()), Ink.FAULT, 0.4);
    ink.arrow(on(low), on(high), Ink.FAULT);
    ink.ring(on(now.get()), 3.2 * ink.unit(), Ink.FAULT);
    ink.tag(
        FlagCaption.amount(flag.value(), flag.unit(), units),
        on(scene.from(low, 0, scene.above(high, low) / 2)),
        end == RisingEnd.HEEL ? behind() : away(),
        Ink.FAULT,
        TAG_SIZE + 1);
  }

  private void trunkAgainst(Ink ink, PoseAt pose, TrunkChange change) {
    PoseAt other = scene.pose(change.wasS());
    Optional<Point2D> hip = pose.midHip();
    Optional<Point2D> shoulder = pose.midShoulder();
    Optional<Point2D> otherHip = other.midHip();
    Optional<Point2D> otherShoulder = other.midShoulder();
    if (hip.isEmpty() || shoulder.isEmpty() || otherHip.isEmpty() || otherShoulder.isEmpty()) {
      return;
    }
    double ahead = scene.aheadOf(otherShoulder.get(), otherHip.get());
    double up = scene.above(otherShoulder.get(), otherHip.get());
    // Longer than the trunk, so that the name stays clear of the head.
    Point2D ghost = scene.from(hip.get(), 1.15 * ahead, 1.15 * up);
    ink.dashed(on(hip.get()), on(ghost), Color.WHITE, 0.7);
    ink.line(on(hip.get()), on(shoulder.get()), Ink.FAULT, 1.2);
    ink.joint(on(hip.get()), Ink.FAULT);
    ink.joint(on(shoulder.get()), Ink.FAULT);
    arc(ink, on(hip.get()), on(ghost), on(shoulder.get()));
    ink.tag(change.wasWords(), on(ghost), behind(), Color.WHITE, TAG_SIZE);
    between(hip, shoulder)
        .ifPresent(at -> ink.tag(change.nowWords(), on(at), away(), Ink.FAULT, TAG_SIZE));
  }

  /** From one ray to another about a corner. */
  private static void arc(Ink ink, Point2D corner, Point2D from, Point2D to) {
    double start = angle(corner, from);
    double sweep = Math.IEEEremainder(angle(corner, to) - start, 360);
    double radius = 0.8 * corner.distance(to);
    ink.shape(
        new Arc2D.Double(
            corner.getX() - radius,
            corner.getY() - radius,
            2 * radius,
            2 * radius,
            start,
            sweep,
            Arc2D.OPEN),
        Ink.FAULT,
        0.6,
        new float[0]);
  }

  private static double angle(Point2D corner, Point2D to) {
    return Math.toDegrees(Math.atan2(corner.getY() - to.getY(), to.getX() - corner.getX()));
  }

  private void depth(Ink ink, RepResult rep, PoseAt pose) {
    Optional<Point2D> hip = pose.midHip();
    Optional<RepResult> deepest = scene.deepest().filter(d -> d.rep() != rep.rep());
    Optional<Point2D> wanted = deepest.flatMap(d -> scene.pose(d.bottomS()).midHip());
    if (hip.isEmpty() || wanted.isEmpty()) {
      return;
    }
    double down = scene.above(wanted.get(), hip.get());
    double wide = 0.12 * scene.staturePx().orElse(scene.heightPx() / 2.0);
    Point2D level = scene.from(hip.get(), 0, down);
    ink.dashed(on(scene.from(level, -wide, 0)), on(scene.from(level, wide, 0)), Color.WHITE, 0.8);
    ink.arrow(on(hip.get()), on(level), Ink.FAULT);
    ink.ring(on(hip.get()), 2.6 * ink.unit(), Ink.FAULT);
    ink.tag(
        Words.say("picture.depth", deepest.get().rep()),
        on(scene.from(level, -wide, 0)),
        behind(),
        Color.WHITE,
        TAG_SIZE);
  }

  /** The way of the knee while it should go straight or stand still. */
  private void kneeTrail(Ink ink, RepResult rep) {
    Path2D trail = new Path2D.Double();
    for (int row = 0; row < scene.series().rows(); row++) {
      double t = scene.series().timeS(row);
      Optional<Point2D> knee = scene.pose(t).point(BodyPoint.FRONT_KNEE);
      if (t >= rep.startS() && t <= rep.bottomEndS() && knee.isPresent()) {
        Point2D at = on(knee.get());
        if (trail.getCurrentPoint() == null) {
          trail.moveTo(at.getX(), at.getY());
        } else {
          trail.lineTo(at.getX(), at.getY());
        }
      }
    }
    ink.shape(trail, Ink.FAULT, 0.6, new float[0]);
  }

  /** From the toe line to the knee. */
  private void kneeGap(Ink ink, double timeS, PoseAt pose) {
    Optional<Point2D> knee = pose.point(BodyPoint.FRONT_KNEE);
    Optional<FootPrint> print = scene.footPrint(timeS);
    if (knee.isPresent() && print.isPresent()) {
      double past = scene.aheadOf(knee.get(), print.get().toe());
      ink.arrow(on(scene.from(knee.get(), -past, 0)), on(knee.get()), Ink.FAULT);
    }
  }

  private Point2D on(Point2D place) {
    // A point's coordinate is the middle of a pixel; a drawing's is its corner.
    return toPicture.transform(
        new Point2D.Double(place.getX() + 0.5, place.getY() + 0.5), new Point2D.Double());
  }
}
