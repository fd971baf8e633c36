package shinline.metrics.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import shinline.metrics.target.Target;

/**
 * One posture, measured in a still picture.
 *
 * @param target what was asked for, with what no posture can show
 * @param measures every measure, measured or not
 * @param judgement how it stands against what a posture can show of the target
 * @param flags those that need no movement
 * @param shown where the points are in the picture; every row is the same posture
 */
public record PostureResult(
    SetUp setUp,
    Target target,
    Map<Measure, Reading> measures,
    RepJudgement judgement,
    List<Flag> flags,
    SeriesTable shown)
    implements Readings {
  private static final Reading NO_TIME = Reading.missing(Gap.ONE_POSTURE);

  public PostureResult {
    EnumMap<Measure, Reading> copy = new EnumMap<>(Measure.class);
    copy.putAll(measures);
    for (Measure measure : Measure.values()) {
      if (!copy.containsKey(measure)) {
        throw new IllegalArgumentException("a posture lacks " + measure);
      }
    }
    measures = Collections.unmodifiableMap(copy);
    flags = List.copyOf(flags);
  }

  /** Empty when nothing was asked that a posture can show. */
  public Optional<Verdict> verdict() {
    return judgement.verdict();
  }

  @Override
  public Reading at(Measure measure) {
    return Objects.requireNonNull(measures.get(measure));
  }

  /** A posture has no tempo. */
  @Override
  public TempoReading tempo() {
    return new TempoReading(NO_TIME, NO_TIME, NO_TIME, NO_TIME);
  }
}
