package shinline.vision.clip;

import java.util.function.Function;

/** An opened clip, or why there is none. */
public sealed interface ClipOpening {

  /**
   * @param clip to be closed by whoever asked for it
   */
  record Opened(Clip clip) implements ClipOpening {}

  /** There is none. */
  record Refused(ClipRefusal why) implements ClipOpening {}

  default <T> T fold(Function<Opened, T> opened, Function<Refused, T> refused) {
    return this instanceof Opened o ? opened.apply(o) : refused.apply((Refused) this);
  }
}
