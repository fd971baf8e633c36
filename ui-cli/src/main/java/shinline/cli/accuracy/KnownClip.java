package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.ClipReport.Footage;
import shinline.cli.text.RefusalWords;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.fault.RepEvidence;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;

/**
 * A clip with truth that was looked at once. What was seen is kept, so that it can be measured
 * again with another calibration.
 *
 * @param shipped its score with the calibration that the program is shipped with
 * @param joints empty when the truth does not tell where joint centres are seen in the picture
 */
record KnownClip(ClipScore shipped, Footage footage, Optional<Joints> joints) {

  /** Landmarks, cleaned and square but not corrected, and the true joint centres. */
  record Joints(CleanTrack landmarks, CleanTrack centres) {}

  static KnownClip of(ClipScore shipped, SetResult set, Footage footage, Calibration calibration) {
    // The truth's pixels are those of each frame, a steadied track's those of the still view.
    boolean still = set.setUp().cameraHold() != SetUp.CameraHold.STEADIED;
    return new KnownClip(
        shipped, footage, still ? joints(shipped.truth(), footage, calibration) : Optional.empty());
  }

  private static Optional<Joints> joints(Truth truth, Footage footage, Calibration calibration) {
    return new SetAnalysis(calibration)
        .landmarks(footage.track(), footage.request(), footage.seen())
        .flatMap(
            found ->
                TrueTrack.of(truth, footage.track(), found.track())
                    .map(
                        centres ->
                            new Joints(
                                found.track().toSagittalPlane(found.view()),
                                centres.toSagittalPlane(found.view()))));
  }

  Truth truth() {
    return shipped.truth();
  }

  /** The score of the same looks with another calibration. */
  ClipScore measured(Calibration calibration) {
    return new SetAnalysis(calibration)
        .measure(footage.track(), footage.request(), footage.seen())
        .fold(
            measured -> ClipScore.of(truth(), measured.set()),
            not -> ClipScore.nothing(truth(), RefusalWords.reason(not.why())));
  }

  /** What faults are judged by, rep by rep; empty when no set could be measured. */
  List<RepEvidence> evidence(Calibration calibration) {
    return new SetAnalysis(calibration)
        .evidence(footage.track(), footage.request(), footage.seen());
  }

  /**
   * @return the faults put into the rep around each told bottom; empty for a rep that is none
   */
  List<Optional<TrueRep>> trueReps(List<RepEvidence> told) {
    List<Optional<TrueRep>> all = ClipScore.trueReps(truth(), new ArrayList<>());
    return told.stream()
        .map(
            rep -> {
              int k = ClipScore.nearest(all, rep.bottomS());
              return k < 0 ? Optional.<TrueRep>empty() : all.get(k);
            })
        .toList();
  }
}
