package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;

/** The section on verdicts: for each target how many are right, unclear or wrong. */
record VerdictTable(Accuracy all) {
  /** Share of the counted reps whose verdict is to be right. */
  private static final double GOAL = 0.95;

  /** One line for the terminal. */
  String line() {
    Count count = of(scores().filter(VerdictScore::counts).toList(), Optional.empty());
    return Words.say(
        "accuracy.line.verdicts",
        count.right(),
        count.n(),
        AskedTarget.ALL.size(),
        count.unclear(),
        count.wrong());
  }

  List<String> section() {
    List<String> page = new ArrayList<>();
    page.add("");
    page.add("## " + Words.say("accuracy.verdicts"));
    page.add("");
    page.add(
        Words.say(
            "accuracy.verdicts.how",
            Clearance.ASKED.deg(),
            Clearance.ASKED.cm(),
            Clearance.ASKED.s()));
    page.add("");
    page.add(Markdown.row(Words.lines("accuracy.verdicts.head").toArray(String[]::new)));
    page.add(Markdown.rule(2, 7));
    for (AskedTarget asked : AskedTarget.ALL) {
      List<VerdictScore> of =
          scores().filter(VerdictScore::counts).filter(s -> s.asked().equals(asked)).toList();
      page.add(
          row(asked.name(), Words.say("accuracy.verdicts.rep"), of(of, Optional.empty()), goal()));
      Set<Aspect> aspects = EnumSet.noneOf(Aspect.class);
      of.forEach(s -> s.aspect().ifPresent(aspects::add));
      for (Aspect aspect : aspects) {
        page.add(row("", Words.of(aspect, "name"), of(of, Optional.of(aspect)), Markdown.NONE));
      }
    }
    page.add("");
    page.add(everyRep());
    List<String> off = all.clips().stream().flatMap(VerdictTable::notRight).toList();
    if (!off.isEmpty()) {
      page.add("");
      page.addAll(off);
    }
    return page;
  }

  private String everyRep() {
    Count count = of(scores().toList(), Optional.empty());
    return Words.say(
        "accuracy.verdicts.all", count.n(), count.right(), count.unclear(), count.wrong());
  }

  private Stream<VerdictScore> scores() {
    return all.clips().stream().flatMap(c -> c.verdicts().stream());
  }

  private static Count of(List<VerdictScore> scores, Optional<Aspect> aspect) {
    return new Count(scores.stream().filter(s -> s.aspect().equals(aspect)).toList());
  }

  private static Stream<String> notRight(ClipScore clip) {
    return clip.verdicts().stream()
        .filter(s -> s.counts() && s.aspect().isEmpty() && !s.right())
        .map(s -> "- " + notRight(clip.truth().clip(), s));
  }

  private static String notRight(String clip, VerdictScore score) {
    String asked = score.asked().name();
    String is = Words.of(score.is(), "name");
    return score
        .told()
        .map(
            told ->
                Words.say(
                    "accuracy.verdict.other", clip, score.rep(), asked, is, Words.of(told, "name")))
        .orElseGet(() -> Words.say("accuracy.verdict.no-rep", clip, score.rep(), asked, is));
  }

  private static String goal() {
    return "≥ " + Markdown.percent(GOAL);
  }

  private static String row(String target, String judged, Count count, String goal) {
    return Markdown.row(
        target,
        judged,
        String.valueOf(count.n()),
        String.valueOf(count.right()),
        String.valueOf(count.unclear()),
        String.valueOf(count.wrong()),
        String.valueOf(count.n() - count.right() - count.unclear() - count.wrong()),
        count.n() == 0 ? Markdown.NONE : Markdown.percent((double) count.right() / count.n()),
        goal);
  }

  private record Count(List<VerdictScore> scores) {
    int n() {
      return scores.size();
    }

    long right() {
      return scores.stream().filter(VerdictScore::right).count();
    }

    long unclear() {
      return scores.stream().filter(VerdictScore::unclear).count();
    }

    long wrong() {
      return scores.stream().filter(VerdictScore::wrong).count();
    }
  }
}
