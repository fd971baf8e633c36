package shinline.metrics.track;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.track.ForwardTrack.Joint;

/**
 * Tells the front leg from the rear leg over a whole clip.
 *
 * <p>Seen from the side the pose model exchanges left and right for whole phases, so no rule that
 * looks at one frame, and no smoothing, mends it. Three facts of the exercise do: the feet stay
 * where they are planted ({@link FootPlants}), a shank keeps its length, and a knee does not jump
 * ({@link KneeChain}). Left and right come last, by the weight of all frames.
 */
public final class LegIdentity {
  private final Calibration calibration;
  private final LegIdentityParameters parameters;

  public LegIdentity(Calibration calibration) {
    this.calibration = calibration;
    parameters = LegIdentityParameters.of(calibration);
  }

  /** Why legs cannot be told apart. */
  public enum LegDoubt {
    /** The feet are never seen one ahead of the other. */
    FEET_NEVER_APART,
    FEET_SELDOM_APART
  }

  /** Resolved legs, or why they cannot be resolved. */
  public sealed interface Answer {
    record Resolved(LegTrack track) implements Answer {}

    record Unresolved(LegDoubt doubt) implements Answer {}

    default <T> T fold(Function<Resolved, T> resolved, Function<Unresolved, T> unresolved) {
      return this instanceof Resolved r ? resolved.apply(r) : unresolved.apply((Unresolved) this);
    }
  }

  /** Legs as the clip alone tells them. */
  public Answer resolve(RawTrack raw) {
    return resolve(raw, ToldLegs.NOTHING);
  }

  /**
   * @param told counts before what the clip shows
   */
  public Answer resolve(RawTrack raw, ToldLegs told) {
    Facing shown = Facing.of(raw);
    Facing facing = told.facing().map(side -> new Facing(side, 1)).orElse(shown);
    ForwardTrack track = ForwardTrack.of(raw, facing.side(), parameters);
    double body = track.bodyPx();
    Map<Joint, FootPlants> plants = new EnumMap<>(Joint.class);
    for (Joint joint : new Joint[] {Joint.ANKLE, Joint.HEEL, Joint.TOE}) {
      Optional<FootPlants> found =
          body > 0
              ? FootPlants.of(
                  track.path(joint, Side.LEFT),
                  track.path(joint, Side.RIGHT),
                  parameters.splitApart() * body)
              : Optional.empty();
      if (found.isEmpty()) {
        return new Answer.Unresolved(LegDoubt.FEET_NEVER_APART);
      }
      plants.put(joint, found.get());
    }
    FootPlants ankles = plants.get(Joint.ANKLE);
    if (ankles == null || ankles.splitShare() < parameters.leastSplit()) {
      return new Answer.Unresolved(LegDoubt.FEET_SELDOM_APART);
    }
    return new Answer.Resolved(assemble(raw, told, shown, facing, track, plants, ankles));
  }

  private LegTrack assemble(
      RawTrack raw,
      ToldLegs told,
      Facing shown,
      Facing facing,
      ForwardTrack track,
      Map<Joint, FootPlants> plants,
      FootPlants ankles) {
    Map<BodyPoint, PointPath> paths = new EnumMap<>(BodyPoint.class);
    LegVotes votes = new LegVotes(track.frames(), facing.side(), told.frontLeg(), calibration);
    plants.forEach(
        (joint, plant) -> {
          PointPath left = track.path(joint, Side.LEFT);
          PointPath right = track.path(joint, Side.RIGHT);
          Pair pair = byPlant(left, right, plant, track.bodyPx(), votes);
          paths.put(BodyPoint.valueOf("FRONT_" + joint.name()), pair.front());
          paths.put(BodyPoint.valueOf("REAR_" + joint.name()), pair.rear());
        });
    AnkleSlipCorrection foot =
        AnkleSlipCorrection.mend(
            Objects.requireNonNull(paths.get(BodyPoint.FRONT_ANKLE)),
            Objects.requireNonNull(paths.get(BodyPoint.FRONT_HEEL)),
            ankles.front(),
            Objects.requireNonNull(plants.get(Joint.HEEL)).front(),
            track.path(Joint.KNEE, Side.LEFT),
            track.path(Joint.KNEE, Side.RIGHT),
            track.bodyPx(),
            calibration);
    paths.put(BodyPoint.FRONT_ANKLE, foot.ankle());
    paths.put(BodyPoint.FRONT_HEEL, foot.heel());
    KneeChain knees =
        KneeChain.solve(
            track.path(Joint.KNEE, Side.LEFT),
            track.path(Joint.KNEE, Side.RIGHT),
            ankles,
            paths.get(BodyPoint.FRONT_ANKLE),
            paths.get(BodyPoint.REAR_ANKLE),
            track.timeS(),
            track.bodyPx(),
            parameters,
            votes);
    Pair unmixed =
        BlendGuard.of(calibration).clean(new Pair(knees.front(), knees.rear()), track.timeS());
    paths.put(BodyPoint.FRONT_KNEE, unmixed.front());
    paths.put(BodyPoint.REAR_KNEE, unmixed.rear());
    votes.knees(unmixed.front(), unmixed.rear(), parameters.splitApart() * track.bodyPx() / 2);
    Side frontLeg = votes.frontLeg();
    Pair hips =
        bySide(track.path(Joint.HIP, frontLeg), track.path(Joint.HIP, frontLeg.other()), votes);
    paths.put(BodyPoint.FRONT_HIP, hips.front());
    paths.put(BodyPoint.REAR_HIP, hips.rear());
    Side near = facing.side();
    paths.put(BodyPoint.NEAR_SHOULDER, track.path(Joint.SHOULDER, near));
    paths.put(BodyPoint.FAR_SHOULDER, track.path(Joint.SHOULDER, near.other()));
    paths.put(BodyPoint.NEAR_EAR, track.path(Joint.EAR, near));
    return new LegTrack(
        raw.poses().stream().mapToInt(RawPose::frame).toArray(),
        track.timeS(),
        paths,
        facing,
        frontLeg,
        votes.agreement(),
        votes.clear(),
        votes.swappedShare(),
        track.bodyPx(),
        ankles.splitShare(),
        new ShownLegs(shown.side(), shown.agreement(), votes.shownFrontLeg(), votes.shownClear()));
  }

  /** A joint on the front and on the rear leg. */
  record Pair(PointPath front, PointPath rear) {}

  private Pair byPlant(
      PointPath left, PointPath right, FootPlants plants, double bodyPx, LegVotes votes) {
    int n = left.size();
    PointPath.Builder front = PointPath.ofSize(n);
    PointPath.Builder rear = PointPath.ofSize(n);
    for (int i = 0; i < n; i++) {
      List<PointPath> onFront = new ArrayList<>();
      List<PointPath> onRear = new ArrayList<>();
      for (PointPath path : List.of(left, right)) {
        if (path.seen(i)) {
          boolean isFront = plants.onFront(path, i);
          double limit = isFront ? parameters.offPlant() : parameters.offRearPlant();
          if (plants.away(path, i) <= limit * bodyPx) {
            (isFront ? onFront : onRear).add(path);
          }
        }
      }
      PointPath f = surer(onFront, i);
      PointPath r = surer(onRear, i);
      if (f != null) {
        front.put(i, f);
      }
      if (r != null) {
        rear.put(i, r);
      }
      if (f != null && r != null && f != r) {
        votes.add(i, f == left ? Side.LEFT : Side.RIGHT, f.distance(r, i) / bodyPx);
      }
    }
    return new Pair(front.build(), rear.build());
  }

  private static @org.jspecify.annotations.Nullable PointPath surer(List<PointPath> paths, int i) {
    PointPath best = null;
    for (PointPath path : paths) {
      if (best == null || path.confidence(i) > best.confidence(i)) {
        best = path;
      }
    }
    return best;
  }

  /** Hips lie too close together to be told apart themselves: they go with their own legs. */
  private static Pair bySide(PointPath claimedFront, PointPath claimedRear, LegVotes votes) {
    int n = claimedFront.size();
    PointPath.Builder front = PointPath.ofSize(n);
    PointPath.Builder rear = PointPath.ofSize(n);
    boolean[] swappedIn = votes.swapped();
    for (int i = 0; i < n; i++) {
      boolean swapped = swappedIn[i];
      front.put(i, swapped ? claimedRear : claimedFront);
      rear.put(i, swapped ? claimedFront : claimedRear);
    }
    return new Pair(front.build(), rear.build());
  }
}
