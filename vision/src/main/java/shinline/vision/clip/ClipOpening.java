package shinline.vision.clip;

import java.util.function.Function;

/** An opened clip, or why there is none. */
public sealed interface ClipOpening {

  /**
   * @param clip to be closed by whoever asked for it
   */
  record Opened(Clip clip) implements ClipOpening {}

  /**
   * @param kind for code that must tell refusals apart
   * @param reason what is wrong, in the coach's words, without the file's name
   * @param advice what to do about it
   */
  record Refused(Kind kind, String reason, String advice) implements ClipOpening {}

  /** Why a clip cannot be read. */
  enum Kind {
    MISSING,
    FOLDER,
    EMPTY,
    UNREADABLE,
    NOT_VIDEO,
    AUDIO_ONLY,
    NO_INDEX,
    NO_PICTURE,
    UNSUPPORTED,
    TOO_LARGE,
    CAPTURE_RATE
  }

  default <T> T fold(Function<Opened, T> opened, Function<Refused, T> refused) {
    return this instanceof Opened o ? opened.apply(o) : refused.apply((Refused) this);
  }
}
