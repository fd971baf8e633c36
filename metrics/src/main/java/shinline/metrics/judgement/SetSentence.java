package shinline.metrics.judgement;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shinline.metrics.result.Amount;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.Verdict;
import shinline.metrics.target.Target;

/**
 * The set in one plain sentence: how many reps met the target, and the one thing to work on.
 *
 * <p>For example "6 reps: 4 hit the over-toe target, 1 near, 1 missed; knee 12 cm short in rep 5".
 * The one thing is the worst kind of finding there is (miss, then unclear, then near); of several,
 * the one in most reps; of those, the one furthest out against the coach's margin.
 */
public final class SetSentence {
  private static final Set<Aspect> DEPTH =
      EnumSet.of(Aspect.THIGH, Aspect.REAR_KNEE, Aspect.HIP_TRAVEL);

  private SetSentence() {}

  /** One sentence without a full stop; an empty list of reps gives "no reps". */
  public static String of(Target target, List<RepJudgement> reps) {
    if (reps.isEmpty()) {
      return "no reps";
    }
    String count = reps.size() == 1 ? "1 rep" : reps.size() + " reps";
    if (Asked.of(target).isEmpty()) {
      return count + " measured, no target set";
    }
    String sentence = count + ": " + verdicts(target, reps);
    return worst(reps).map(t -> sentence + "; " + t.words(reps)).orElse(sentence);
  }

  private static boolean asksNoDepth(Target target) {
    return Asked.of(target).stream()
        .allMatch(asked -> asked.aspect().filter(a -> !DEPTH.contains(a)).isPresent());
  }

  private static String name(Target target) {
    return target
        .shin()
        .map(shin -> "the " + shin.name() + " target")
        .orElse(asksNoDepth(target) ? "the target" : "the " + target.depth().name() + " target");
  }

  private static String verdicts(Target target, List<RepJudgement> reps) {
    if (reps.size() == 1) {
      Verdict only = reps.get(0).verdict();
      return word(only) + (only == Verdict.UNCLEAR ? " against " : " ") + name(target);
    }
    long hits = count(reps, Verdict.HIT);
    if (hits == reps.size()) {
      return "all hit " + name(target);
    }
    List<String> parts = new ArrayList<>();
    parts.add((hits == 0 ? "none" : Long.toString(hits)) + " hit " + name(target));
    for (Verdict verdict : List.of(Verdict.NEAR, Verdict.MISS, Verdict.UNCLEAR)) {
      long n = count(reps, verdict);
      if (n > 0) {
        parts.add(n + " " + word(verdict));
      }
    }
    return String.join(", ", parts);
  }

  private static long count(List<RepJudgement> reps, Verdict verdict) {
    return reps.stream().filter(r -> r.verdict() == verdict).count();
  }

  private static String word(Verdict verdict) {
    return switch (verdict) {
      case HIT -> "hit";
      case NEAR -> "near";
      case MISS -> "missed";
      case UNCLEAR -> "unclear";
    };
  }

  private static Optional<Theme> worst(List<RepJudgement> reps) {
    Map<String, Theme> themes = new LinkedHashMap<>();
    for (RepJudgement rep : reps) {
      for (Finding finding : rep.findings()) {
        if (finding.verdict() != Verdict.HIT) {
          themes
              .computeIfAbsent(
                  finding.verdict() + " " + topic(finding), k -> new Theme(finding.verdict()))
              .add(rep.rep(), finding);
        }
      }
    }
    return themes.values().stream().reduce((a, b) -> b.worseThan(a) ? b : a);
  }

  /** What the finding is about, without its amount. */
  private static String topic(Finding finding) {
    return finding.fold(
        met -> met.limit().aspect().noun(),
        f -> f.limit().aspect().noun() + " " + f.limit().aspect().outside(f.end()),
        f -> f.limit().aspect().noun() + " too close to call",
        f -> f.limit().aspect().noun() + " not measured",
        f ->
            f.asked() == Finding.Range.FULL
                ? "short range instead of full"
                : "full range instead of short");
  }

  /** Findings of one kind, over the reps that show it. */
  private static final class Theme {
    private final Verdict verdict;
    private final List<Integer> reps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Theme(Verdict verdict) {
      this.verdict = verdict;
    }

    void add(int rep, Finding finding) {
      reps.add(rep);
      findings.add(finding);
    }

    boolean worseThan(Theme other) {
      int severity = RepJudgement.severity(verdict);
      int others = RepJudgement.severity(other.verdict);
      if (severity != others) {
        return severity > others;
      }
      if (reps.size() != other.reps.size()) {
        return reps.size() > other.reps.size();
      }
      return furthest() > other.furthest();
    }

    /** Distance in margins, so that degrees, centimetres and seconds compare. */
    private double furthest() {
      return findings.stream()
          .map(Theme::outside)
          .flatMap(Optional::stream)
          .mapToDouble(f -> f.by() / Math.max(f.limit().margin(), Double.MIN_NORMAL))
          .max()
          .orElse(0);
    }

    private static Optional<Finding.Outside> outside(Finding finding) {
      return finding instanceof Finding.Outside f ? Optional.of(f) : Optional.empty();
    }

    String words(List<RepJudgement> all) {
      String where = reps.size() == all.size() && all.size() > 1 ? "every rep" : named(reps);
      return findings.stream()
              .map(Theme::outside)
              .flatMap(Optional::stream)
              .reduce((a, b) -> b.by() > a.by() ? b : a)
              .map(
                  f ->
                      "%s %s%s %s"
                          .formatted(
                              f.limit().aspect().noun(),
                              reps.size() > 1 ? "up to " : "",
                              Amount.of(f.by(), f.limit().unit()),
                              f.limit().aspect().outside(f.end())))
              .orElse(topic(findings.get(0)))
          + " in "
          + where;
    }

    private static String named(List<Integer> reps) {
      if (reps.size() == 1) {
        return "rep " + reps.get(0);
      }
      List<String> numbers = reps.stream().map(String::valueOf).toList();
      return "reps "
          + String.join(", ", numbers.subList(0, numbers.size() - 1))
          + " and "
          + numbers.get(numbers.size() - 1);
    }
  }
}
