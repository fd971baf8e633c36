package shinline.vision.clip;

import java.nio.file.Path;
import java.util.Optional;

/** Opens clips. */
public interface ClipReader {

  /**
   * Opens a clip and looks at its first picture.
   *
   * @param file any path; whatever is wrong with it comes back as a refusal
   * @param options how to read it
   * @param choice which pictures to hand out
   * @return the clip, or why it cannot be read and what to do; never throws for a bad file
   */
  ClipOpening open(Path file, ClipOptions options, FrameChoice choice);

  /** Opens a clip for all its pictures. */
  default ClipOpening open(Path file, ClipOptions options) {
    return open(file, options, FrameChoice.ALL);
  }

  /**
   * A look at the file's first bytes, much cheaper than opening it.
   *
   * @return why it cannot be read, if that is enough to tell; {@link #open} would say the same
   */
  default Optional<ClipOpening.Refused> glance(Path file) {
    return FileProbe.refusal(file);
  }

  /** The reader to use: decodes ahead of its caller on a second thread. */
  static ClipReader standard() {
    return new ReadAheadClipReader(new FfmpegClipReader());
  }
}
