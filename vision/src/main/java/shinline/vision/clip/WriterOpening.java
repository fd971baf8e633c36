package shinline.vision.clip;

import java.util.function.Function;

/** A clip being written, or why it cannot be. */
public sealed interface WriterOpening {

  /**
   * @param writer to be closed by whoever asked for it
   */
  record Ready(ClipWriter writer) implements WriterOpening {}

  /** There is none. */
  record Refused(WriterRefusal why) implements WriterOpening {}

  /** Why a clip cannot be written. */
  enum WriterRefusal {
    /** FFmpeg does not run on this computer. */
    NO_LIBRARY,
    /** This build of FFmpeg cannot write H.264. */
    NO_ENCODER,
    FOLDER,
    /** The encoder does not take pictures of this size. */
    PICTURE_SIZE,
    /** The folder is not there or may not be written to, or the disk is full. */
    NO_PLACE
  }

  default <T> T fold(Function<Ready, T> ready, Function<Refused, T> refused) {
    return this instanceof Ready r ? ready.apply(r) : refused.apply((Refused) this);
  }
}
