package shinline.metrics.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One rep of a set.
 *
 * @param rep number from 1
 * @param startS when lowering starts, seconds from the first frame
 * @param bottomStartS start of the hold
 * @param bottomS middle of the hold
 * @param bottomEndS end of the hold
 * @param endS when the drive ends
 * @param atBottom every measure, measured or not
 * @param meanSpeed mean upward speed of mid-hip in the drive, m/s
 * @param peakSpeed peak upward speed of mid-hip in the drive, m/s
 * @param shortRange whether the rep was recognised as a short-range drive
 * @param reasons plain words behind the verdict
 */
public record RepResult(
    int rep,
    double startS,
    double bottomStartS,
    double bottomS,
    double bottomEndS,
    double endS,
    TempoReading tempo,
    Map<Measure, Reading> atBottom,
    Reading meanSpeed,
    Reading peakSpeed,
    boolean shortRange,
    Verdict verdict,
    List<String> reasons,
    List<Flag> flags) {
  public RepResult {
    EnumMap<Measure, Reading> copy = new EnumMap<>(Measure.class);
    copy.putAll(atBottom);
    for (Measure measure : Measure.values()) {
      if (!copy.containsKey(measure)) {
        throw new IllegalArgumentException("rep " + rep + " lacks " + measure);
      }
    }
    atBottom = Collections.unmodifiableMap(copy);
    reasons = List.copyOf(reasons);
    flags = List.copyOf(flags);
  }

  public Reading at(Measure measure) {
    return java.util.Objects.requireNonNull(atBottom.get(measure));
  }
}
