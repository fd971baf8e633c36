package shinline.metrics.judgement;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.Readings;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.TempoReading;

/**
 * What is known of one rep before it is judged.
 *
 * @param rep number from 1
 * @param atBottom readings at the bottom; a measure left out counts as not measured
 * @param shortRange whether the rep was recognised as a short-range drive
 */
public record RepReadings(
    int rep, Map<Measure, Reading> atBottom, TempoReading tempo, boolean shortRange)
    implements Readings {
  public RepReadings {
    if (rep < 1) {
      throw new IllegalArgumentException("reps are numbered from 1, not " + rep);
    }
    EnumMap<Measure, Reading> copy = new EnumMap<>(Measure.class);
    copy.putAll(atBottom);
    atBottom = Collections.unmodifiableMap(copy);
  }

  /** What was told of a rep, to be judged against another target than that day's. */
  public static RepReadings of(RepResult rep) {
    return new RepReadings(rep.rep(), rep.atBottom(), rep.tempo(), rep.shortRange());
  }

  @Override
  public Reading at(Measure measure) {
    Reading reading = atBottom.get(measure);
    return reading == null ? Reading.missing(Gap.NOT_READ) : reading;
  }
}
