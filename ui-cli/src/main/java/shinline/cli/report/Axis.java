package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A range of values laid along a picture.
 *
 * @param min value at the start (left or bottom)
 * @param max value at the end; above {@code min}
 */
public record Axis(double min, double max) {
  private static final double HEADROOM = 0.08;

  public Axis {
    if (!(min < max)) {
      throw new IllegalArgumentException("axis from " + min + " to " + max);
    }
  }

  /** Around the values, with room above and below and never flatter than {@code least}. */
  public static Axis around(double min, double max, double least) {
    double size = Math.max(max - min, least);
    double middle = (min + max) / 2;
    double half = size * (0.5 + HEADROOM);
    return new Axis(middle - half, middle + half);
  }

  /** 0 at {@code min} to 1 at {@code max}. */
  public double share(double value) {
    return (value - min) / (max - min);
  }

  /** Distance from the left, as SVG and CSS write it. */
  public String across(double value) {
    return Figure.plain(100 * share(value), 2) + "%";
  }

  /** Distance from the top, as SVG and CSS write it. */
  public String down(double value) {
    return Figure.plain(100 - 100 * share(value), 2) + "%";
  }

  public Axis times(double factor) {
    return new Axis(min * factor, max * factor);
  }

  /** Round values inside the range, three to seven of them. */
  public List<Double> ticks() {
    double rough = (max - min) / 4;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double step = power;
    for (double of : new double[] {2, 5, 10}) {
      if (step < rough * 0.75) {
        step = of * power;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (double n = Math.ceil(min / step); n * step <= max; n++) {
      ticks.add(n * step);
    }
    return ticks;
  }
}
