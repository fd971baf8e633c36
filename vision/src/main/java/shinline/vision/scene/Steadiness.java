package shinline.vision.scene;

import java.util.function.Function;

/** Whether the camera stood still through the clip. */
public sealed interface Steadiness {

  /** A tripod, or as good as one: no move is to be applied. */
  record Steady() implements Steadiness {
    @Override
    public <T> T fold(
        Function<Steady, T> steady, Function<Moving, T> moving, Function<Unsure, T> unsure) {
      return steady.apply(this);
    }
  }

  /**
   * The camera moved.
   *
   * @param amplitudePx how far the room strays from its middle place in the picture: 95th
   *     percentile over the frames, pixels of the given frames
   */
  record Moving(double amplitudePx) implements Steadiness {
    @Override
    public <T> T fold(
        Function<Steady, T> steady, Function<Moving, T> moving, Function<Unsure, T> unsure) {
      return moving.apply(this);
    }
  }

  /**
   * It cannot be told.
   *
   * @param followedFrames frames through which the room could be followed
   * @param frames of all
   */
  record Unsure(int followedFrames, int frames) implements Steadiness {
    @Override
    public <T> T fold(
        Function<Steady, T> steady, Function<Moving, T> moving, Function<Unsure, T> unsure) {
      return unsure.apply(this);
    }
  }

  /** Handles the three cases. */
  <T> T fold(Function<Steady, T> steady, Function<Moving, T> moving, Function<Unsure, T> unsure);
}
