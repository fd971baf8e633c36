package shinline.metrics.signal;

import java.util.ArrayList;
import java.util.List;

/**
 * Fills short gaps with a shape-preserving cubic through the samples around them. A gap is the time
 * between the two seen samples next to it; longer ones, and missing samples at either end of the
 * series, stay missing.
 */
public final class GapFill {
  /**
   * Longest gap that is filled, seconds: a planted or slowly moving joint cannot go far in it (own
   * choice).
   */
  public static final double LONGEST_S = 0.35;

  /** Frame times carry rounding of a microsecond or so. */
  private static final double TIME_SLACK_S = 1e-6;

  private GapFill() {}

  public static Series fill(Series series) {
    int n = series.size();
    double[] value = new double[n];
    boolean[] seen = new boolean[n];
    for (List<Integer> block : blocks(series)) {
      double[] x = block.stream().mapToDouble(series::timeS).toArray();
      double[] y = block.stream().mapToDouble(series::value).toArray();
      PchipInterpolator curve = new PchipInterpolator(x, y);
      for (int i = block.get(0); i <= block.get(block.size() - 1); i++) {
        value[i] = series.seen(i) ? series.value(i) : curve.at(series.timeS(i));
        seen[i] = true;
      }
    }
    return Series.of(series.times(), value, seen);
  }

  /** Seen samples, split where a gap is too long to cross. */
  private static List<List<Integer>> blocks(Series series) {
    List<List<Integer>> blocks = new ArrayList<>();
    List<Integer> block = new ArrayList<>();
    for (int i = 0; i < series.size(); i++) {
      if (!series.seen(i)) {
        continue;
      }
      if (!block.isEmpty()) {
        int before = block.get(block.size() - 1);
        boolean gap = before < i - 1;
        if (gap && series.timeS(i) - series.timeS(before) > LONGEST_S + TIME_SLACK_S) {
          blocks.add(block);
          block = new ArrayList<>();
        }
      }
      block.add(i);
    }
    if (!block.isEmpty()) {
      blocks.add(block);
    }
    return blocks;
  }
}
