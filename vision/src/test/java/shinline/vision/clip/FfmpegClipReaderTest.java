package shinline.vision.clip;

class FfmpegClipReaderTest extends ClipReaderContract {
  @Override
  ClipReader reader() {
    return new FfmpegClipReader();
  }
}
