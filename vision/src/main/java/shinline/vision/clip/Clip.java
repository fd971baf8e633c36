package shinline.vision.clip;

import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * An open clip, read once from its first picture to its last. Two readings of one file give the
 * same pictures. Only the pictures chosen at the opening are handed out. For one thread at a time.
 * Memory does not grow with length. No method throws for what is wrong with the file: that is told
 * by {@link #ending()}.
 */
public interface Clip extends AutoCloseable {

  /** What the file says of itself. */
  ClipInfo info();

  /**
   * The next picture, in a buffer of the clip's own that the next call overwrites.
   *
   * @return the picture, or empty after the last one
   * @throws IllegalStateException when the clip is closed
   */
  Optional<Frame> next();

  /**
   * The next picture, written into a buffer of the caller's, which makes it the caller's to keep.
   *
   * @param image filled with the picture, allocated anew where size or type differ
   * @return a frame around {@code image}, or empty after the last picture, {@code image} untouched
   * @throws IllegalStateException when the clip is closed
   */
  Optional<Frame> nextInto(Mat image);

  /**
   * How the reading ended.
   *
   * @throws IllegalStateException while pictures are left
   */
  ClipEnding ending();

  /**
   * The times of all pictures that the reading came upon, handed out or not. A reader that leapt
   * from one known picture to the next came upon those alone; one that was called off tells of
   * none.
   *
   * @throws IllegalStateException while pictures are left
   */
  FrameTimes times();

  /**
   * Where the pictures handed out rest on one that could not be decoded whole, in order of time.
   *
   * @throws IllegalStateException while pictures are left
   */
  List<DoubtfulPictures> doubtful();

  /**
   * Frees the file and the buffers; the last frame's picture is gone. May be called early, twice.
   */
  @Override
  void close();
}
