package shinline.vision.clip;

import java.io.IOException;

/** FFmpeg could not write a picture; most likely the disk is full. */
public final class ClipWriteException extends IOException {
  private static final long serialVersionUID = 1L;

  /**
   * @param result what FFmpeg gave, below 0
   */
  ClipWriteException(int result) {
    super(Integer.toString(result));
  }
}
