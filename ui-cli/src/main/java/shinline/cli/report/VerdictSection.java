package shinline.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.FlagWords;
import shinline.cli.text.Headline;
import shinline.cli.text.JudgementWords;
import shinline.cli.text.NothingFound;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.WorkOn;

/** The first thing read: how the set went, rep by rep at a glance, and what to change. */
final class VerdictSection {
  private VerdictSection() {}

  static void write(Markup page, ClipReport.Measured report) {
    SetResult set = report.set();
    page.open("header");
    page.leaf("p", origin(report), "class", "origin").line();
    page.leaf("h1", sentence(Headline.of(set))).line();
    strip(page, set.reps());
    page.end();
    workOn(page, set);
  }

  private static String origin(ClipReport.Measured report) {
    SetUp setUp = report.set().setUp();
    return Words.say(
        "report.origin",
        PrintedName.of(report.clip().fileName()),
        Words.of(setUp.frontLeg(), "name"),
        Words.of(setUp.rearFoot(), "name"));
  }

  private static void strip(Markup page, List<RepResult> reps) {
    page.open("ol", "class", "strip", "aria-label", Words.say("report.strip"));
    for (RepResult rep : reps) {
      Mark mark = Mark.of(rep);
      page.open("li");
      page.open("a", "href", "#rep-" + rep.rep(), "class", mark.styleClass());
      page.leaf("b", Words.say("report.rep", rep.rep()));
      page.text(" ");
      page.leaf("span", mark.sign(), "class", "sign", "aria-hidden", "true");
      page.leaf("span", " " + mark.word(), "class", "word");
      long faults = rep.flags().stream().map(Flag::kind).distinct().count();
      if (faults > 0) {
        page.leaf("span", Words.say("report.strip.faults", faults), "class", "faults");
      }
      page.close().close();
    }
    page.end();
  }

  private static void workOn(Markup page, SetResult set) {
    List<WorkOn> things = WorkOn.of(set.reps());
    page.open("section", "aria-labelledby", "work-on");
    page.leaf(
        "h2",
        switch (things.size()) {
          case 0 -> Words.say(nothingHeading(set));
          case 1 -> Words.say("report.work-on.one");
          default -> Words.say("report.work-on.two");
        },
        "id",
        "work-on");
    if (things.isEmpty()) {
      page.leaf("p", nothing(set), "class", "lead");
    } else {
      page.open("ol", "class", "cues");
      things.forEach(thing -> cue(page, thing));
      page.close();
      page.leaf("p", Words.say("report.cues.practice"), "class", "note");
    }
    page.end();
  }

  private static String nothingHeading(SetResult set) {
    if (set.hits().isEmpty()) {
      return "report.work-on.no-target";
    }
    return allHit(set) ? "report.work-on.nothing" : "report.work-on.reasons";
  }

  private static String nothing(SetResult set) {
    String found = sentence(NothingFound.of(set).orElseThrow());
    List<RepResult> missed = with(set, Verdict.MISS, Verdict.NEAR);
    if (!missed.isEmpty()) {
      return notAsAsked("report.no-fault.missed", found, missed);
    }
    List<RepResult> open = with(set, Verdict.UNCLEAR);
    if (!open.isEmpty()) {
      return notAsAsked("report.no-fault.unclear", found, open);
    }
    return allHit(set) && set.unseen().isEmpty() ? Words.say("report.no-fault", found) : found;
  }

  /** Which reps, and the first one's reason as the example. */
  private static String notAsAsked(String key, String found, List<RepResult> reps) {
    RepResult first = reps.get(0);
    return Words.say(
        key, found, reps(numbers(reps)), first.rep(), JudgementWords.reasons(first).get(0));
  }

  private static boolean allHit(SetResult set) {
    return set.hits().equals(Optional.of((long) set.reps().size()));
  }

  /** The reps with one of these verdicts and a reason to give for it. */
  private static List<RepResult> with(SetResult set, Verdict... verdicts) {
    return set.reps().stream()
        .filter(
            r ->
                r.verdict().filter(List.of(verdicts)::contains).isPresent()
                    && !JudgementWords.reasons(r).isEmpty())
        .toList();
  }

  private static List<Integer> numbers(List<RepResult> reps) {
    return reps.stream().map(RepResult::rep).toList();
  }

  private static void cue(Markup page, WorkOn thing) {
    Flag worst = thing.worst();
    page.open("li");
    page.leaf("h3", Cue.title(worst));
    page.leaf("p", Cue.sentence(worst), "class", "lead");
    page.open("p", "class", "why");
    page.words(
        "report.cue.why",
        p -> p.text(reps(thing.reps())),
        p -> p.text(FlagWords.of(thing.kind())),
        p -> against(p, worst));
    page.close().close();
  }

  /** The value of a flag beside its limit. */
  static void against(Markup page, Flag flag) {
    page.words(
        Cue.wantsMore(flag) ? "report.against.least" : "report.against.most",
        p -> p.text(Cue.counts(flag)),
        p -> Figure.quantity(p, flag.value(), flag.unit()),
        p -> Figure.quantity(p, flag.limit(), flag.unit()));
  }

  private static String reps(List<Integer> reps) {
    String words = Headline.reps(reps);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Capital first letter and a full stop. */
  static String sentence(String text) {
    if (text.isEmpty()) {
      return text;
    }
    String start = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }
}
