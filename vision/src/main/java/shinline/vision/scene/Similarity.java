package shinline.vision.scene;

/**
 * A turn, a zoom and a shift of the picture plane: {@code x' = a x − b y + tx}, {@code y' = b x + a
 * y + ty}, with a = zoom·cos(turn), b = zoom·sin(turn).
 *
 * @param a zoom times the cosine of the turn
 * @param b zoom times the sine of the turn; clockwise positive, since y is down
 * @param tx shift to the right, pixels
 * @param ty shift down, pixels
 */
public record Similarity(double a, double b, double tx, double ty) {
  /** Leaves every point where it is. */
  public static final Similarity IDENTITY = new Similarity(1, 0, 0, 0);

  /** The x of the moved point, pixels. */
  public double x(double x, double y) {
    return a * x - b * y + tx;
  }

  /** The y of the moved point, pixels down. */
  public double y(double x, double y) {
    return b * x + a * y + ty;
  }

  /** The turn, degrees, clockwise positive. */
  public double rotationDeg() {
    return Math.toDegrees(Math.atan2(b, a));
  }

  /** The zoom, 1 for none. */
  public double scale() {
    return Math.hypot(a, b);
  }

  /** This move after the other one. */
  public Similarity after(Similarity first) {
    return new Similarity(
        a * first.a - b * first.b,
        b * first.a + a * first.b,
        x(first.tx, first.ty),
        y(first.tx, first.ty));
  }

  /** The move back. */
  public Similarity inverse() {
    double d = a * a + b * b;
    return new Similarity(a / d, -b / d, -(a * tx + b * ty) / d, (b * tx - a * ty) / d);
  }

  /** The point {@code share} of the way from this move to the other. */
  Similarity toward(Similarity other, double share) {
    return new Similarity(
        a + share * (other.a - a),
        b + share * (other.b - b),
        tx + share * (other.tx - tx),
        ty + share * (other.ty - ty));
  }

  /**
   * The same move for a picture enlarged by {@code sx}, {@code sy} (which differ by less than a
   * pixel's rounding), with pixel centres at whole numbers.
   */
  Similarity enlarged(double sx, double sy) {
    // big = s·small + (s − 1)/2, on both sides of the move
    double cx = (sx - 1) / 2;
    double cy = (sy - 1) / 2;
    return new Similarity(a, b, sx * tx + cx - (a * cx - b * cy), sy * ty + cy - (b * cx + a * cy));
  }
}
