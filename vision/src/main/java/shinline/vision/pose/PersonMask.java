package shinline.vision.pose;

/**
 * Where the person is, cell by cell over a region.
 *
 * <p>256×256 cells; cell (column, row) has its centre at ((column + 0.5) / 256, (row + 0.5) / 256)
 * of the region, and the region's own methods carry that to the frame and back.
 */
public final class PersonMask {
  /** Cells along each side. */
  public static final int SIDE = 256;

  private final float[] logits;
  private final RegionOfInterest region;

  /**
   * A mask.
   *
   * @param logits row by row, one for each cell: above 0 where the person is likelier than not; not
   *     copied
   */
  public PersonMask(float[] logits, RegionOfInterest region) {
    if (logits.length != SIDE * SIDE) {
      throw new IllegalArgumentException("A mask has 256×256 cells, not " + logits.length);
    }
    this.logits = logits;
    this.region = region;
  }

  private double probability(int column, int row) {
    return Sigmoid.of(logits[row * SIDE + column]);
  }

  /**
   * Probability at a place of the frame, between the centres of the four cells around it; 0 outside
   * the region.
   */
  public double probabilityAt(double frameX, double frameY) {
    double u = region.regionU(frameX, frameY);
    double v = region.regionV(frameX, frameY);
    if (!(u >= 0 && u < 1 && v >= 0 && v < 1)) {
      return 0;
    }
    double across = inside(u * SIDE - 0.5);
    double down = inside(v * SIDE - 0.5);
    int column = Math.min((int) across, SIDE - 2);
    int row = Math.min((int) down, SIDE - 2);
    double right = across - column;
    double below = down - row;
    return (1 - below)
            * ((1 - right) * probability(column, row) + right * probability(column + 1, row))
        + below
            * ((1 - right) * probability(column, row + 1)
                + right * probability(column + 1, row + 1));
  }

  private static double inside(double cell) {
    return Math.max(0, Math.min(SIDE - 1, cell));
  }
}
