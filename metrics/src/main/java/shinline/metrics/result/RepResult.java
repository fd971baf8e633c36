package shinline.metrics.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.RepTimes;

/**
 * One rep of a set.
 *
 * @param rep number from 1
 * @param times when its phases begin and end, seconds from the first frame
 * @param atBottom every measure, measured or not
 * @param shortRange whether the rep was recognised as a short-range drive
 * @param judgement how the rep stands against the day's target, judged once
 */
public record RepResult(
    int rep,
    RepTimes times,
    TempoReading tempo,
    Map<Measure, Reading> atBottom,
    DriveReading drive,
    boolean shortRange,
    RepJudgement judgement,
    List<Flag> flags)
    implements Readings {
  public RepResult {
    EnumMap<Measure, Reading> copy = new EnumMap<>(Measure.class);
    copy.putAll(atBottom);
    for (Measure measure : Measure.values()) {
      if (!copy.containsKey(measure)) {
        throw new IllegalArgumentException("rep " + rep + " lacks " + measure);
      }
    }
    atBottom = Collections.unmodifiableMap(copy);
    flags = List.copyOf(flags);
  }

  /** When lowering starts, seconds from the first frame. */
  public double startS() {
    return times.startS();
  }

  /** Start of the hold. */
  public double bottomStartS() {
    return times.bottomStartS();
  }

  /** Middle of the hold. */
  public double bottomS() {
    return times.bottomS();
  }

  /** End of the hold. */
  public double bottomEndS() {
    return times.bottomEndS();
  }

  /** When the drive ends. */
  public double endS() {
    return times.endS();
  }

  /** Empty when nothing was asked. */
  public Optional<Verdict> verdict() {
    return judgement.verdict();
  }

  /** Whether a fault takes the rep out of the clean ones, whatever its verdict. */
  public boolean spoilt() {
    return flags.stream().map(Flag::kind).anyMatch(FlagKind::spoils);
  }

  @Override
  public Reading at(Measure measure) {
    return java.util.Objects.requireNonNull(atBottom.get(measure));
  }
}
