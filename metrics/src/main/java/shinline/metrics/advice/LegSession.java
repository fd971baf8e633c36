package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.RecordedSet;

/**
 * The sets of one leg in one session at one step and target.
 *
 * @param wanted sets and reps asked for
 * @param asked the sets that were asked for, in order; sets beyond those do not count, and a set
 *     too dark to say stands in only where no other does
 */
record LegSession(Side leg, Scheme wanted, List<RecordedSet> asked, AdviceLimits.Sets limits) {

  /**
   * @param done all sets of the leg, in order, at least one
   */
  static LegSession of(Side leg, List<RecordedSet> done, Step step, AdviceLimits.Sets limits) {
    Scheme wanted = wanted(done, step);
    List<RecordedSet> clear =
        done.stream().filter(s -> SetQuality.of(s, limits) != SetQuality.TOO_DARK).toList();
    List<RecordedSet> dark =
        done.stream().filter(s -> SetQuality.of(s, limits) == SetQuality.TOO_DARK).toList();
    List<RecordedSet> asked =
        Stream.concat(clear.stream(), dark.stream())
            .limit(wanted.sets())
            .sorted(Comparator.comparing(RecordedSet::place))
            .toList();
    return new LegSession(leg, wanted, asked, limits);
  }

  /** The line's sets, else those of the step's scheme with these reps, else of its first. */
  private static Scheme wanted(List<RecordedSet> done, Step step) {
    int reps = lastAsked(done).reps();
    int sets =
        done.stream()
            .map(s -> s.entry().asked().sets())
            .filter(s -> s.isPresent())
            .reduce((a, b) -> b)
            .map(s -> s.getAsInt())
            .or(
                () ->
                    step.schemes().stream()
                        .filter(s -> s.reps() == reps)
                        .map(Scheme::sets)
                        .findFirst())
            .orElse(step.firstScheme().sets());
    return new Scheme(sets, reps);
  }

  private static Asked lastAsked(List<RecordedSet> done) {
    return done.get(done.size() - 1).entry().asked();
  }

  boolean everySetGood() {
    return goodSets() == wanted.sets();
  }

  int goodSets() {
    return count(SetQuality.GOOD);
  }

  int darkSets() {
    return count(SetQuality.TOO_DARK);
  }

  private int count(SetQuality quality) {
    return (int) asked.stream().filter(s -> SetQuality.of(s, limits) == quality).count();
  }

  /** The lightest of the asked sets that have a load on record. */
  Optional<TrainingLoad> load() {
    return asked.stream()
        .flatMap(s -> s.entry().load().stream())
        .min(Comparator.comparing(TrainingLoad::mass));
  }

  /** Too small a share of the judged reps was clean. */
  boolean poor() {
    int judged = 0;
    int clean = 0;
    for (RecordedSet set : asked) {
      if (SetQuality.of(set, limits) != SetQuality.TOO_DARK) {
        judged += set.entry().counts().judged();
        clean += set.entry().counts().judged() - set.entry().counts().notClean();
      }
    }
    return BigDecimal.valueOf(100L * clean)
            .compareTo(limits.poorPct().multiply(BigDecimal.valueOf(judged)))
        < 0;
  }

  List<String> lines() {
    return asked.stream().map(RecordedSet::id).toList();
  }
}
