package shinline.cli.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;

/** Why a rep has its verdict: amount, direction and limit, in plain words. */
public final class JudgementWords {
  private JudgementWords() {}

  /** For every limit that is not met, worst first; or why none is judged; empty for a hit. */
  public static List<String> reasons(RepResult rep) {
    return reasons(rep.judgement());
  }

  /** The same of a judgement alone. */
  public static List<String> reasons(RepJudgement judgement) {
    if (judgement.notJudged().isPresent()) {
      return List.of(Words.of(judgement.notJudged().get(), "reason"));
    }
    return judgement.findings().stream().flatMap(f -> reason(f).stream()).toList();
  }

  /** The same where the limits stand close by, so that only amount and direction are told. */
  public static List<String> brief(RepResult rep) {
    if (rep.judgement().notJudged().isPresent()) {
      return reasons(rep);
    }
    return rep.judgement().findings().stream()
        .flatMap(
            f ->
                f instanceof Finding.Outside outside
                    ? Stream.of(brief(outside))
                    : reason(f).stream())
        .toList();
  }

  private static String brief(Finding.Outside finding) {
    return Words.say(
        "finding.outside",
        name(finding.limit()),
        Amount.of(finding.by(), finding.limit().unit()),
        side(finding.limit().aspect(), finding.end()));
  }

  /** Empty for a limit that is met. */
  static Optional<String> reason(Finding finding) {
    return finding.fold(
        met -> Optional.empty(),
        f ->
            Optional.of(
                Words.say(
                    "finding.outside.reason",
                    name(f.limit()),
                    Amount.of(f.by(), f.limit().unit()),
                    beyond(f.limit(), f.end()),
                    bound(f.limit(), f.end()))),
        f ->
            Optional.of(
                Words.say(
                    f.beyond() > 0 ? "finding.too-close.outside" : "finding.too-close.inside",
                    name(f.limit()),
                    Amount.of(f.beyond(), f.limit().unit()),
                    bound(f.limit(), f.end()),
                    Amount.of(f.plusMinus(), f.limit().unit()))),
        f -> Optional.of(Words.say("finding.unmeasured.reason", name(f.limit()), why(f))),
        f -> Optional.of(Words.of(f.asked(), "missed")));
  }

  /** Words for a value outside the given end, for example {@code too high}. */
  static String side(Aspect aspect, Limit.End end) {
    return end == Limit.End.MIN ? Words.of(aspect, "below") : Words.of(aspect, "above");
  }

  static String name(Limit limit) {
    return Words.of(limit.aspect(), "name");
  }

  /** What is outside and to which side, for example {@code thigh too high}. */
  static String outside(Finding.Outside finding) {
    return Words.say(
        "finding.beyond", name(finding.limit()), beyond(finding.limit(), finding.end()));
  }

  static String tooClose(Finding.TooClose finding) {
    return Words.say("finding.too-close", name(finding.limit()));
  }

  private static String beyond(Limit limit, Limit.End end) {
    return limit
        .band()
        .map(
            band ->
                Words.say(
                    end == Limit.End.MIN ? "finding.short-of-band" : "finding.past-band", band))
        .orElseGet(() -> side(limit.aspect(), end));
  }

  private static String bound(Limit limit, Limit.End end) {
    return Words.say(
        end == Limit.End.MIN ? "range.at-least" : "range.at-most",
        Amount.signed(limit.bound(end), limit.unit()));
  }

  /** Says what is known without a scale, and how to get one. */
  static String why(Finding.Unmeasured finding) {
    return finding
        .kneePastToeFootPct()
        .map(
            percent ->
                Words.say(
                    percent < 0
                        ? "finding.knee-without-scale.behind"
                        : "finding.knee-without-scale",
                    Amount.signed(Math.rint(Math.abs(percent)), MeasureUnit.PERCENT_OF_FOOT)))
        .orElseGet(() -> Words.of(finding.gap(), "reason"));
  }
}
