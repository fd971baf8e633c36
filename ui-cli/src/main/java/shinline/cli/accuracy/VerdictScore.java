package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.judgement.JudgeParameters;
import shinline.metrics.judgement.RepJudge;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.Verdict;

/**
 * A verdict against the one that the true values earn by the same rules.
 *
 * @param rep number from 1, of the truth
 * @param aspect the limit that was judged; empty for the rep as a whole
 * @param is what the true values earn
 * @param told empty when the rep was not found
 * @param counts whether no limit that decides is within the clearance of the true values
 */
record VerdictScore(
    AskedTarget asked,
    int rep,
    Optional<Aspect> aspect,
    Verdict is,
    Optional<Verdict> told,
    boolean counts) {

  /** Takes the bare value: truth has no ±. */
  private static final JudgeParameters BARE = new JudgeParameters(0);

  /** Calls only what lies farther from the limit than the whole clearance. */
  private static final JudgeParameters CLEAR = new JudgeParameters(1);

  boolean right() {
    return told.equals(Optional.of(is));
  }

  boolean unclear() {
    return told.equals(Optional.of(Verdict.UNCLEAR));
  }

  /** Another verdict was told, and none that leaves it open. */
  boolean wrong() {
    return told.isPresent() && !right() && !unclear();
  }

  /**
   * The verdict on the rep and the one on each of the target's limits. One limit clearly missed
   * settles the rep, so the others do not decide then.
   */
  static List<VerdictScore> of(
      AskedTarget asked, int rep, TrueRep truth, Optional<RepReadings> told) {
    RepReadings around = truth.readings(rep, Clearance.ASKED);
    RepJudgement is = new RepJudge(asked.target(), BARE).judge(around);
    RepJudgement clear = new RepJudge(asked.target(), CLEAR).judge(around);
    Optional<RepJudgement> said =
        told.map(new RepJudge(asked.target(), JudgeParameters.standard())::judge);
    List<VerdictScore> scores = new ArrayList<>();
    scores.add(
        new VerdictScore(
            asked,
            rep,
            Optional.empty(),
            is.verdict().orElseThrow(),
            said.flatMap(RepJudgement::verdict),
            !clear.verdict().equals(Optional.of(Verdict.UNCLEAR))));
    for (Finding finding : is.findings()) {
      finding
          .aspect()
          .ifPresent(
              aspect ->
                  scores.add(
                      new VerdictScore(
                          asked,
                          rep,
                          Optional.of(aspect),
                          finding.verdict(),
                          said.flatMap(s -> verdict(s, aspect)),
                          verdict(clear, aspect).filter(v -> v != Verdict.UNCLEAR).isPresent())));
    }
    return scores;
  }

  private static Optional<Verdict> verdict(RepJudgement judgement, Aspect aspect) {
    return judgement.findings().stream()
        .filter(f -> f.aspect().equals(Optional.of(aspect)))
        .map(Finding::verdict)
        .findFirst();
  }
}
