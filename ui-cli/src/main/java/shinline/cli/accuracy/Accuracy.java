package shinline.cli.accuracy;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import shinline.cli.accuracy.ClipScore.Deviation;
import shinline.cli.accuracy.ClipScore.FlagScore;

/** Scores over all clips, and over groups of them. */
record Accuracy(List<ClipScore> clips) {
  Accuracy {
    clips = List.copyOf(clips);
  }

  Accuracy where(Predicate<Truth> wanted) {
    return new Accuracy(clips.stream().filter(c -> wanted.test(c.truth())).toList());
  }

  Optional<Spread> spread(Scored scored) {
    return Spread.of(deviations().filter(d -> d.scored() == scored).toList());
  }

  /** Share of all told values whose true value lies inside the ±; empty without a value. */
  Optional<Double> coverage() {
    return Spread.of(deviations().toList()).map(Spread::coverage);
  }

  private Stream<Deviation> deviations() {
    return clips.stream().flatMap(c -> c.deviations().stream());
  }

  int trueReps() {
    return clips.stream().mapToInt(ClipScore::trueReps).sum();
  }

  int matchedReps() {
    return clips.stream().mapToInt(ClipScore::matched).sum();
  }

  int falseReps() {
    return clips.stream().mapToInt(ClipScore::falseReps).sum();
  }

  private Stream<FlagScore> flags() {
    return clips.stream().flatMap(c -> c.flags().stream());
  }

  int flagsFound() {
    return flags().mapToInt(FlagScore::found).sum();
  }

  int flagsMissed() {
    return flags().mapToInt(f -> f.missed().size()).sum();
  }

  int flagsFalse() {
    return flags().mapToInt(f -> f.falseOnClean().size()).sum();
  }

  long cleanReps() {
    return flags().filter(f -> f.wanted().isEmpty()).count();
  }
}
