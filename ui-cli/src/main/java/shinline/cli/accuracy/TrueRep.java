package shinline.cli.accuracy;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.reps.ShortRange;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.TempoReading;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Phases and bottom values of one true rep, by the definitions of docs/measures.md on the truth's
 * own series: the instants are not those scripted, but those at which the hip passes five per cent
 * of its travel.
 *
 * @param values at the bottom, and the lengths of the phases
 * @param shortRange whether it is a short-range drive
 * @param faults names of flag kinds that were put in
 */
record TrueRep(
    double startS,
    double bottomStartS,
    double bottomEndS,
    double endS,
    Map<Scored, Double> values,
    boolean shortRange,
    Set<String> faults) {
  private static final double LEVEL = 0.05;

  /** The scripted times may lie this far inside the motion. */
  private static final double MARGIN_S = 0.30;

  private static final double LEAST_WINDOW_S = 0.1;
  private static final double TIME_SLACK_S = 1e-9;
  private static final double CM_IN_M = 100;

  double bottomS() {
    return (bottomStartS + bottomEndS) / 2;
  }

  /** Empty when the series does not hold the whole rep. */
  static Optional<TrueRep> of(Truth truth, Truth.Scripted rep) {
    double[] t = truth.timeS();
    double[] h = java.util.Objects.requireNonNull(truth.columns().get("hipHeightCm"));
    int[] ids =
        IntStream.range(0, t.length)
            .filter(i -> t[i] >= rep.startS() - MARGIN_S && t[i] <= rep.endS() + MARGIN_S)
            .toArray();
    if (ids.length < 3) {
      return Optional.empty();
    }
    int first = ids[0];
    int last = ids[ids.length - 1];
    int low = IntStream.of(ids).boxed().min(Comparator.comparingDouble(i -> h[i])).orElseThrow();
    double top0 = IntStream.rangeClosed(first, low).mapToDouble(i -> h[i]).max().orElseThrow();
    double top1 = IntStream.rangeClosed(low, last).mapToDouble(i -> h[i]).max().orElseThrow();
    double leaves = top0 - LEVEL * (top0 - h[low]);
    double bottom = h[low] + LEVEL * (top0 - h[low]);
    double arrives = top1 - LEVEL * (top1 - h[low]);
    int a = low - 1;
    while (a >= first && !(h[a] >= leaves && leaves > h[a + 1])) {
      a--;
    }
    int d = low;
    while (d < last && !(h[d] < arrives && arrives <= h[d + 1])) {
      d++;
    }
    int[] near = IntStream.of(ids).filter(i -> h[i] <= bottom).toArray();
    int near0 = near[0];
    int near1 = near[near.length - 1];
    if (a < first || d >= last || near0 == 0 || near1 + 1 >= t.length) {
      return Optional.empty();
    }
    double startS = crossing(t, h, a, a + 1, leaves);
    double bottomStartS = crossing(t, h, near0 - 1, near0, bottom);
    double bottomEndS = crossing(t, h, near1, near1 + 1, bottom);
    double endS = crossing(t, h, d, d + 1, arrives);
    boolean held = bottomEndS - bottomStartS >= LEAST_WINDOW_S;
    int[] window =
        IntStream.of(ids)
            .filter(
                i ->
                    held
                        ? bottomStartS <= t[i] && t[i] <= bottomEndS
                        : Math.abs(t[i] - t[low]) <= LEAST_WINDOW_S / 2 + TIME_SLACK_S)
            .toArray();
    int[] inside = window.length == 0 ? new int[] {low} : window;
    Map<Scored, Double> values = new EnumMap<>(Scored.class);
    for (Scored scored : Scored.values()) {
      scored
          .column()
          .map(truth.columns()::get)
          .map(column -> IntStream.of(inside).mapToDouble(i -> column[i]))
          .map(TrueRep::median)
          .ifPresent(median -> median.ifPresent(v -> values.put(scored, v)));
    }
    values.put(Scored.LOWERING, bottomStartS - startS);
    values.put(Scored.HOLD, bottomEndS - bottomStartS);
    values.put(Scored.DRIVE, endS - bottomEndS);
    values.put(Scored.DRIVE_SPEED, speed(t, h, bottomEndS, endS));
    Optional.ofNullable(truth.columns().get("barHeightCm"))
        .ifPresent(bar -> values.put(Scored.BAR_SPEED, speed(t, bar, bottomEndS, endS)));
    boolean shortRange =
        ShortRange.is(
            (top0 - h[low]) / CM_IN_M / truth.athleteHeightM(),
            bottomStartS - startS,
            endS - bottomEndS);
    return Optional.of(
        new TrueRep(startS, bottomStartS, bottomEndS, endS, values, shortRange, rep.faults()));
  }

  /** For the judge: the true values, with the clearance for their ±. */
  RepReadings readings(int rep, Clearance clearance) {
    Map<Measure, Reading> bottom = new EnumMap<>(Measure.class);
    values.forEach(
        (scored, value) ->
            scored.measure().ifPresent(m -> bottom.put(m, clearance.around(value, m.unit()))));
    return new RepReadings(
        rep,
        bottom,
        new TempoReading(
            phase(Scored.LOWERING, clearance),
            phase(Scored.HOLD, clearance),
            phase(Scored.DRIVE, clearance),
            Reading.missing(Gap.NOT_READ)),
        shortRange);
  }

  private Reading phase(Scored scored, Clearance clearance) {
    return clearance.around(
        java.util.Objects.requireNonNull(values.get(scored)), MeasureUnit.SECONDS);
  }

  /** Mean upward speed between two instants, metres a second. */
  private static double speed(double[] t, double[] heightCm, double fromS, double toS) {
    return (at(t, heightCm, toS) - at(t, heightCm, fromS)) / (toS - fromS) / CM_IN_M;
  }

  private static double at(double[] t, double[] y, double atS) {
    int k = 0;
    while (k + 2 < t.length && t[k + 1] <= atS) {
      k++;
    }
    return y[k] + (y[k + 1] - y[k]) * (atS - t[k]) / (t[k + 1] - t[k]);
  }

  private static double crossing(double[] t, double[] h, int i, int j, double level) {
    return h[j] == h[i] ? t[i] : t[i] + (t[j] - t[i]) * (level - h[i]) / (h[j] - h[i]);
  }

  private static OptionalDouble median(DoubleStream all) {
    return RobustStatistics.median(all.filter(x -> !Double.isNaN(x)).toArray());
  }
}
