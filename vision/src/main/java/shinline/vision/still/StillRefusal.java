package shinline.vision.still;

import java.util.function.Function;

/** Why a picture cannot be read. */
public sealed interface StillRefusal {

  /** The refusals whose kind says it all. */
  enum PlainStillRefusal implements StillRefusal {
    /** There is no such file. */
    MISSING,
    /** No such file, and a name that could not be read: it is not in the system's encoding. */
    NAME_NOT_TEXT,
    FOLDER,
    /** A pipe or a device: it may never come to an end. */
    PIPE,
    EMPTY,
    /** The file may not be read by this user. */
    NOT_PERMITTED,
    /** The disk refuses to give the file's bytes. */
    DISK_FAILS,
    /** A film. */
    FILM,
    /**
     * A picture as newer phones store it, in tiles that the video library does not put together.
     */
    HEIC,
    /** A picture, of another kind than can be read. */
    OTHER_PICTURE,
    /** No picture at all, or one whose beginning is damaged. */
    NO_PICTURE,
    /** A picture that cannot be decoded whole. */
    BROKEN,
    /** A picture in the four colours of print. */
    PRINT_COLOURS,
    /** Not enough memory for it. */
    NO_MEMORY
  }

  /** More pixels than are allowed. */
  record TooLarge(long widthPx, long heightPx, long mostPixels) implements StillRefusal {}

  /** Too few pixels to show an athlete's joints. */
  record TooSmall(long widthPx, long heightPx, int leastSidePx) implements StillRefusal {}

  default <T> T fold(
      Function<PlainStillRefusal, T> plain,
      Function<TooLarge, T> tooLarge,
      Function<TooSmall, T> tooSmall) {
    if (this instanceof PlainStillRefusal p) {
      return plain.apply(p);
    }
    return this instanceof TooLarge t ? tooLarge.apply(t) : tooSmall.apply((TooSmall) this);
  }
}
