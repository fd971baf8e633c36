package shinline.cli.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.WorkOn;

/**
 * The flags of a set as they are shown: the surest of each kind tells the story, the same again in
 * other reps is one tap away. What to work on comes first, the rest as it happened.
 */
public record Story(List<Shown> told, List<Shown> again) {
  /** A flag with the rep it belongs to. */
  public record Shown(int rep, Flag flag) {}

  public Story {
    told = List.copyOf(told);
    again = List.copyOf(again);
  }

  /** Of all flags of a set. */
  public static Story of(SetResult set) {
    List<FlagKind> first = WorkOn.of(set.reps()).stream().map(WorkOn::kind).toList();
    List<Shown> flags =
        set.reps().stream()
            .flatMap(Story::of)
            .sorted(Comparator.comparingInt(s -> place(first, s.flag().kind())))
            .toList();
    List<Shown> told = new ArrayList<>();
    for (Shown shown : flags) {
      if (told.stream().noneMatch(s -> s.flag().kind() == shown.flag().kind())) {
        told.add(surest(shown.flag().kind(), flags));
      }
    }
    List<Shown> again = new ArrayList<>(flags);
    again.removeAll(told);
    return new Story(told, again);
  }

  boolean tells(RepResult rep, Flag flag) {
    return told.contains(new Shown(rep.rep(), flag));
  }

  private static java.util.stream.Stream<Shown> of(RepResult rep) {
    return rep.flags().stream().map(flag -> new Shown(rep.rep(), flag));
  }

  private static int place(List<FlagKind> first, FlagKind kind) {
    int at = first.indexOf(kind);
    return at < 0 ? first.size() : at;
  }

  private static Shown surest(FlagKind kind, List<Shown> flags) {
    return flags.stream()
        .filter(s -> s.flag().kind() == kind)
        .max(Comparator.comparingDouble(s -> s.flag().confidence()))
        .orElseThrow();
  }
}
