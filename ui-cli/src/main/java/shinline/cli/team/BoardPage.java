package shinline.cli.team;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shinline.cli.advice.AdviceWords;
import shinline.cli.finding.ClipFinding;
import shinline.cli.report.Markup;
import shinline.cli.words.Words;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/**
 * The page for the wall: the last set filmed, to be read from two metres, and the few before. No
 * intervals, and nothing of pain.
 */
public final class BoardPage {
  private static final int REFRESH_S = 5;
  private static final int BEFORE = 4;

  private BoardPage() {}

  /** A filmed set of an athlete. */
  private record Filmed(AthleteSession athlete, SetOutcome set, SetEntry entry, Instant at) {}

  public static String of(SessionView session) {
    Page page =
        new Page(
            session, "board", Words.say("board.title", session.folder()), Optional.of(REFRESH_S));
    Markup out = page.out();
    List<Filmed> sets = filmed(session);
    if (sets.isEmpty()) {
      out.leaf("p", Words.say("board.waiting"), "class", "waiting");
      return page.done();
    }
    last(page, sets.get(sets.size() - 1), sets);
    out.open("ul", "class", "before");
    for (int i = sets.size() - 2; i >= Math.max(0, sets.size() - 1 - BEFORE); i--) {
      out.leaf("li", Words.say("board.before", who(sets.get(i)), clean(sets.get(i))));
    }
    out.close();
    return page.done();
  }

  private static List<Filmed> filmed(SessionView session) {
    return session.athletes().stream()
        .flatMap(
            a ->
                a.sets().stream()
                    .filter(s -> s.filmed().isPresent() && s.entry().isPresent())
                    .map(s -> new Filmed(a, s, s.entry().get(), s.filmed().get())))
        .sorted(Comparator.comparing(Filmed::at).thenComparing(f -> f.set().planned().row()))
        .toList();
  }

  private static void last(Page page, Filmed last, List<Filmed> all) {
    Markup out = page.out();
    out.leaf("h1", who(last));
    out.leaf("p", clean(last), "class", "clean");
    BoardSignal signal =
        BoardSignal.of(
            all.stream()
                .filter(f -> f.athlete() == last.athlete() && f.set().leg() == last.set().leg())
                .map(Filmed::entry)
                .filter(e -> e.date().equals(last.entry().date()))
                .toList(),
            last.athlete().advice().advice().decision());
    out.leaf(
        "p",
        Words.of(signal, "name"),
        "class",
        "signal signal-" + signal.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    Optional<ClipFinding> finding = last.set().finding();
    finding.flatMap(ClipFinding::cue).ifPresent(cue -> out.leaf("p", cue, "class", "cue"));
    out.open("div", "class", "bottoms");
    finding.ifPresent(
        f -> {
          bottom(page, f.files().best(), Words.say("board.best"));
          bottom(page, f.files().worst(), Words.say("board.worst"));
        });
    out.close();
  }

  private static void bottom(Page page, Optional<String> picture, String caption) {
    if (picture.isPresent()) {
      page.out().open("figure");
      page.picture(picture, caption, "bottom");
      page.out().leaf("figcaption", caption).close();
    }
  }

  private static String who(Filmed set) {
    return Words.say("board.who", set.athlete().name().written(), AdviceWords.leg(set.set().leg()));
  }

  private static String clean(Filmed set) {
    SetCounts counts = set.entry().counts();
    return Words.say("board.clean", counts.cleanReps(), counts.judged());
  }
}
