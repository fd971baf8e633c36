package shinline.metrics.cleaning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;

/**
 * A track after cleaning. Only {@link TrackCleaning} and {@link StillCleaning} make one, so
 * cleaning cannot be skipped.
 */
public final class CleanTrack {
  private final LegTrack source;
  private final UniformTimeGrid grid;
  private final Map<BodyPoint, CleanPath> paths;
  private final Settling settling;

  CleanTrack(
      LegTrack source, UniformTimeGrid grid, Map<BodyPoint, CleanPath> paths, Settling settling) {
    this.source = source;
    this.grid = grid;
    this.paths = new EnumMap<>(paths);
    this.settling = settling;
  }

  /** What cleaning and a median over some time leave of a point's jitter. */
  @FunctionalInterface
  interface Settling {
    /** Share of the jitter, as standard deviations, that is left; 0 or more. */
    double share(double spanS);
  }

  public LegTrack source() {
    return source;
  }

  public UniformTimeGrid grid() {
    return grid;
  }

  public CleanPath path(BodyPoint point) {
    return Objects.requireNonNull(paths.get(point));
  }

  /**
   * Standard deviation of a point's median over some time, one axis, pixels: what is left of its
   * jitter.
   */
  public double settledPx(BodyPoint point, double spanS) {
    return path(point).jitterPx() * settling.share(spanS);
  }

  /** The same cleaned track with some paths replaced, for a correction that follows cleaning. */
  public CleanTrack with(Map<BodyPoint, CleanPath> replaced) {
    Map<BodyPoint, CleanPath> merged = new EnumMap<>(paths);
    merged.putAll(replaced);
    return new CleanTrack(source, grid, merged, settling);
  }

  /** The same track in the athlete's own side plane, from the picture a view makes of it. */
  public CleanTrack toSagittalPlane(ViewGeometry view) {
    return mapped(view, view::real);
  }

  /** The same track as a view shows it; undoes {@link #toSagittalPlane}. */
  public CleanTrack seenFrom(ViewGeometry view) {
    return mapped(view, view::seen);
  }

  private CleanTrack mapped(ViewGeometry view, UnaryOperator<Point> place) {
    if (view.equals(ViewGeometry.SQUARE)) {
      return this;
    }
    Map<BodyPoint, CleanPath> moved = new EnumMap<>(BodyPoint.class);
    paths.forEach((point, path) -> moved.put(point, path.mapped(place)));
    return new CleanTrack(source, grid, moved, settling);
  }

  /** Distance of two points, pixels: the middle over the clip where both are seen. */
  public OptionalDouble length(BodyPoint a, BodyPoint b) {
    CleanPath from = path(a);
    CleanPath to = path(b);
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < grid.size(); i++) {
      if (from.seen(i) && to.seen(i)) {
        lengths.add(from.at(i).distanceTo(to.at(i)));
      }
    }
    return RobustStatistics.median(lengths);
  }

  /** Mid-hip to mid-shoulder, pixels: the middle over the clip where all four points are seen. */
  public OptionalDouble trunkLength() {
    CleanPath hip = path(BodyPoint.FRONT_HIP);
    CleanPath rearHip = path(BodyPoint.REAR_HIP);
    CleanPath near = path(BodyPoint.NEAR_SHOULDER);
    CleanPath far = path(BodyPoint.FAR_SHOULDER);
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < grid.size(); i++) {
      if (hip.seen(i) && rearHip.seen(i) && near.seen(i) && far.seen(i)) {
        lengths.add(hip.at(i).middle(rearHip.at(i)).distanceTo(near.at(i).middle(far.at(i))));
      }
    }
    return RobustStatistics.median(lengths);
  }
}
