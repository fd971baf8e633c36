package shinline.cli.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.words.Words;
import shinline.metrics.fault.Form;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.WorkOn;

/**
 * The one sentence on a set, the same in the terminal, on the page and in the JSON: how it stands
 * against its target, and the fault that matters most.
 */
public final class Headline {
  private Headline() {}

  /** Without a full stop. */
  public static String of(SetResult set) {
    String summary = SummaryWords.of(set.summary());
    return alsoSeen(set)
        .map(fault -> Words.say("headline.and-fault", summary, fault))
        .orElse(summary);
  }

  /** A set on target is not a good set while the back or the foot gives way: one fault is named. */
  private static Optional<String> alsoSeen(SetResult set) {
    return WorkOn.of(set.reps()).stream()
        .filter(thing -> !saidAlready(thing, set))
        .findFirst()
        .map(thing -> Words.say("headline.fault", FlagWords.of(thing.kind()), reps(thing.reps())));
  }

  /** The summary speaks of shin and depth itself, where they were asked for. */
  private static boolean saidAlready(WorkOn thing, SetResult set) {
    return thing.kind().form() == Form.TARGET
        || thing.kind().form() == Form.DEPTH
            && set.reps().stream()
                .filter(r -> thing.reps().contains(r.rep()))
                .anyMatch(r -> r.verdict().equals(Optional.of(Verdict.MISS)));
  }

  /** The same, or {@code every rep} when it is all of several. */
  static String reps(List<Integer> reps, int all) {
    return reps.size() == all && all > 1 ? Words.say("summary.every-rep") : reps(reps);
  }

  /** For example {@code reps 1, 3 and 5}. */
  public static String reps(List<Integer> reps) {
    int last = reps.size() - 1;
    return last == 0
        ? Words.say("reps.one", reps.get(0))
        : Words.say(
            "reps.several",
            reps.subList(0, last).stream().map(String::valueOf).collect(Collectors.joining(", ")),
            reps.get(last));
  }
}
