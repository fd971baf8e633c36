package shinline.metrics.load;

/**
 * A mass.
 *
 * @param kg kilograms, finite, 0 or more
 */
public record Mass(double kg) implements Comparable<Mass> {

  /** Exact by definition: the international yard and pound agreement, 1959. */
  public static final double KG_PER_LB = 0.45359237;

  public Mass {
    if (!(kg >= 0 && Double.isFinite(kg))) {
      throw new IllegalArgumentException("mass of " + kg + " kg");
    }
  }

  public static Mass ofKg(double kg) {
    return new Mass(kg);
  }

  public static Mass ofLb(double lb) {
    return new Mass(lb * KG_PER_LB);
  }

  public double lb() {
    return kg / KG_PER_LB;
  }

  public Mass plus(Mass other) {
    return new Mass(kg + other.kg);
  }

  public Mass times(double factor) {
    return new Mass(kg * factor);
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kg, other.kg);
  }
}
