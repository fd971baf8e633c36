package shinline.cli.progress;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.MeasuredSet;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.progress.Amount;
import shinline.metrics.progress.AthleteProgress;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.FollowedSet;
import shinline.metrics.result.Measure;
import shinline.metrics.training.RecordedSet;

/**
 * What the record knows of an athlete's weeks.
 *
 * @param bottoms pictures of the bottom, by the id of the set's line
 */
public record AthleteWeeks(
    AthleteName athlete, AthleteProgress progress, Map<String, Path> bottoms) {

  /**
   * @param measured by the id of the set's line
   * @param pictures by the digest of the clip, in lower case
   */
  public static AthleteWeeks of(
      AthleteRecord record,
      Map<String, MeasuredSet> measured,
      Map<String, Path> pictures,
      OneRepMax formula) {
    List<FollowedSet> sets =
        record.history().sets().stream()
            .map(s -> followed(s, measured.getOrDefault(s.id(), MeasuredSet.nothing())))
            .toList();
    Map<String, Path> bottoms = new HashMap<>();
    measured.forEach(
        (id, set) ->
            set.sha256()
                .map(d -> pictures.get(d.toLowerCase(Locale.ROOT)))
                .ifPresent(p -> bottoms.put(id, p)));
    return new AthleteWeeks(record.name(), AthleteProgress.of(sets, formula), bottoms);
  }

  private static FollowedSet followed(RecordedSet set, MeasuredSet measured) {
    Map<Followed, Amount> amounts = new HashMap<>();
    Map<Integer, Map<Followed, Double>> reps = new HashMap<>();
    for (Followed followed : Followed.values()) {
      if (!followed.isMass()) {
        amount(measured, followed).ifPresent(a -> amounts.put(followed, a));
        measured
            .reps()
            .forEach(
                (rep, shown) ->
                    Optional.ofNullable(shown.get(name(followed)))
                        .ifPresent(
                            v -> reps.computeIfAbsent(rep, r -> new HashMap<>()).put(followed, v)));
      }
    }
    return new FollowedSet(set, amounts, reps);
  }

  private static Optional<Amount> amount(MeasuredSet set, Followed followed) {
    return switch (followed) {
      case SHIN, DEPTH, TRUNK ->
          Optional.ofNullable(set.atBottom().get(name(followed)))
              .map(m -> new Amount(m.mean(), known(m.plusMinus()), known(m.plusMinusWithin())));
      case LOWERING -> number(set, followed, set.loweringS());
      case HOLD -> number(set, followed, set.holdS());
      case DRIVE_SPEED -> number(set, followed, set.driveSpeedMps());
      case BAR_SPEED -> number(set, followed, set.barSpeedMps());
      case LOAD, MAXIMUM -> Optional.empty();
    };
  }

  private static Optional<Amount> number(
      MeasuredSet set, Followed followed, Optional<Double> value) {
    OptionalDouble width = known(Optional.ofNullable(set.plusMinus().get(name(followed))));
    return value.map(v -> new Amount(v, width, OptionalDouble.empty()));
  }

  private static OptionalDouble known(Optional<Double> width) {
    return width.isPresent() ? OptionalDouble.of(width.get()) : OptionalDouble.empty();
  }

  /** Its name on the line of a set. */
  private static String name(Followed followed) {
    return switch (followed) {
      case SHIN -> Measure.SHIN.jsonName();
      case DEPTH -> Measure.THIGH.jsonName();
      case TRUNK -> Measure.TRUNK_LEAN.jsonName();
      case LOWERING -> "loweringS";
      case HOLD -> "holdS";
      case DRIVE_SPEED -> "driveSpeedMps";
      case BAR_SPEED -> "barSpeedMps";
      case LOAD, MAXIMUM -> "";
    };
  }
}
