package shinline.metrics.track;

import java.util.Arrays;
import shinline.metrics.geometry.Point;
import shinline.metrics.signal.Series;

/**
 * One point over the frames of a clip: x forward (the way the athlete faces), y up, pixels. A frame
 * in which the point was not seen is asked for with {@link #seen}, never read.
 */
public final class PointPath {
  private final double[] x;
  private final double[] y;
  private final double[] confidence;

  private PointPath(double[] x, double[] y, double[] confidence) {
    this.x = x;
    this.y = y;
    this.confidence = confidence;
  }

  /** A path of so many frames, none of them seen. */
  public static Builder ofSize(int frames) {
    return new Builder(frames);
  }

  /** Collects the frames in which a point was seen. */
  public static final class Builder {
    private final double[] x;
    private final double[] y;
    private final double[] confidence;

    private Builder(int frames) {
      x = new double[frames];
      y = new double[frames];
      confidence = new double[frames];
      Arrays.fill(confidence, -1);
    }

    /**
     * @param confidence 0…1
     */
    public Builder put(int i, double px, double py, double confidence) {
      x[i] = px;
      y[i] = py;
      this.confidence[i] = Math.max(0, confidence);
      return this;
    }

    public Builder put(int i, PointPath from) {
      return from.seen(i) ? put(i, from.x(i), from.y(i), from.confidence(i)) : this;
    }

    public PointPath build() {
      return new PointPath(x.clone(), y.clone(), confidence.clone());
    }
  }

  public int size() {
    return x.length;
  }

  public boolean seen(int i) {
    return confidence[i] >= 0;
  }

  public double x(int i) {
    return x[checked(i)];
  }

  public double y(int i) {
    return y[checked(i)];
  }

  public double confidence(int i) {
    return confidence[checked(i)];
  }

  public Point at(int i) {
    return new Point(x(i), y(i));
  }

  /** Distance to another path in a frame in which both are seen. */
  public double distance(PointPath other, int i) {
    return Math.hypot(x(i) - other.x(i), y(i) - other.y(i));
  }

  public Series xSeries(double[] timeS) {
    return Series.of(timeS, x, seenFlags());
  }

  public Series ySeries(double[] timeS) {
    return Series.of(timeS, y, seenFlags());
  }

  private boolean[] seenFlags() {
    boolean[] flags = new boolean[x.length];
    for (int i = 0; i < flags.length; i++) {
      flags[i] = seen(i);
    }
    return flags;
  }

  private int checked(int i) {
    if (!seen(i)) {
      throw new IllegalStateException("point not seen in frame " + i);
    }
    return i;
  }
}
