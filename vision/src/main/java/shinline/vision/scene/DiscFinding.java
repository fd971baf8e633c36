package shinline.vision.scene;

import java.util.function.Function;

/** The answer of {@link DiscFinder}. */
public sealed interface DiscFinding {

  /**
   * A disc was found.
   *
   * @param centreX pixels from the left edge
   * @param centreY pixels from the top edge, down
   * @param diameterPx its diameter; of a disc turned off face-on, which shows as an ellipse, the
   *     longer axis, since turning shortens only the other one
   * @param plusMinusPx half width of the 95 % interval of the diameter, pixels
   * @param roundness shorter over longer axis, 0…1
   */
  record Found(
      double centreX, double centreY, double diameterPx, double plusMinusPx, double roundness)
      implements DiscFinding {
    @Override
    public <T> T fold(Function<Found, T> found, Function<NotFound, T> notFound) {
      return found.apply(this);
    }
  }

  /** No disc can be read honestly. */
  record NotFound(NoDisc reason) implements DiscFinding {
    @Override
    public <T> T fold(Function<Found, T> found, Function<NotFound, T> notFound) {
      return notFound.apply(this);
    }
  }

  /** Handles both cases. */
  <T> T fold(Function<Found, T> found, Function<NotFound, T> notFound);
}
