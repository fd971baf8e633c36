package shinline.metrics.plausibility;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.SegmentAngles;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.PointPath;

/**
 * A track without the sightings that no body can give: before anything is smoothed, so that one
 * impossible look does not bend its neighbours.
 *
 * @param track the same looks, with points missing
 * @param implausible which ones, for the reason that a reading then has
 */
public record PlausibleTrack(LegTrack track, ImplausibleLooks implausible) {

  /** Fewer looks do not tell a length. */
  private static final int FEWEST = 8;

  /** Takes out what is beyond the limits. */
  public static PlausibleTrack of(LegTrack track, BodyLimits limits) {
    Lengths own = Lengths.of(track);
    List<Set<BodyPoint>> dropped = new ArrayList<>();
    int n = track.timeS().length;
    for (int i = 0; i < n; i++) {
      dropped.add(new Look(track, i).impossible(own, limits));
    }
    Map<BodyPoint, PointPath> paths = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      PointPath path = track.path(point);
      PointPath.Builder kept = PointPath.ofSize(n);
      for (int i = 0; i < n; i++) {
        if (path.seen(i) && !dropped.get(i).contains(point)) {
          kept.put(i, path);
        }
      }
      paths.put(point, kept.build());
    }
    return new PlausibleTrack(track.with(paths), new ImplausibleLooks(track.timeS(), dropped));
  }

  /** A segment of which the length is the same in every look. */
  private enum Segment {
    TRUNK,
    FRONT_THIGH,
    FRONT_SHANK,
    REAR_THIGH,
    REAR_SHANK
  }

  /** The clip's own lengths: the middle over all looks, pixels. */
  private record Lengths(Map<Segment, OptionalDouble> px) {
    static Lengths of(LegTrack track) {
      Map<Segment, OptionalDouble> px = new EnumMap<>(Segment.class);
      for (Segment segment : Segment.values()) {
        List<Double> seen = new ArrayList<>();
        for (int i = 0; i < track.timeS().length; i++) {
          new Look(track, i).length(segment).ifPresent(seen::add);
        }
        px.put(
            segment, seen.size() < FEWEST ? OptionalDouble.empty() : RobustStatistics.median(seen));
      }
      return new Lengths(px);
    }

    boolean off(Segment segment, Look look, double share) {
      OptionalDouble own = Objects.requireNonNull(px.get(segment));
      OptionalDouble now = look.length(segment);
      return own.isPresent()
          && now.isPresent()
          && Math.abs(now.getAsDouble() / own.getAsDouble() - 1) > share;
    }
  }

  /** One look of a track. */
  private record Look(LegTrack track, int i) {

    OptionalDouble length(Segment segment) {
      return switch (segment) {
        case TRUNK ->
            trunkSeen()
                ? OptionalDouble.of(midHip().distanceTo(midShoulder()))
                : OptionalDouble.empty();
        case FRONT_THIGH -> between(BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE);
        case FRONT_SHANK -> between(BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE);
        case REAR_THIGH -> between(BodyPoint.REAR_HIP, BodyPoint.REAR_KNEE);
        case REAR_SHANK -> between(BodyPoint.REAR_KNEE, BodyPoint.REAR_ANKLE);
      };
    }

    private OptionalDouble between(BodyPoint a, BodyPoint b) {
      return seen(a) && seen(b)
          ? OptionalDouble.of(at(a).distanceTo(at(b)))
          : OptionalDouble.empty();
    }

    Set<BodyPoint> impossible(Lengths own, BodyLimits limits) {
      Set<BodyPoint> out = EnumSet.noneOf(BodyPoint.class);
      if (trunkSeen() && (hipsAboveShoulders() || kneeAboveShoulders(BodyPoint.FRONT_KNEE))) {
        // Nothing of a body upside down is where it was seen.
        return EnumSet.allOf(BodyPoint.class);
      }
      boolean trunk = own.off(Segment.TRUNK, this, limits.lengthShare()) || leansTooFar(limits);
      if (trunk) {
        out.addAll(EnumSet.of(BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER, BodyPoint.NEAR_EAR));
      }
      boolean thigh = own.off(Segment.FRONT_THIGH, this, limits.lengthShare());
      boolean shank = own.off(Segment.FRONT_SHANK, this, limits.lengthShare());
      if (thigh && shank || bendsTooFar(limits)) {
        out.add(BodyPoint.FRONT_KNEE);
      } else if (shank) {
        out.add(BodyPoint.FRONT_ANKLE);
      } else if (thigh) {
        out.add(trunk ? BodyPoint.FRONT_HIP : BodyPoint.FRONT_KNEE);
      }
      boolean rearThigh = own.off(Segment.REAR_THIGH, this, limits.lengthShare());
      boolean rearShank = own.off(Segment.REAR_SHANK, this, limits.lengthShare());
      if (rearThigh && rearShank) {
        out.add(BodyPoint.REAR_KNEE);
      } else if (rearShank) {
        out.add(BodyPoint.REAR_ANKLE);
      } else if (rearThigh) {
        out.add(trunk ? BodyPoint.REAR_HIP : BodyPoint.REAR_KNEE);
      }
      return out;
    }

    private boolean hipsAboveShoulders() {
      return midHip().y() >= midShoulder().y();
    }

    private boolean kneeAboveShoulders(BodyPoint knee) {
      return seen(knee) && at(knee).y() >= midShoulder().y();
    }

    private boolean leansTooFar(BodyLimits limits) {
      return trunkSeen()
          && !limits
              .trunkLean()
              .holds(
                  SegmentAngles.trunkLean(midHip(), midShoulder()).degrees(), limits.rawSlackDeg());
    }

    /** Whether shin, thigh or knee of the front leg are beyond what they can be. */
    private boolean bendsTooFar(BodyLimits limits) {
      if (!seen(BodyPoint.FRONT_HIP)
          || !seen(BodyPoint.FRONT_KNEE)
          || !seen(BodyPoint.FRONT_ANKLE)) {
        return false;
      }
      Point hip = at(BodyPoint.FRONT_HIP);
      Point knee = at(BodyPoint.FRONT_KNEE);
      Point ankle = at(BodyPoint.FRONT_ANKLE);
      double slack = limits.rawSlackDeg();
      return !limits.shin().holds(SegmentAngles.shinForward(ankle, knee).degrees(), slack)
          || !limits.thigh().holds(SegmentAngles.thighFromHorizontal(knee, hip).degrees(), slack)
          || !limits
              .kneeFlexion()
              .holds(SegmentAngles.kneeFlexion(hip, knee, ankle).degrees(), slack);
    }

    private boolean trunkSeen() {
      return seen(BodyPoint.FRONT_HIP)
          && seen(BodyPoint.REAR_HIP)
          && seen(BodyPoint.NEAR_SHOULDER)
          && seen(BodyPoint.FAR_SHOULDER);
    }

    private Point midHip() {
      return at(BodyPoint.FRONT_HIP).middle(at(BodyPoint.REAR_HIP));
    }

    private Point midShoulder() {
      return at(BodyPoint.NEAR_SHOULDER).middle(at(BodyPoint.FAR_SHOULDER));
    }

    private boolean seen(BodyPoint point) {
      return track.path(point).seen(i);
    }

    private Point at(BodyPoint point) {
      return track.path(point).at(i);
    }
  }
}
