package shinline.vision.clip;

import java.util.Optional;

/** A way through a film that stops at the wanted pictures. */
interface PicturePath {

  /**
   * Moves the film's decoder to the next wanted picture.
   *
   * @return its stamp, or empty when there is none left
   */
  Optional<FrameStamp> next();

  /** Of the pictures come upon so far, wanted or not. */
  FrameTimes times();
}
