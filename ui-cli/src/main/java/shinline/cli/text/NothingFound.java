package shinline.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.fault.Sight;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/** That no fault was found, said in one breath with what could not be judged. */
public final class NothingFound {
  private NothingFound() {}

  /** Without a full stop; empty when a fault was found. */
  public static Optional<String> of(SetResult set) {
    if (set.reps().isEmpty() || set.reps().stream().anyMatch(rep -> !rep.flags().isEmpty())) {
      return Optional.empty();
    }
    List<String> unseen = unseen(set);
    return Optional.of(
        unseen.isEmpty()
            ? Words.say("nothing-found")
            : Words.say("nothing-found.but", String.join(", ", unseen)));
  }

  /** What could not be judged, and in which reps when not in all. */
  private static List<String> unseen(SetResult set) {
    List<String> said = new ArrayList<>();
    for (Map.Entry<Sight, List<Integer>> entry : set.unseen().entrySet()) {
      String what = Words.of(entry.getKey(), "unseen");
      said.add(
          entry.getValue().size() == set.reps().size()
              ? what
              : Words.say("nothing-found.in-reps", what, Headline.reps(entry.getValue())));
    }
    List<Integer> notJudged =
        set.reps().stream()
            .filter(rep -> rep.judgement().notJudged().isPresent())
            .map(RepResult::rep)
            .toList();
    if (!notJudged.isEmpty()) {
      said.add(Words.say("nothing-found.not-judged", Headline.reps(notJudged)));
    }
    return said;
  }
}
