package shinline.metrics.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One rep against the target: a finding for each limit asked for, worst first.
 *
 * <p>The rep is as good as its worst limit, in the order miss, unclear, near, hit. A limit that is
 * clearly missed settles the rep whatever the others say, so miss comes first. A limit that could
 * not be decided may hide a miss, so the rep cannot be called near, let alone a hit, until it is
 * known: unclear comes before near.
 *
 * @param rep number from 1
 * @param asked how much the target asks for that this rep can be held to; 0 when nothing was asked
 * @param notJudged why the rep is not judged at all; then there are no findings
 */
public record RepJudgement(
    int rep, int asked, List<Finding> findings, Optional<NotJudged> notJudged) {

  /** Why a rep is not judged. */
  public enum NotJudged {
    /** Too much of it was not seen, or seen as no body can be. */
    NOT_SEEN,
    /** Too much of it lies in damaged pictures. */
    DAMAGED_PICTURES
  }

  private static final Comparator<Finding> WORST_FIRST =
      Comparator.comparingInt((Finding f) -> severity(f.verdict())).reversed();

  /** Of a target that asks for what was found, and for no more. */
  public RepJudgement(int rep, List<Finding> findings) {
    this(rep, findings.size(), findings);
  }

  public RepJudgement {
    findings = findings.stream().sorted(WORST_FIRST).toList();
  }

  /** A rep that is judged by a target that asks for so much. */
  public RepJudgement(int rep, int asked, List<Finding> findings) {
    this(rep, asked, findings, Optional.empty());
  }

  /** A rep of which too little was seen to judge it by anything. */
  public static RepJudgement none(int rep, int asked, NotJudged why) {
    return new RepJudgement(rep, asked, List.of(), Optional.of(why));
  }

  /** Empty when nothing was asked: a rep cannot hit what nobody set. */
  public Optional<Verdict> verdict() {
    if (asked == 0) {
      return Optional.empty();
    }
    if (notJudged.isPresent()) {
      return Optional.of(Verdict.UNCLEAR);
    }
    return Optional.of(findings.isEmpty() ? Verdict.HIT : findings.get(0).verdict());
  }

  /** The finding on the shin or the knee, when it is outside by more than the coach's margin. */
  public Optional<Finding.Outside> shinOffTarget() {
    return findings.stream()
        .flatMap(f -> f instanceof Finding.Outside outside ? Stream.of(outside) : Stream.empty())
        .filter(f -> f.limit().aspect() == Aspect.SHIN || f.limit().aspect() == Aspect.KNEE)
        .filter(f -> !f.withinMargin())
        .findFirst();
  }

  /** How bad: 0 for a hit to 3 for a miss, by which findings are ordered. */
  public static int severity(Verdict verdict) {
    return switch (verdict) {
      case HIT -> 0;
      case NEAR -> 1;
      case UNCLEAR -> 2;
      case MISS -> 3;
    };
  }
}
