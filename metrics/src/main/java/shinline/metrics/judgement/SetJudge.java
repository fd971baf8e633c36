package shinline.metrics.judgement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.Verdict;
import shinline.metrics.target.Target;

/**
 * Sums a set up: how many reps met the target, and the one thing to work on.
 *
 * <p>The one thing is the worst kind of finding there is (miss, then unclear, then near); of
 * several, the one in most reps; of those, the one furthest out against the coach's margin.
 */
public final class SetJudge {
  private static final Set<Aspect> DEPTH =
      EnumSet.of(Aspect.THIGH, Aspect.REAR_KNEE, Aspect.HIP_TRAVEL);

  private SetJudge() {}

  /** How a set stands against a target. */
  public static SetSummary of(Target target, List<RepJudgement> reps) {
    if (reps.isEmpty() || Asked.of(target).isEmpty()) {
      return new SetSummary(reps.size(), Optional.empty());
    }
    Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
    reps.forEach(
        rep -> rep.verdict().ifPresent(verdict -> verdicts.merge(verdict, 1, Integer::sum)));
    return new SetSummary(
        reps.size(), Optional.of(new SetSummary.Against(name(target), verdicts, worst(reps))));
  }

  private static Optional<String> name(Target target) {
    return target
        .shin()
        .map(shin -> shin.name())
        .or(() -> asksNoDepth(target) ? Optional.empty() : Optional.of(target.depth().name()));
  }

  private static boolean asksNoDepth(Target target) {
    return Asked.of(target).stream()
        .allMatch(asked -> asked.aspect().filter(a -> !DEPTH.contains(a)).isPresent());
  }

  private static Optional<SetSummary.Theme> worst(List<RepJudgement> reps) {
    Map<Topic, Findings> themes = new LinkedHashMap<>();
    for (RepJudgement rep : reps) {
      for (Finding finding : rep.findings()) {
        if (finding.verdict() != Verdict.HIT) {
          themes
              .computeIfAbsent(Topic.of(finding), k -> new Findings(finding.verdict()))
              .add(rep.rep(), finding);
        }
      }
    }
    return themes.values().stream()
        .reduce((a, b) -> b.worseThan(a) ? b : a)
        .map(found -> new SetSummary.Theme(found.example(), found.reps));
  }

  /** What a finding is about, without its amount. */
  private record Topic(
      Class<? extends Finding> kind,
      Verdict verdict,
      Optional<Aspect> aspect,
      Optional<Limit.End> end) {
    static Topic of(Finding finding) {
      return new Topic(
          finding.getClass(),
          finding.verdict(),
          finding.aspect(),
          outside(finding).map(Finding.Outside::end));
    }
  }

  private static Optional<Finding.Outside> outside(Finding finding) {
    return finding instanceof Finding.Outside f ? Optional.of(f) : Optional.empty();
  }

  /** Findings on one topic, over the reps that show it. */
  private static final class Findings {
    private final Verdict verdict;
    private final List<Integer> reps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Findings(Verdict verdict) {
      this.verdict = verdict;
    }

    void add(int rep, Finding finding) {
      reps.add(rep);
      findings.add(finding);
    }

    boolean worseThan(Findings other) {
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
          .flatMap(f -> outside(f).stream())
          .mapToDouble(f -> f.by() / Math.max(f.limit().margin(), Double.MIN_NORMAL))
          .max()
          .orElse(0);
    }

    Finding example() {
      return findings.stream()
          .flatMap(f -> outside(f).stream())
          .reduce((a, b) -> b.by() > a.by() ? b : a)
          .map(f -> (Finding) f)
          .orElse(findings.get(0));
    }
  }
}
