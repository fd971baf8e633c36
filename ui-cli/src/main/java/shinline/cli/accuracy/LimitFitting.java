package shinline.cli.accuracy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.fault.LimitSearch;
import shinline.metrics.fault.RepEvidence;

/**
 * Fits the limit of one kind of flag: between the clean rep that comes nearest to being flagged and
 * the faulty rep that comes nearest to passing. Where they overlap, where the fewest reps are
 * wrong, in doubt with fewer false flags, and then in the widest gap.
 *
 * @param fault the side of the limit on which a value is a fault
 * @param clean limits at which reps without any fault would begin to be flagged
 * @param faulty limits at which reps with this fault would cease to be flagged
 */
record LimitFitting(
    FlagKind kind,
    CalibrationKey key,
    LimitSearch.Side fault,
    List<Double> clean,
    List<Double> faulty) {
  private static final MathContext DIGITS = new MathContext(3);

  /** One for each kind that some faulty rep tells a limit of. */
  static List<LimitFitting> over(List<KnownClip> clips, Calibration calibration) {
    Map<FlagKind, LimitFitting> all = new EnumMap<>(FlagKind.class);
    for (KnownClip clip : clips) {
      List<RepEvidence> reps = clip.evidence(calibration);
      List<Optional<TrueRep>> truth = clip.trueReps(reps);
      for (FlagKind kind : FlagKind.values()) {
        if (kind.limitKey().isEmpty()) {
          continue;
        }
        LimitSearch search = new LimitSearch(kind, kind.limitKey().get(), reps, calibration);
        for (int i = 0; i < reps.size(); i++) {
          Optional<Set<String>> faults = truth.get(i).map(TrueRep::faults);
          Optional<LimitSearch.Turn> turn = search.of(i);
          if (faults.isEmpty() || turn.isEmpty()) {
            continue;
          }
          boolean wanted = faults.get().contains(kind.jsonName());
          if (wanted || faults.get().isEmpty()) {
            LimitFitting of =
                all.computeIfAbsent(
                    kind,
                    k ->
                        new LimitFitting(
                            k,
                            k.limitKey().orElseThrow(),
                            turn.get().fault(),
                            new ArrayList<>(),
                            new ArrayList<>()));
            (wanted ? of.faulty : of.clean).add(turn.get().limit());
          }
        }
      }
    }
    return all.values().stream().filter(f -> !f.faulty.isEmpty()).toList();
  }

  /** The clean rep nearest to being flagged, in the key's unit. */
  double nearestClean() {
    return clean.stream().mapToDouble(this::up).max().orElse(up(safeEnd())) * up(1);
  }

  /** The faulty rep nearest to passing. */
  double nearestFaulty() {
    return faulty.stream().mapToDouble(this::up).min().orElseThrow() * up(1);
  }

  /** Where no limit flags a rep: clean reps that no limit would flag lie there or beyond. */
  private double safeEnd() {
    return fault == LimitSearch.Side.ABOVE ? key.least() : key.most();
  }

  /** Turned so that more is always worse. */
  private double up(double value) {
    return fault == LimitSearch.Side.ABOVE ? value : -value;
  }

  double limit() {
    TreeSet<Double> values = new TreeSet<>();
    values.add(up(nearestClean()));
    clean.forEach(v -> values.add(up(v)));
    faulty.forEach(v -> values.add(up(v)));
    List<Double> sorted = List.copyOf(values);
    Gap best = gap(sorted.get(0), sorted.get(0));
    for (int i = 1; i < sorted.size(); i++) {
      Gap next = gap(sorted.get(i - 1), sorted.get(i));
      best = next.betterThan(best) ? next : best;
    }
    double middle = (best.from + best.to) / 2;
    double rounded = new BigDecimal(middle).round(DIGITS).doubleValue();
    return up(rounded > best.from && rounded < best.to ? rounded : middle);
  }

  private Gap gap(double from, double to) {
    double limit = (from + to) / 2;
    return new Gap(
        from,
        to,
        faulty.stream().filter(v -> up(v) <= limit).count(),
        clean.stream().filter(v -> up(v) > limit).count());
  }

  /** Between two neighbouring reps. */
  private record Gap(double from, double to, long missed, long falsely) {
    boolean betterThan(Gap other) {
      if (missed + falsely != other.missed + other.falsely) {
        return missed + falsely < other.missed + other.falsely;
      }
      return falsely != other.falsely ? falsely < other.falsely : to - from > other.to - other.from;
    }
  }
}
