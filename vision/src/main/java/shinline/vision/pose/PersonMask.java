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
  private final Region region;

  PersonMask(float[] logits, Region region) {
    if (logits.length != SIDE * SIDE) {
      throw new IllegalArgumentException("A mask has 256×256 cells, not " + logits.length);
    }
    this.logits = logits;
    this.region = region;
  }

  /** The square of the frame the mask lies over. */
  public Region region() {
    return region;
  }

  /** Probability 0…1 that the cell shows the person. */
  public double probability(int column, int row) {
    return Sigmoid.of(logits[row * SIDE + column]);
  }

  /** Frame column of a cell's centre, pixels. */
  public double frameX(int column, int row) {
    return region.frameX((column + 0.5) / SIDE, (row + 0.5) / SIDE);
  }

  /** Frame row of a cell's centre, pixels. */
  public double frameY(int column, int row) {
    return region.frameY((column + 0.5) / SIDE, (row + 0.5) / SIDE);
  }

  /** Probability at a place of the frame, from the cell it falls in; 0 outside the region. */
  public double probabilityAt(double frameX, double frameY) {
    int column = (int) Math.floor(region.regionU(frameX, frameY) * SIDE);
    int row = (int) Math.floor(region.regionV(frameX, frameY) * SIDE);
    boolean inside = column >= 0 && column < SIDE && row >= 0 && row < SIDE;
    return inside ? probability(column, row) : 0;
  }
}
