package shinline.vision.clip;

import java.nio.file.Path;
import shinline.vision.clip.ClipOpening.Opened;

/** Opens clips through another reader and decodes them ahead of the caller on a second thread. */
public final class ReadAheadClipReader implements ClipReader {
  private final ClipReader inner;

  public ReadAheadClipReader(ClipReader inner) {
    this.inner = inner;
  }

  @Override
  public ClipOpening open(Path file, ClipOptions options, FrameChoice choice) {
    return inner
        .open(file, options, choice)
        .fold(opened -> new Opened(new ReadAheadClip(opened.clip())), refused -> refused);
  }
}
