package shinline.metrics.synthetic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

/**
 * Films a {@link SplitSquat}: what a pose model would answer, frame by frame. A pinhole camera sees
 * the joint centres, each leg in its own plane; the landmarks lie off them as {@link LandmarkHabit}
 * has it. Nothing of the analysis takes part, so it must come back to the closed form.
 */
public final class TrackMaker {
  /** The sample clips were filmed from 3.6 to 3.7 m: their truth files. */
  private static final double CAMERA_M = 3.7;

  /** Half a hip's breadth and a little (common practice). */
  private static final double BESIDE_M = 0.10;

  private static final int WIDTH = 1920;
  private static final int HEIGHT = 1080;

  /** The set fills the picture's middle. */
  private static final Point ORIGIN_PX = new Point(1060, 130);

  private static final Point OPTICAL_AXIS_PX = new Point(WIDTH / 2.0, HEIGHT / 2.0);

  private final SplitSquat motion;
  private Side facing = Side.RIGHT;
  private boolean frontNear = true;
  private double staturePx = 800;
  private double fps = 30;
  private double unevenS;
  private double noisePx;
  private long seed = 1;
  private double rollDeg;
  private double spread = 0.01;

  /** The near leg hides the far knee at times: the model trusts its point less. */
  private static final double FAR_KNEE_HIDDEN = 0.15;

  private double confidence = 0.95;
  private IntPredicate exchanged = i -> false;
  private IntPredicate blended = i -> false;
  private IntPredicate unseen = i -> false;
  private IntPredicate doubted = i -> false;

  private TrackMaker(SplitSquat motion) {
    this.motion = motion;
  }

  public static TrackMaker film(SplitSquat motion) {
    return new TrackMaker(motion);
  }

  public TrackMaker facing(Side side) {
    facing = side;
    return this;
  }

  public TrackMaker frontLegFar() {
    frontNear = false;
    return this;
  }

  /** Stature in the picture. */
  public TrackMaker staturePx(double px) {
    staturePx = px;
    return this;
  }

  public TrackMaker fps(double rate) {
    fps = rate;
    return this;
  }

  /** Each frame comes up to this much late, as phones do it. */
  public TrackMaker unevenTimes(double seconds) {
    unevenS = seconds;
    return this;
  }

  /** White noise on each coordinate, standard deviation. */
  public TrackMaker noise(double px, long withSeed) {
    noisePx = px;
    seed = withSeed;
    return this;
  }

  /** The true vertical leans clockwise in the picture by this much. */
  public TrackMaker rolled(double deg) {
    rollDeg = deg;
    return this;
  }

  /** Near and far shoulder and hip this far apart along the picture, share of stature. */
  public TrackMaker shouldersApart(double share) {
    spread = share;
    return this;
  }

  public TrackMaker confidence(double of) {
    confidence = of;
    return this;
  }

  /** The model calls left right and right left in these frames. */
  public TrackMaker exchanged(IntPredicate frames) {
    exchanged = frames;
    return this;
  }

  /** In these frames the model puts both knees between the two. */
  public TrackMaker kneesBlended(IntPredicate frames) {
    blended = frames;
    return this;
  }

  /** Both knees and ankles not seen in these frames. */
  public TrackMaker legsUnseen(IntPredicate frames) {
    unseen = frames;
    return this;
  }

  /** In these frames the front knee is somewhere else, and the model says that it does not know. */
  public TrackMaker kneeDoubted(IntPredicate frames) {
    doubted = frames;
    return this;
  }

  public RawTrack track() {
    double[] times = times();
    List<Map<BodyPoint, Point>> landmarks =
        LandmarkHabit.landmarks(Arrays.stream(times).mapToObj(this::centres).toList());
    Random random = new Random(seed);
    List<RawPose> poses = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      poses.add(new RawPose(i, times[i], pose(i, landmarks.get(i), random)));
    }
    return new RawTrack(WIDTH, HEIGHT, poses);
  }

  /** The picture seen in a mirror, in which a model also takes left for right. */
  public static RawTrack mirrored(RawTrack track) {
    List<RawPose> poses = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
      pose.points()
          .forEach(
              (k, s) ->
                  points.put(
                      other(k),
                      new RawSighting(track.widthPx() - 1 - s.x(), s.y(), s.confidence())));
      poses.add(new RawPose(pose.frame(), pose.timeS(), points));
    }
    return new RawTrack(track.widthPx(), track.heightPx(), poses);
  }

  private static RawPoint other(RawPoint point) {
    String name = point.name();
    return name.startsWith("LEFT_")
        ? RawPoint.valueOf(name.replace("LEFT_", "RIGHT_"))
        : RawPoint.valueOf(name.replace("RIGHT_", "LEFT_"));
  }

  private double[] times() {
    Random random = new Random(seed + 77);
    int n = (int) Math.floor(motion.lengthS() * fps) + 1;
    return IntStream.range(0, n)
        .mapToDouble(i -> i / fps + unevenS * random.nextDouble())
        .toArray();
  }

  /** Joint centres as pixels of an upright picture with the athlete facing right. */
  private Map<BodyPoint, Point> centres(double t) {
    Map<BodyPoint, Point> px = new EnumMap<>(BodyPoint.class);
    motion
        .at(t)
        .forEach(
            (point, p) -> {
              Point flat =
                  ORIGIN_PX.plus(
                      p.x() * staturePx + apart(point) * spread * staturePx, p.y() * staturePx);
              // A pinhole shows what is dz nearer D/(D − dz) as large.
              double plane = CAMERA_M / (CAMERA_M + (isNear(point) ? -BESIDE_M : BESIDE_M));
              px.put(
                  point,
                  OPTICAL_AXIS_PX.plus(
                      plane * (flat.x() - OPTICAL_AXIS_PX.x()),
                      plane * (flat.y() - OPTICAL_AXIS_PX.y())));
            });
    return px;
  }

  private boolean isNear(BodyPoint point) {
    return switch (point) {
      case NEAR_SHOULDER, NEAR_EAR -> true;
      case FAR_SHOULDER -> false;
      default -> point.name().startsWith("FRONT_") == frontNear;
    };
  }

  private static double apart(BodyPoint point) {
    return switch (point) {
      case NEAR_SHOULDER -> 0.5;
      case FAR_SHOULDER -> -0.5;
      default -> 0;
    };
  }

  private Map<RawPoint, RawSighting> pose(int i, Map<BodyPoint, Point> marks, Random random) {
    Map<BodyPoint, Point> seen = new EnumMap<>(marks);
    if (blended.test(i)) {
      Point front = marks.get(BodyPoint.FRONT_KNEE);
      Point rear = marks.get(BodyPoint.REAR_KNEE);
      seen.put(BodyPoint.FRONT_KNEE, front.times(0.6).plus(0.4 * rear.x(), 0.4 * rear.y()));
      seen.put(BodyPoint.REAR_KNEE, rear.times(0.6).plus(0.4 * front.x(), 0.4 * front.y()));
    }
    if (doubted.test(i)) {
      seen.put(BodyPoint.FRONT_KNEE, marks.get(BodyPoint.FRONT_KNEE).plus(150, 90));
    }
    if (unseen.test(i)) {
      seen.keySet().removeIf(p -> p.name().endsWith("_KNEE") || p.name().endsWith("_ANKLE"));
    }
    Side near = facing;
    Side front = frontNear ? near : near.other();
    BodyPoint farKnee = frontNear ? BodyPoint.REAR_KNEE : BodyPoint.FRONT_KNEE;
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    seen.forEach(
        (point, p) -> {
          double hidden = point == farKnee ? FAR_KNEE_HIDDEN : 0;
          double sure = Math.max(0, confidence - hidden);
          if (doubted.test(i) && point == BodyPoint.FRONT_KNEE) {
            sure = 0.03;
          }
          points.put(raw(point, front, near), sighting(p, sure, random));
        });
    points.put(
        RawPoint.NOSE,
        sighting(marks.get(BodyPoint.NEAR_EAR).plus(0.05 * staturePx, 0), 1, random));
    if (!exchanged.test(i)) {
      return points;
    }
    Map<RawPoint, RawSighting> wrong = new EnumMap<>(RawPoint.class);
    points.forEach(
        (k, v) -> {
          boolean leg = k.ordinal() >= RawPoint.LEFT_HIP.ordinal();
          wrong.put(leg ? other(k) : k, v);
        });
    return wrong;
  }

  private static RawPoint raw(BodyPoint point, Side front, Side near) {
    String name = point.name();
    String joint = name.substring(name.indexOf('_') + 1);
    Side side =
        name.startsWith("FRONT_")
            ? front
            : name.startsWith("REAR_")
                ? front.other()
                : name.startsWith("NEAR_") ? near : near.other();
    return RawPoint.valueOf(side.name() + "_" + joint);
  }

  private RawSighting sighting(Point upright, double sure, Random random) {
    double x = upright.x() + noisePx * random.nextGaussian();
    double y = upright.y() + noisePx * random.nextGaussian();
    if (facing == Side.LEFT) {
      x = WIDTH - x;
    }
    // What stands upright leans clockwise, to the right, in the picture: turned about its middle.
    double a = Math.toRadians(rollDeg);
    double dx = x - OPTICAL_AXIS_PX.x();
    double dy = y - OPTICAL_AXIS_PX.y();
    return new RawSighting(
        OPTICAL_AXIS_PX.x() + dx * Math.cos(a) + dy * Math.sin(a),
        OPTICAL_AXIS_PX.y() - dx * Math.sin(a) + dy * Math.cos(a),
        sure);
  }
}
