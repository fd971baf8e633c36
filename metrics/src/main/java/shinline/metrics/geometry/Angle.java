package shinline.metrics.geometry;

/**
 * An angle: radians inside, degrees at the edge.
 *
 * @param radians finite, not wrapped
 */
public record Angle(double radians) {

  public static final Angle ZERO = new Angle(0);

  public Angle {
    if (!Double.isFinite(radians)) {
      throw new IllegalArgumentException("angle of " + radians + " rad");
    }
  }

  public static Angle ofDegrees(double degrees) {
    return new Angle(Math.toRadians(degrees));
  }

  public double degrees() {
    return Math.toDegrees(radians);
  }

  public Angle minus(Angle other) {
    return new Angle(radians - other.radians);
  }

  /** The same direction within (-180°, 180°]. */
  public Angle wrapped() {
    double turned = Math.IEEEremainder(radians, 2 * Math.PI);
    return new Angle(turned == -Math.PI ? Math.PI : turned);
  }
}
