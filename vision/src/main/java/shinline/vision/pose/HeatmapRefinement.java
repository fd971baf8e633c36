package shinline.vision.pose;

/**
 * Moves a landmark to the centre of its heatmap's peak. Without it toes sit below the shoe and the
 * shin angle repeats two to three times worse.
 *
 * <p>The weighted mean over a window about the landmark's own cell, with the sigmoid of the logits
 * as weights; columns and rows count from 0 at a cell's edge, as the model was trained.
 */
final class HeatmapRefinement {
  static final int SIDE = 64;
  private static final int REACH = 3;
  private static final double LEAST_PEAK = 0.5;

  private HeatmapRefinement() {}

  /** A place in the region, 0…1 both ways. */
  record Place(double u, double v) {}

  /**
   * The refined place, or the given one where the heatmap shows no peak or the place is outside.
   *
   * @param logits row by row, {@code channels} values a cell
   * @param channel the landmark's number
   */
  static Place refine(Place place, float[] logits, int channels, int channel) {
    int column = (int) Math.floor(place.u() * SIDE);
    int row = (int) Math.floor(place.v() * SIDE);
    if (column < 0 || column >= SIDE || row < 0 || row >= SIDE) {
      return place;
    }
    double sum = 0;
    double columns = 0;
    double rows = 0;
    double peak = 0;
    for (int r = Math.max(0, row - REACH); r <= Math.min(SIDE - 1, row + REACH); r++) {
      for (int c = Math.max(0, column - REACH); c <= Math.min(SIDE - 1, column + REACH); c++) {
        double weight = Sigmoid.of(logits[(r * SIDE + c) * channels + channel]);
        sum += weight;
        columns += weight * c;
        rows += weight * r;
        peak = Math.max(peak, weight);
      }
    }
    return peak < LEAST_PEAK ? place : new Place(columns / sum / SIDE, rows / sum / SIDE);
  }
}
