package shinline.metrics.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * One quantity over time, immutable. A sample is either seen and has a finite value, or missing and
 * has none; what stood in for a missing value is never handed out. Times are seconds, finite and
 * strictly increasing, and need not be evenly spaced. The unit of the values is the caller's.
 */
public final class Series {

  private final double[] timeS;
  private final double[] value;
  private final boolean[] seen;

  private Series(double[] timeS, double[] value, boolean[] seen) {
    this.timeS = timeS;
    this.value = value;
    this.seen = seen;
  }

  /**
   * A stretch of samples that were all seen.
   *
   * @param from index of the first sample
   * @param to index after the last sample
   */
  public record Run(int from, int to) {
    public Run {
      if (from < 0 || to <= from) {
        throw new IllegalArgumentException("a run from " + from + " to " + to + " holds no sample");
      }
    }

    public int size() {
      return to - from;
    }
  }

  /**
   * A series without missing samples.
   *
   * @throws IllegalArgumentException if lengths differ, a time does not increase, or a value is not
   *     finite
   */
  public static Series of(double[] timeS, double[] value) {
    boolean[] seen = new boolean[timeS.length];
    Arrays.fill(seen, true);
    return of(timeS, value, seen);
  }

  /**
   * A series in which some samples are missing; their values are ignored.
   *
   * @throws IllegalArgumentException if lengths differ, a time does not increase, or a seen value
   *     is not finite
   */
  public static Series of(double[] timeS, double[] value, boolean[] seen) {
    if (timeS.length != value.length || timeS.length != seen.length) {
      throw new IllegalArgumentException(
          "lengths differ: "
              + timeS.length
              + " times, "
              + value.length
              + " values, "
              + seen.length
              + " marks");
    }
    double[] kept = new double[value.length];
    for (int i = 0; i < timeS.length; i++) {
      if (!Double.isFinite(timeS[i]) || (i > 0 && timeS[i] <= timeS[i - 1])) {
        throw new IllegalArgumentException(
            "time " + timeS[i] + " s of sample " + i + " does not increase");
      }
      if (seen[i]) {
        if (!Double.isFinite(value[i])) {
          throw new IllegalArgumentException("sample " + i + " is marked seen but is " + value[i]);
        }
        kept[i] = value[i];
      }
    }
    return new Series(timeS.clone(), kept, seen.clone());
  }

  /** A series in which an empty value is a missing sample. */
  public static Series of(double[] timeS, List<OptionalDouble> values) {
    double[] value = new double[values.size()];
    boolean[] seen = new boolean[values.size()];
    for (int i = 0; i < value.length; i++) {
      seen[i] = values.get(i).isPresent();
      value[i] = values.get(i).orElse(0);
    }
    return of(timeS, value, seen);
  }

  public int size() {
    return timeS.length;
  }

  /** Time of a sample in seconds. */
  public double timeS(int i) {
    return timeS[i];
  }

  public boolean seen(int i) {
    return seen[i];
  }

  /**
   * Value of a sample that was seen.
   *
   * @throws IllegalStateException if the sample is missing
   */
  public double value(int i) {
    if (!seen[i]) {
      throw new IllegalStateException("sample " + i + " at " + timeS[i] + " s is missing");
    }
    return value[i];
  }

  /** A copy of the times, seconds. */
  public double[] times() {
    return timeS.clone();
  }

  public int seenCount() {
    int count = 0;
    for (boolean one : seen) {
      count += one ? 1 : 0;
    }
    return count;
  }

  /** The stretches without a missing sample, in order. */
  public List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    int from = -1;
    for (int i = 0; i <= seen.length; i++) {
      boolean here = i < seen.length && seen[i];
      if (here && from < 0) {
        from = i;
      } else if (!here && from >= 0) {
        runs.add(new Run(from, i));
        from = -1;
      }
    }
    return List.copyOf(runs);
  }

  /** The values of one run, a copy. */
  public double[] values(Run run) {
    for (int i = run.from(); i < run.to(); i++) {
      value(i);
    }
    return Arrays.copyOfRange(value, run.from(), run.to());
  }

  /** The seen values, a copy. */
  public double[] seenValues() {
    return seenValues(timeS -> true);
  }

  /** The seen values of samples at wanted times (seconds), a copy. */
  public double[] seenValues(DoublePredicate when) {
    return IntStream.range(0, size())
        .filter(i -> seen[i] && when.test(timeS[i]))
        .mapToDouble(i -> value[i])
        .toArray();
  }

  /** The times of one run, seconds, a copy. */
  public double[] times(Run run) {
    return Arrays.copyOfRange(timeS, run.from(), run.to());
  }

  /** Every seen value changed; missing samples stay missing. */
  public Series map(DoubleUnaryOperator change) {
    double[] out = new double[value.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = seen[i] ? change.applyAsDouble(value[i]) : 0;
    }
    return of(timeS, out, seen);
  }

  /**
   * Every run changed by itself, so that no filter reaches across a missing stretch.
   *
   * @param change gets the values of a run and returns as many
   */
  public Series mapRuns(UnaryOperator<double[]> change) {
    double[] out = new double[value.length];
    for (Run run : runs()) {
      double[] changed = change.apply(values(run));
      if (changed.length != run.size()) {
        throw new IllegalArgumentException(
            "a run of " + run.size() + " samples came back with " + changed.length);
      }
      System.arraycopy(changed, 0, out, run.from(), changed.length);
    }
    return of(timeS, out, seen);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Series s
        && Arrays.equals(timeS, s.timeS)
        && Arrays.equals(value, s.value)
        && Arrays.equals(seen, s.seen);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Arrays.hashCode(timeS) + Arrays.hashCode(value)) + Arrays.hashCode(seen);
  }

  @Override
  public String toString() {
    return "Series of " + size() + " samples, " + seenCount() + " seen";
  }
}
