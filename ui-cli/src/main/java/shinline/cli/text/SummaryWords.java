package shinline.cli.text;

import java.util.List;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.metrics.result.Finding;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.Verdict;

/**
 * A set in one plain sentence: how many reps met the target, and the one thing to work on. For
 * example "6 reps: 4 hit the over-toe target, 1 near, 1 missed; knee 12 cm short in rep 5".
 */
final class SummaryWords {
  private SummaryWords() {}

  /** Without a full stop. */
  static String of(SetSummary set) {
    if (set.reps() == 0) {
      return Words.say("summary.no-reps");
    }
    if (set.against().isEmpty()) {
      return Words.say("summary.no-target", set.reps());
    }
    SetSummary.Against against = set.against().get();
    String verdicts = Words.say("summary.reps", set.reps(), verdicts(set.reps(), against));
    return against
        .worst()
        .map(theme -> Words.say("summary.and-worst", verdicts, words(theme, set.reps())))
        .orElse(verdicts);
  }

  private static String verdicts(int reps, SetSummary.Against against) {
    String target =
        against
            .target()
            .map(name -> Words.say("summary.target.named", name))
            .orElseGet(() -> Words.say("summary.target"));
    if (reps == 1) {
      Verdict only = against.verdicts().keySet().iterator().next();
      return Words.of(only, "of-one", target);
    }
    for (Verdict verdict : Verdict.values()) {
      if (against.count(verdict) == reps) {
        return Words.of(verdict, "of-all", target);
      }
    }
    int hits = against.count(Verdict.HIT);
    String first =
        hits == 0
            ? Words.say("summary.none-hit", target)
            : Words.of(Verdict.HIT, "count", hits, target);
    return String.join(
        ", ",
        Stream.concat(
                Stream.of(first),
                Stream.of(Verdict.NEAR, Verdict.MISS, Verdict.UNCLEAR)
                    .filter(verdict -> against.count(verdict) > 0)
                    .map(verdict -> Words.of(verdict, "count", against.count(verdict), target)))
            .toList());
  }

  private static String words(SetSummary.Theme theme, int all) {
    List<Integer> reps = theme.reps();
    return Words.say("summary.worst", what(theme.example(), reps.size()), Headline.reps(reps, all));
  }

  private static String what(Finding example, int reps) {
    return example.fold(
        met -> JudgementWords.name(met.limit()),
        f ->
            Words.say(
                reps > 1 ? "finding.outside.up-to" : "finding.outside",
                JudgementWords.name(f.limit()),
                Amount.of(f.by(), f.limit().unit()),
                JudgementWords.side(f.limit().aspect(), f.end())),
        f -> Words.say("finding.too-close", JudgementWords.name(f.limit())),
        f -> Words.say("finding.unmeasured", JudgementWords.name(f.limit())),
        f -> Words.of(f.asked(), "instead"));
  }
}
