package shinline.vision.clip;

final class FfmpegClipReaderTest extends ClipReaderContract {
  @Override
  ClipReader reader() {
    return new FfmpegClipReader();
  }
}
