package shinline.vision.pose;

/**
 * Moves a landmark to the centre of its heatmap's peak. Without it toes sit below the shoe and the
 * shin angle repeats two to three times worse.
 *
 * <p>The weighted mean over a window, with the sigmoid of the logits as weights; columns and rows
 * count from 0 at a cell's edge, as the model was trained. The window lies about the landmark's own
 * cell or, where the whole heatmap is searched, about its strongest cell.
 */
final class HeatmapRefinement {
  static final int SIDE = 64;
  private static final int REACH = 3;
  private static final double LEAST_NEAR_PEAK = 0.5;

  /** Between two places that both might be the leg, each peak is lower than a sure one. */
  private static final double LEAST_PEAK_ANYWHERE = 0.3;

  private HeatmapRefinement() {}

  /** A place in the region, 0…1 both ways. */
  record Place(double u, double v) {}

  /** Where the peak may lie. */
  enum Search {
    /** Within the window about the landmark's own place. */
    NEAR,
    /**
     * Anywhere. When the model cannot tell two legs apart, its landmark is a mean of both places
     * and lies on neither; the heatmap still peaks on them.
     */
    ANYWHERE
  }

  /**
   * The refined place, or the given one where the heatmap shows no peak or the place is outside.
   *
   * @param logits row by row, {@code channels} values a cell
   * @param channel the landmark's number
   */
  static Place refine(Place place, Search search, float[] logits, int channels, int channel) {
    if (search == Search.ANYWHERE) {
      int best = channel;
      for (int k = channel; k < logits.length; k += channels) {
        if (logits[k] > logits[best]) {
          best = k;
        }
      }
      if (Sigmoid.of(logits[best]) >= LEAST_PEAK_ANYWHERE) {
        int cell = best / channels;
        return centre(cell % SIDE, cell / SIDE, logits, channels, channel).place();
      }
    }
    int column = (int) Math.floor(place.u() * SIDE);
    int row = (int) Math.floor(place.v() * SIDE);
    if (column < 0 || column >= SIDE || row < 0 || row >= SIDE) {
      return place;
    }
    Centre centre = centre(column, row, logits, channels, channel);
    return centre.peak() < LEAST_NEAR_PEAK ? place : centre.place();
  }

  private record Centre(Place place, double peak) {}

  private static Centre centre(int column, int row, float[] logits, int channels, int channel) {
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
    return new Centre(new Place(columns / sum / SIDE, rows / sum / SIDE), peak);
  }
}
