package shinline.vision.scene;

import java.util.function.Function;

/** Why no disc can be read honestly. */
public sealed interface NoDisc permits NoDiscReason, NoDisc.TwoSizes {

  /**
   * Two discs of different size are in view, and nothing tells which one is meant.
   *
   * @param diameterPx of the one seen best, pixels
   * @param otherDiameterPx of the other, pixels
   */
  record TwoSizes(double diameterPx, double otherDiameterPx) implements NoDisc {}

  default <T> T fold(Function<NoDiscReason, T> plain, Function<TwoSizes, T> twoSizes) {
    return this instanceof NoDiscReason reason
        ? plain.apply(reason)
        : twoSizes.apply((TwoSizes) this);
  }
}
