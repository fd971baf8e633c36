package shinline.cli.picture;

import java.util.Optional;
import java.util.stream.IntStream;
import shinline.cli.words.Words;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable.Column;

/**
 * The two leans whose difference a flag tells, so that lines, labels and the flag's number speak of
 * the same instants.
 *
 * @param was when the lean before was, for example {@code at the bottom}
 * @param wasDeg trunk lean before, degrees
 * @param wasS an instant that shows it
 * @param nowDeg trunk lean in the flag's frame
 */
record TrunkChange(String was, double wasDeg, double wasS, double nowDeg) {
  /** The lean "at the top" is read over this time before the rep. */
  private static final double TOP_S = 0.3;

  /** Empty when the lean was not measured, or the flag tells no change of it. */
  static Optional<TrunkChange> of(SetScene scene, RepResult rep, Flag flag) {
    Optional<Double> bottom = lean(rep);
    RepResult first = scene.reps().get(0);
    return switch (flag.baseline()) {
      case BOTTOM_OF_REP ->
          bottom.flatMap(
              b ->
                  nearest(scene, rep.bottomStartS(), rep.bottomEndS(), b)
                      .map(
                          s ->
                              new TrunkChange(
                                  Words.say("change.at-bottom"), b, s, b + flag.value())));
      case TOP_OF_REP ->
          bottom.flatMap(
              b ->
                  nearest(scene, rep.startS() - TOP_S, rep.startS(), b - flag.value())
                      .map(
                          s ->
                              new TrunkChange(Words.say("change.at-top"), b - flag.value(), s, b)));
      case FIRST_REP -> bottom.flatMap(b -> lean(first).flatMap(f -> since(scene, first, f, b)));
      case OTHER -> Optional.empty();
    };
  }

  private static Optional<TrunkChange> since(
      SetScene scene, RepResult first, double before, double now) {
    return nearest(scene, first.bottomStartS(), first.bottomEndS(), before)
        .map(s -> new TrunkChange(Words.say("change.in-rep", first.rep()), before, s, now));
  }

  private static Optional<Double> lean(RepResult rep) {
    return rep.at(Measure.TRUNK_LEAN).measured().map(Reading.Measured::value);
  }

  /** The look within a time that shows a lean best: a reading is a middle of several. */
  private static Optional<Double> nearest(SetScene scene, double fromS, double toS, double deg) {
    return IntStream.range(0, scene.series().rows())
        .filter(row -> scene.series().timeS(row) >= fromS && scene.series().timeS(row) <= toS)
        .filter(row -> scene.series().value(Column.TRUNK_LEAN, row).isPresent())
        .boxed()
        .min(
            java.util.Comparator.comparingDouble(
                row -> Math.abs(scene.series().value(Column.TRUNK_LEAN, row).getAsDouble() - deg)))
        .map(row -> scene.series().timeS(row));
  }

  /** For the small line under a title, for example {@code trunk 11° at the bottom, now 27°}. */
  String words() {
    return Words.say("change.trunk", wasWords(), nowWords());
  }

  String wasWords() {
    return Words.say("change.was", wasDeg, was);
  }

  String nowWords() {
    return Words.say("change.now", nowDeg);
  }
}
