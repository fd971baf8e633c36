package shinline.metrics.load;

/** Comparisons of one result with another, and how large a change must be to be real. */
public final class Comparison {

  private static final double Z95 = 1.96;

  private Comparison() {}

  /**
   * Speed loss in a set, (fastest − this) / fastest, as a fraction; advisory only (Jukic 2023, doi
   * 10.1186/s40798-023-00626-z).
   *
   * @param fastest above 0
   */
  public static double speedLoss(double fastest, double now) {
    if (!(fastest > 0)) {
      throw new IllegalArgumentException("fastest speed " + fastest);
    }
    return (fastest - now) / fastest;
  }

  /**
   * Weaker side as per cent of the stronger, 0 to 100.
   *
   * @param one 0 or more
   * @param other 0 or more; one of the two above 0
   */
  public static double weakerOfStrongerPct(double one, double other) {
    double strong = Math.max(one, other);
    double weak = Math.min(one, other);
    if (!(weak >= 0 && strong > 0)) {
      throw new IllegalArgumentException("sides " + one + " and " + other);
    }
    return 100 * weak / strong;
  }

  /**
   * Smallest change between two measurements that is real with 95 % confidence: 1.96 √2 SEM.
   *
   * @param sem standard error of one measurement, 0 or more, any unit
   */
  public static double changeLimit95(double sem) {
    if (!(sem >= 0)) {
      throw new IllegalArgumentException("standard error " + sem);
    }
    return Z95 * Math.sqrt(2) * sem;
  }
}
