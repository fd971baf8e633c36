package shinline.vision.observation;

import java.util.Optional;

/**
 * A disc the coach says is in the picture.
 *
 * @param diameterM its true diameter, metres
 * @param at a place on it; empty to look all about the athlete
 */
public record DiscWanted(double diameterM, Optional<Place> at) {

  /**
   * @param x pixels from the left edge of the picture as it is shown
   * @param y pixels from the top edge, down
   */
  public record Place(double x, double y) {}
}
