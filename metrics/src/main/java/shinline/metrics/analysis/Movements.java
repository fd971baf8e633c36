package shinline.metrics.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepFinder;
import shinline.metrics.reps.RepSearch;
import shinline.metrics.signal.Series;
import shinline.metrics.track.BodyPoint;

/**
 * All that the hips did: the reps of the set, and what is none of them, so that nothing is dropped
 * in silence.
 *
 * @param notCounted in order of time
 */
record Movements(List<Rep> reps, List<NotCounted> notCounted) {

  /** A rep takes longer than this: in a shorter stretch without the hips none is lost. */
  private static final double SHORTEST_LOST_S = 1;

  Movements {
    reps = List.copyOf(reps);
    notCounted = List.copyOf(notCounted);
  }

  static Movements of(Body body) {
    Series hip = body.kinematics().hipY();
    RepSearch search = new RepFinder().find(hip, body.scale().legPx());
    List<Rep> reps = new ArrayList<>();
    List<NotCounted> not = new ArrayList<>(search.notCounted());
    for (Rep rep : search.reps()) {
      if (inStance(rep, body)) {
        reps.add(rep);
      } else {
        not.add(
            new NotCounted(
                rep.times().startS(), rep.times().endS(), NotCounted.Reason.NOT_IN_STANCE));
      }
    }
    unseen(hip).stream()
        .filter(gap -> not.stream().noneMatch(told -> touch(told, gap)))
        .toList()
        .forEach(not::add);
    not.sort(Comparator.comparingDouble(NotCounted::fromS));
    return new Movements(reps, not);
  }

  /** Between the first and the last sight of the hips, where they were lost for long. */
  private static List<NotCounted> unseen(Series hip) {
    List<NotCounted> gaps = new ArrayList<>();
    List<Series.Run> runs = hip.runs();
    for (int k = 1; k < runs.size(); k++) {
      double[] before = hip.times(runs.get(k - 1));
      double from = before[before.length - 1];
      double to = hip.times(runs.get(k))[0];
      if (to - from >= SHORTEST_LOST_S) {
        gaps.add(new NotCounted(from, to, NotCounted.Reason.NOT_SEEN));
      }
    }
    return gaps;
  }

  private static boolean touch(NotCounted a, NotCounted b) {
    return a.fromS() <= b.toS() && b.fromS() <= a.toS();
  }

  /** Picking up weights or sitting down is no rep: the front foot has to be where it is planted. */
  private static boolean inStance(Rep rep, Body body) {
    Calibration calibration = body.calibration();
    CleanPath ankle = body.track().path(BodyPoint.FRONT_ANKLE);
    int inside = 0;
    int seen = 0;
    for (int i = 0; i < body.track().grid().size(); i++) {
      double t = body.track().grid().timeS(i);
      if (t >= rep.times().startS() && t <= rep.times().endS()) {
        inside++;
        seen += ankle.seen(i) ? 1 : 0;
      }
    }
    return seen >= calibration.value(CalibrationKey.GATE_ANKLE_SEEN) * inside;
  }
}
