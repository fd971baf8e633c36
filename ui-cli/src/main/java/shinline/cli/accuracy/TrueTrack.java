package shinline.cli.accuracy;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.signal.Series;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.RawTrack;

/** The true joint centres of a clip, laid on the grid of its cleaned landmarks. */
final class TrueTrack {
  private final Truth truth;
  private final RawTrack raw;
  private final CleanTrack landmarks;

  private TrueTrack(Truth truth, RawTrack raw, CleanTrack landmarks) {
    this.truth = truth;
    this.raw = raw;
    this.landmarks = landmarks;
  }

  /**
   * Empty when the truth does not tell every point, or in the coordinates of another picture (a
   * camera that moved).
   *
   * @param raw what the pose model saw, which knows the picture's height
   * @param landmarks in the picture: x forward, y up
   */
  static Optional<CleanTrack> of(Truth truth, RawTrack raw, CleanTrack landmarks) {
    boolean whole = Arrays.stream(BodyPoint.values()).allMatch(truth.pixels()::containsKey);
    return whole && !truth.shaken()
        ? Optional.of(new TrueTrack(truth, raw, landmarks).track())
        : Optional.empty();
  }

  private CleanTrack track() {
    Map<BodyPoint, CleanPath> paths = new EnumMap<>(BodyPoint.class);
    double forward = truth.facesLeft() ? -1 : 1;
    truth
        .pixels()
        .forEach(
            (point, at) ->
                paths.put(
                    point,
                    new CleanPath(
                        series(at.x(), 0, forward),
                        series(at.y(), raw.heightPx() - 1, -1),
                        landmarks.path(point).confidence(),
                        0)));
    return landmarks.with(paths);
  }

  private Series series(double[] pixels, double from, double sign) {
    double[] value = new double[pixels.length];
    boolean[] seen = new boolean[pixels.length];
    for (int i = 0; i < pixels.length; i++) {
      seen[i] = !Double.isNaN(pixels[i]);
      value[i] = seen[i] ? from + sign * pixels[i] : 0;
    }
    return landmarks.grid().resample(Series.of(truth.timeS(), value, seen));
  }
}
