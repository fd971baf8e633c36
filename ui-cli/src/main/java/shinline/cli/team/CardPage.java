package shinline.cli.team;

import java.util.List;
import java.util.Optional;
import shinline.cli.advice.AdviceWords;
import shinline.cli.record.Overrule;
import shinline.cli.report.Markup;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.advice.Prescription;

/**
 * Cards for athletes, four a printed sheet. Nothing of pain is on them: an athlete who has to stop
 * gets none.
 */
public final class CardPage {
  private static final int ON_A_SHEET = 4;

  private CardPage() {}

  public static String of(SessionView session) {
    Page page =
        new Page(session, "cards", Words.say("cards.title", session.folder()), Optional.empty());
    Markup out = page.out();
    List<AthleteSession> athletes =
        session.athletes().stream()
            .filter(a -> a.advice().advice().prescription().isPresent())
            .sorted(java.util.Comparator.comparing(a -> a.name().key()))
            .toList();
    for (int i = 0; i < athletes.size(); i += ON_A_SHEET) {
      out.open("section", "class", "sheet");
      athletes
          .subList(i, Math.min(i + ON_A_SHEET, athletes.size()))
          .forEach(a -> card(page, a, a.advice().advice().prescription().orElseThrow()));
      out.end();
    }
    if (athletes.isEmpty()) {
      out.leaf("p", Words.say("cards.none"));
    }
    return page.done();
  }

  private static void card(Page page, AthleteSession athlete, Prescription next) {
    Markup out = page.out();
    Advice advice = athlete.advice().advice();
    out.open("article", "class", "card");
    page.inventedInShort();
    out.leaf("h2", athlete.name().written());
    page.picture(
        athlete.pictured(athlete.sets()).flatMap(f -> f.files().best()),
        Words.say("cards.picture"),
        "best");
    Optional<String> instead =
        athlete.advice().overrule().map(Overrule::instead).filter(i -> !i.isBlank());
    if (instead.isPresent()) {
      out.leaf("p", Words.say("cards.coach", instead.get()), "class", "load");
    } else {
      out.leaf("p", load(next), "class", "load");
      out.leaf(
          "p",
          Words.say("cards.scheme", next.scheme().sets(), next.scheme().reps()),
          "class",
          "scheme");
      out.leaf("p", Words.say("cards.level", next.step(), next.target()));
      next.tempo().ifPresent(t -> out.leaf("p", Words.say("cards.tempo", t)));
    }
    athlete.cue().ifPresent(c -> out.leaf("p", c, "class", "cue"));
    out.leaf("p", Words.say("cards.until", advice.goodUntil()), "class", "note");
    out.leaf("p", Words.say("cards.caution"), "class", "note");
    out.end();
  }

  private static String load(Prescription next) {
    return next.load().map(AdviceWords::load).orElse(Words.say("advice.load.none"));
  }

  /** A tempo is one word: with its hyphens unbreakable it stays on one line. */
  private static String unbroken(String tempo) {
    return tempo.replace('-', '\u2011');
  }

  /** A prescription in one line. */
  static String prescription(Prescription next) {
    return Words.say(
        "advice.prescription",
        next.step(),
        next.target(),
        next.scheme().sets(),
        next.scheme().reps(),
        next.tempo().map(t -> Words.say("advice.tempo", unbroken(t))).orElse(""),
        load(next));
  }
}
