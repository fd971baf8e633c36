package shinline.metrics.judgement;

import java.util.List;
import java.util.Optional;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.target.Target;

/**
 * Judges a rep's readings against the day's target.
 *
 * <p>Each limit is judged alone. With d the distance of the value beyond the nearest end of the
 * allowed range (negative inside), ± the half width of the value's 95 % interval, and k {@link
 * JudgeParameters#straddleShare()}:
 *
 * <ol>
 *   <li>|d| &lt; k·± : unclear, the value's side of the limit is open;
 *   <li>d ≤ 0 : met;
 *   <li>d ≤ the coach's margin : near;
 *   <li>else : miss.
 * </ol>
 *
 * <p>A wider ± can therefore only take a verdict away, never change it into another. The border
 * between near and miss is the coach's own courtesy, so the bare value decides there. A limit whose
 * reading is missing is unclear, with the reading's reason; how limits make a rep: {@link
 * RepJudgement}.
 */
public final class RepJudge {
  private final List<Asked> asked;
  private final JudgeParameters parameters;

  public RepJudge(Target target, JudgeParameters parameters) {
    asked = Asked.of(target);
    this.parameters = parameters;
  }

  /** Judges one rep. Pure; throws nothing for any readings. */
  public RepJudgement judge(RepReadings rep) {
    return new RepJudgement(
        rep.rep(), asked.size(), asked.stream().flatMap(a -> finding(a, rep).stream()).toList());
  }

  /** A rep of which too little was seen to hold it to anything. */
  public RepJudgement notJudged(int rep, RepJudgement.NotJudged why) {
    return RepJudgement.none(rep, asked.size(), why);
  }

  private Optional<Finding> finding(Asked one, RepReadings rep) {
    return one.fold(
        within -> finding(within.limit(), rep),
        ofRange ->
            rep.shortRange() == (ofRange.range() == Finding.Range.SHORT)
                ? Optional.empty()
                : Optional.of(new Finding.WrongRange(ofRange.range())));
  }

  private Optional<Finding> finding(Limit limit, RepReadings rep) {
    Reading reading = rep.at(limit.aspect());
    // The last rep of a set has no next rep to rest for: a missing top is not held against it.
    if (limit.aspect() == Aspect.TOP && reading.measured().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        reading.fold(
            measured -> against(limit, measured),
            missing ->
                new Finding.Unmeasured(
                    limit,
                    missing.gap(),
                    limit.aspect() == Aspect.KNEE
                        ? rep.at(Measure.KNEE_PAST_TOE_FOOT).measured().map(Reading.Measured::value)
                        : Optional.empty())));
  }

  private Finding against(Limit limit, Reading.Measured measured) {
    double beyond = limit.beyond(measured.value());
    Limit.End end = limit.nearestEnd(measured.value());
    if (Math.abs(beyond) < parameters.straddleShare() * measured.plusMinus()) {
      return new Finding.TooClose(limit, end, beyond, measured.plusMinus());
    }
    return beyond <= 0
        ? new Finding.Met(limit)
        : new Finding.Outside(limit, end, beyond, measured.plusMinus());
  }
}
