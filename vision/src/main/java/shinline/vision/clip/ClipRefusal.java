package shinline.vision.clip;

import java.util.function.Function;

/** Why a clip cannot be read. */
public sealed interface ClipRefusal
    permits PlainRefusal,
        ClipRefusal.OtherContent,
        ClipRefusal.UnknownCodec,
        ClipRefusal.TooLarge,
        ClipRefusal.CaptureRateTooLow {

  /** The file is something well known that is no film. */
  record OtherContent(Content content) implements ClipRefusal {}

  /** What a file holds in place of a film. */
  enum Content {
    PICTURE,
    ARCHIVE,
    PDF,
    TEXT
  }

  /**
   * No decoder for the film is at hand.
   *
   * @param codec FFmpeg's name of how it is stored
   */
  record UnknownCodec(String codec) implements ClipRefusal {}

  /** The picture has more pixels than can be handled. */
  record TooLarge(int widthPx, int heightPx) implements ClipRefusal {}

  /**
   * The capture rate told is below the rate at which the file plays.
   *
   * @param captureFps told, frames a second
   * @param playbackFps of the file, frames a second
   */
  record CaptureRateTooLow(double captureFps, double playbackFps) implements ClipRefusal {}

  default <T> T fold(
      Function<PlainRefusal, T> plain,
      Function<OtherContent, T> otherContent,
      Function<UnknownCodec, T> unknownCodec,
      Function<TooLarge, T> tooLarge,
      Function<CaptureRateTooLow, T> captureRateTooLow) {
    if (this instanceof PlainRefusal p) {
      return plain.apply(p);
    }
    if (this instanceof OtherContent o) {
      return otherContent.apply(o);
    }
    if (this instanceof UnknownCodec u) {
      return unknownCodec.apply(u);
    }
    return this instanceof TooLarge t
        ? tooLarge.apply(t)
        : captureRateTooLow.apply((CaptureRateTooLow) this);
  }
}
