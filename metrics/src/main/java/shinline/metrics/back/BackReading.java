package shinline.metrics.back;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.geometry.Point;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.Side;

/**
 * The bow of the athlete's back at the bottom of each rep against the same athlete's back in
 * standing. The shape of a back, a loose shirt, the view: whatever is there in standing, too, drops
 * out.
 */
public final class BackReading {
  /** Standing is looked at between reps, and this long before the first. */
  private static final double STANDING_S = 1.5;

  /** Around the hold, where the hip is still within a few per cent of the lowest. */
  private static final double AROUND_BOTTOM_S = 0.1;

  private final List<TrunkOutline> outlines;
  private final Side back;
  private final BackProfile standing;

  private BackReading(List<TrunkOutline> outlines, Side back, BackProfile standing) {
    this.outlines = outlines;
    this.back = back;
    this.standing = standing;
  }

  /**
   * @param outlines looks at the trunk, some of them in standing and at the bottoms
   * @param facing side of the picture the athlete faces
   */
  public static BackReading of(List<TrunkOutline> outlines, List<Rep> reps, Side facing) {
    Side back = facing.other();
    List<BackProfile> standing = new ArrayList<>();
    for (TrunkOutline outline : outlines) {
      if (standing(outline.timeS(), reps)) {
        standing.add(BackProfile.of(outline, back));
      }
    }
    return new BackReading(List.copyOf(outlines), back, BackProfile.middle(standing));
  }

  private static boolean standing(double timeS, List<Rep> reps) {
    double from = reps.get(0).times().startS() - STANDING_S;
    for (Rep rep : reps) {
      if (timeS >= from && timeS <= rep.times().startS()) {
        return true;
      }
      from = rep.times().endS();
    }
    return false;
  }

  /**
   * @param more bow at the bottom less bow in standing, share of the trunk's length; + rounder, −
   *     hollower
   * @param atS when the look was that shows it best
   * @param line that look, as it can be drawn
   */
  public record Change(double more, double atS, BackLine line) {}

  /** What became of the back in one rep; empty where the outline was not seen well enough. */
  public Optional<Change> at(Rep rep) {
    RepTimes t = rep.times();
    List<Change> looks = new ArrayList<>();
    for (TrunkOutline outline : outlines) {
      if (outline.timeS() >= t.bottomStartS() - AROUND_BOTTOM_S
          && outline.timeS() <= t.bottomEndS() + AROUND_BOTTOM_S) {
        BackProfile.of(outline, back)
            .over(standing)
            .ifPresent(
                bow -> looks.add(new Change(bow.rise(), outline.timeS(), line(outline, bow))));
      }
    }
    OptionalDouble middle = RobustStatistics.median(looks.stream().map(Change::more).toList());
    return looks.stream()
        .min(
            (a, b) ->
                Double.compare(
                    Math.abs(a.more() - middle.getAsDouble()),
                    Math.abs(b.more() - middle.getAsDouble())))
        .map(nearest -> new Change(middle.getAsDouble(), nearest.atS(), nearest.line()));
  }

  private BackLine line(TrunkOutline outline, BackProfile.Parabola bow) {
    List<Point> now = outline.edge(back).stream().flatMap(Optional::stream).toList();
    return new BackLine(now, standing.on(outline, back, bow));
  }
}
