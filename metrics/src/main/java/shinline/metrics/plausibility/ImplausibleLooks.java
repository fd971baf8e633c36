package shinline.metrics.plausibility;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import shinline.metrics.track.BodyPoint;

/**
 * Which points were taken out of which looks, for being where no body can have them.
 *
 * @param timeS seconds of each look
 * @param dropped the points taken out of each look, mostly none
 */
public record ImplausibleLooks(double[] timeS, List<Set<BodyPoint>> dropped) {
  public ImplausibleLooks {
    timeS = timeS.clone();
    dropped = dropped.stream().map(Set::copyOf).toList();
    if (timeS.length != dropped.size()) {
      throw new IllegalArgumentException(timeS.length + " times, " + dropped.size() + " looks");
    }
  }

  /** Whether one of some points was taken out of a look within a time. */
  public boolean any(double fromS, double toS, BodyPoint... points) {
    Set<BodyPoint> wanted = EnumSet.noneOf(BodyPoint.class);
    wanted.addAll(List.of(points));
    for (int i = 0; i < timeS.length; i++) {
      if (timeS[i] >= fromS
          && timeS[i] <= toS
          && dropped.get(i).stream().anyMatch(wanted::contains)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a point was taken out of one look, by its number. */
  public boolean at(int look, BodyPoint point) {
    return dropped.get(look).contains(point);
  }
}
