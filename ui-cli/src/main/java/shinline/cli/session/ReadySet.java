package shinline.cli.session;

import java.nio.file.Path;
import java.util.Optional;
import shinline.cli.check.CheckOptions;
import shinline.cli.sheet.PlannedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/**
 * A row of the sheet with its defaults filled in.
 *
 * @param clip empty for a set judged by eye
 * @param planning everything but the counts, which are those by eye or none
 * @param options how the clip is measured
 */
record ReadySet(PlannedSet planned, Optional<Path> clip, SetEntry planning, CheckOptions options) {

  SetEntry entry(SetCounts counts) {
    return new SetEntry(
        planning.date(),
        planning.leg(),
        planning.step(),
        planning.purpose(),
        planning.asked(),
        planning.load(),
        planning.pain(),
        counts);
  }

  /** Counted by eye, where the coach did. */
  Optional<SetCounts> byEye() {
    return planned
        .seen()
        .doneReps()
        .flatMap(done -> planned.seen().cleanReps().map(clean -> SetCounts.byHand(done, clean)));
  }
}
