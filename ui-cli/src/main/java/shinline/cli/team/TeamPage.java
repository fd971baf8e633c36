package shinline.cli.team;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.advice.AdviceWords;
import shinline.cli.finding.ClipFinding;
import shinline.cli.record.Overrule;
import shinline.cli.report.Markup;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** The coach's page: a row an athlete, those who need the coach first. Nobody is ranked. */
public final class TeamPage {
  private final SessionView session;
  private final Page page;
  private final Markup out;

  private TeamPage(SessionView session) {
    this.session = session;
    page = new Page(session, "team", Words.say("team.title", session.folder()), Optional.empty());
    out = page.out();
  }

  public static String of(SessionView session) {
    return new TeamPage(session).text();
  }

  private String text() {
    out.leaf("h1", Words.say("team.title", session.folder()));
    if (session.athletes().isEmpty()) {
      out.leaf("p", Words.say("team.nobody"));
    } else {
      athletes();
    }
    troubles();
    unclaimed();
    page.cautions();
    return page.done();
  }

  private void athletes() {
    out.open("table", "class", "athletes").open("thead").open("tr");
    for (String key :
        List.of("team.athlete", "team.left", "team.right", "team.next", "team.sign")) {
      out.leaf("th", Words.say(key), "scope", "col");
    }
    out.close().close().open("tbody");
    session.athletes().forEach(this::row);
    out.close().end();
  }

  private void row(AthleteSession athlete) {
    String need = athlete.need().name().toLowerCase(Locale.ROOT).replace('_', '-');
    out.open("tr", "class", "need-" + need);
    out.open("th", "scope", "row").leaf("span", athlete.name().written(), "class", "name");
    out.leaf("span", Words.of(athlete.need(), "name"), "class", "need");
    out.close();
    leg(athlete, Side.LEFT, Words.say("team.left"));
    leg(athlete, Side.RIGHT, Words.say("team.right"));
    next(athlete);
    out.open("td", "class", "sign", "data-heading", Words.say("team.sign"))
        .open("span", "class", "box")
        .close()
        .close();
    out.end();
  }

  /**
   * @param heading of its column, which a phone shows above each cell
   */
  private void leg(AthleteSession athlete, Side leg, String heading) {
    List<SetOutcome> sets = athlete.of(leg);
    out.open("td", "data-heading", heading);
    if (sets.isEmpty()) {
      out.leaf("p", Words.say("team.no-set"), "class", "none");
      out.close();
      return;
    }
    Optional<ClipFinding> pictured = athlete.pictured(sets);
    pictured.ifPresent(
        f ->
            page.picture(
                f.files().best(), Words.say("team.picture", AdviceWords.leg(leg)), "thumb"));
    List<SetEntry> known = sets.stream().flatMap(s -> s.entry().stream()).toList();
    if (!known.isEmpty()) {
      out.leaf("p", asked(known.get(known.size() - 1)), "class", "asked");
      int clean = known.stream().map(SetEntry::counts).mapToInt(SetCounts::cleanReps).sum();
      int judged = known.stream().map(SetEntry::counts).mapToInt(SetCounts::judged).sum();
      int reps = known.stream().map(SetEntry::counts).mapToInt(SetCounts::reps).sum();
      out.leaf(
          "p",
          Words.say(
              "team.done",
              known.stream().map(e -> "" + e.counts().reps()).collect(Collectors.joining(", "))));
      out.leaf("p", Words.say("team.clean", clean, judged), "class", "clean");
      if (judged < reps) {
        out.leaf("p", Words.say("team.not-judged", reps - judged), "class", "note");
      }
    }
    out.open("ul", "class", "sets");
    sets.forEach(this::set);
    out.close().close();
  }

  private static String asked(SetEntry entry) {
    String sets =
        entry.asked().sets().isPresent()
            ? Words.say("team.sets-reps", entry.asked().sets().getAsInt(), entry.asked().reps())
            : Words.say("team.reps", entry.asked().reps());
    return Words.say(
        "team.asked",
        sets,
        entry.asked().target(),
        entry.load().map(AdviceWords::load).orElse(Words.say("advice.load.none")));
  }

  private void set(SetOutcome set) {
    out.open("li");
    String name =
        set.planned().work().label().or(set.planned()::clip).orElse(Words.say("team.by-eye"));
    page.link(set.finding().flatMap(f -> f.files().page()), name);
    set.entry()
        .ifPresent(
            e -> out.text(Words.say("team.set", e.counts().cleanReps(), e.counts().judged())));
    set.finding()
        .filter(f -> f.state() != ClipFinding.State.MEASURED)
        .ifPresent(
            f -> out.leaf("span", Words.say("team.set.note", f.headline()), "class", "note"));
    set.notes().forEach(n -> out.leaf("span", Words.say("team.set.note", n), "class", "note"));
    out.close();
  }

  private void next(AthleteSession athlete) {
    Advice advice = athlete.advice().advice();
    out.open("td", "class", "next", "data-heading", Words.say("team.next"));
    out.leaf("p", Words.of(advice.decision(), "name"), "class", "decision");
    athlete.advice().overrule().ifPresent(o -> out.leaf("p", overruled(o), "class", "overruled"));
    advice.prescription().ifPresent(p -> out.leaf("p", CardPage.prescription(p)));
    for (String missing : AdviceWords.missing(advice)) {
      out.leaf("p", missing, "class", "note");
    }
    advice.earliest().ifPresent(d -> out.leaf("p", Words.say("advice.earliest", d)));
    if (advice.prescription().isPresent()) {
      out.leaf("p", Words.say("advice.good-until", advice.goodUntil()), "class", "note");
    }
    out.close();
  }

  private static String overruled(Overrule overrule) {
    return overrule.instead().isBlank()
        ? Words.say("advice.overruled", overrule.date(), overrule.reason())
        : Words.say(
            "advice.overruled.instead", overrule.date(), overrule.reason(), overrule.instead());
  }

  private void troubles() {
    if (session.troubles().isEmpty()) {
      return;
    }
    out.open("section").leaf("h2", Words.say("team.troubles")).open("ul");
    for (SessionView.Trouble trouble : session.troubles()) {
      out.leaf("li", Words.say("team.trouble", trouble.what(), trouble.reason(), trouble.toDo()));
    }
    out.close().end();
  }

  private void unclaimed() {
    if (session.withoutRow().isEmpty()) {
      return;
    }
    out.open("section").leaf("h2", Words.say("team.without-row")).open("ul");
    for (SessionView.Unclaimed clip : session.withoutRow()) {
      out.open("li");
      page.link(clip.finding().files().page(), clip.clip());
      out.text(Words.say("team.set.note", clip.finding().headline())).close();
    }
    out.close().end();
  }
}
