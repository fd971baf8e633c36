package shinline.metrics.bar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.geometry.Point;
import shinline.metrics.reps.DriveSpeed;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepFinder;
import shinline.metrics.reps.RepTimes;

/**
 * The drive of a rep as the bar's end does it.
 *
 * @param times the rep's instants, read by the same rule from the bar's own height where that can
 *     be: it is placed far more finely than the hip
 * @param speed metres a second, upward
 * @param strayM how far it strays forward and back from bottom to top: most ahead less most behind
 * @param path from bottom to top, metres ahead of and above the bottom
 */
public record BarDrive(RepTimes times, DriveSpeed speed, double strayM, List<Point> path) {
  /**
   * Rep search wants a leg's length to know what is too small a movement: about that of a grown
   * athlete, which needs no scale of the body.
   */
  private static final double LEG_M = 0.85;

  public BarDrive {
    path = List.copyOf(path);
  }

  /** One for each rep; empty where the bar was not seen through the whole drive. */
  public static List<Optional<BarDrive>> of(BarPath bar, List<Rep> reps) {
    List<Rep> own = new RepFinder().find(bar.upM(), LEG_M).reps();
    return reps.stream().map(rep -> of(bar, matching(rep, own).orElse(rep).times())).toList();
  }

  private static Optional<Rep> matching(Rep rep, List<Rep> own) {
    return own.stream()
        .filter(
            o ->
                o.times().lowestS() >= rep.times().startS()
                    && o.times().lowestS() <= rep.times().endS())
        .findFirst();
  }

  private static Optional<BarDrive> of(BarPath bar, RepTimes times) {
    Optional<DriveSpeed> speed = DriveSpeed.of(bar.upM(), bar.grid().stepS(), times);
    List<Point> path = new ArrayList<>();
    for (int i = 0; i < bar.grid().size(); i++) {
      double t = bar.grid().timeS(i);
      if (t >= times.bottomEndS() && t <= times.endS()) {
        if (!bar.forwardM().seen(i) || !bar.upM().seen(i)) {
          return Optional.empty();
        }
        path.add(new Point(bar.forwardM().value(i), bar.upM().value(i)));
      }
    }
    if (speed.isEmpty() || path.size() < 2) {
      return Optional.empty();
    }
    double most = path.stream().mapToDouble(Point::x).max().orElseThrow();
    double least = path.stream().mapToDouble(Point::x).min().orElseThrow();
    Point from = path.get(0);
    return Optional.of(
        new BarDrive(
            times,
            speed.get(),
            most - least,
            path.stream().map(p -> p.plus(-from.x(), -from.y())).toList()));
  }
}
