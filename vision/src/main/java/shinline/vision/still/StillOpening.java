package shinline.vision.still;

import java.util.function.Function;

/** What came of opening a picture. */
public sealed interface StillOpening {
  record Opened(Still still) implements StillOpening {}

  record Refused(StillRefusal why) implements StillOpening {}

  default <T> T fold(Function<Opened, T> opened, Function<Refused, T> refused) {
    return this instanceof Opened o ? opened.apply(o) : refused.apply((Refused) this);
  }
}
