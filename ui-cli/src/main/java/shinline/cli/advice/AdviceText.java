package shinline.cli.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shinline.cli.record.LineText;
import shinline.cli.record.Overrule;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.advice.Because;
import shinline.metrics.advice.Prescription;

/** The advice as lines for the terminal. */
public final class AdviceText {
  private AdviceText() {}

  public static List<String> lines(GivenAdvice given) {
    Advice advice = given.advice();
    List<String> lines = new ArrayList<>();
    lines.add(
        Words.say(
            "advice.head",
            given.athlete().written(),
            advice.asOf(),
            Words.of(advice.decision(), "name")));
    given.overrule().ifPresent(o -> lines.add(indented(overruled(o))));
    advice.prescription().ifPresent(p -> prescription(p, advice, lines));
    lines.add("");
    lines.add(Words.say("advice.because"));
    List<String> told = List.of();
    for (Because because : advice.because()) {
      lines.add(indented(because(because, told)));
      told = because.lines();
    }
    advice.maximum().ifPresent(m -> lines.add(indented(AdviceWords.maximum(m))));
    if (!advice.missing().isEmpty()) {
      lines.add("");
      lines.add(Words.say("advice.missing"));
      AdviceWords.missing(advice).forEach(m -> lines.add(indented(m)));
    }
    lines.add("");
    lines.add(Words.say("advice.cautions.head"));
    AdviceWords.cautions().forEach(c -> lines.add(indented(c)));
    return lines;
  }

  private static void prescription(Prescription next, Advice advice, List<String> lines) {
    lines.add(
        indented(
            Words.say(
                "advice.prescription",
                next.step(),
                next.target(),
                next.scheme().sets(),
                next.scheme().reps(),
                next.tempo().map(t -> Words.say("advice.tempo", t)).orElse(""),
                next.load().map(AdviceWords::load).orElse(Words.say("advice.load.none")))));
    next.notes().forEach(n -> lines.add(indented(n)));
    advice.earliest().ifPresent(day -> lines.add(indented(Words.say("advice.earliest", day))));
    lines.add(indented(Words.say("advice.good-until", advice.goodUntil())));
  }

  /**
   * @param told lines named just before, which need no telling again
   */
  private static String because(Because because, List<String> told) {
    String rule = Words.of(because.rule(), "why");
    return because.lines().isEmpty() || because.lines().equals(told)
        ? rule
        : Words.say(
            "advice.because.lines",
            rule,
            because.lines().size(),
            because.lines().stream().map(LineText::shortId).collect(Collectors.joining(", ")));
  }

  private static String overruled(Overrule overrule) {
    return overrule.instead().isEmpty()
        ? Words.say("advice.overruled", overrule.date(), overrule.reason())
        : Words.say(
            "advice.overruled.instead", overrule.date(), overrule.reason(), overrule.instead());
  }

  private static String indented(String line) {
    return "  " + line;
  }
}
