package shinline.vision.clip;

import java.util.function.Function;

/** A clip being written, or why it cannot be. */
public sealed interface WriterOpening {

  /**
   * @param writer to be closed by whoever asked for it
   */
  record Ready(ClipWriter writer) implements WriterOpening {}

  /**
   * @param reason what is wrong, in the coach's words
   * @param advice what to do about it
   */
  record Refused(String reason, String advice) implements WriterOpening {}

  default <T> T fold(Function<Ready, T> ready, Function<Refused, T> refused) {
    return this instanceof Ready r ? ready.apply(r) : refused.apply((Refused) this);
  }
}
