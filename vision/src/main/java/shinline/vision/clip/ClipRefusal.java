package shinline.vision.clip;

import java.util.function.Function;

/** Why a clip cannot be read. */
public sealed interface ClipRefusal
    permits PlainRefusal,
        ClipRefusal.OtherContent,
        ClipRefusal.UnknownCodec,
        ClipRefusal.TooLarge,
        ClipRefusal.TooLong,
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

  /** The picture has more pixels than are allowed. */
  record TooLarge(int widthPx, int heightPx, long mostPixels) implements ClipRefusal {}

  /**
   * The file says it plays longer than is allowed.
   *
   * @param seconds told by the file
   */
  record TooLong(double seconds, double longestS) implements ClipRefusal {}

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
      Function<TooLong, T> tooLong,
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
    if (this instanceof TooLarge t) {
      return tooLarge.apply(t);
    }
    return this instanceof TooLong t
        ? tooLong.apply(t)
        : captureRateTooLow.apply((CaptureRateTooLow) this);
  }
}
