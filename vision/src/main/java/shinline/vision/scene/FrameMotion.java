package shinline.vision.scene;

import java.util.function.Function;

/** Where the room is in one frame, against the reference frame. */
public sealed interface FrameMotion {

  /**
   * The room was followed.
   *
   * @param toReference moves a point of this frame to where it lies in the reference frame
   * @param points background points that agree
   */
  record Followed(Similarity toReference, int points) implements FrameMotion {
    @Override
    public <T> T fold(Function<Followed, T> followed, Function<Lost, T> lost) {
      return followed.apply(this);
    }
  }

  /** Too few points of the room could be followed into this frame. */
  record Lost() implements FrameMotion {
    @Override
    public <T> T fold(Function<Followed, T> followed, Function<Lost, T> lost) {
      return lost.apply(this);
    }
  }

  /** Handles both cases. */
  <T> T fold(Function<Followed, T> followed, Function<Lost, T> lost);
}
