package shinline.vision.clip;

class ReadAheadClipReaderTest extends ClipReaderContract {
  @Override
  ClipReader reader() {
    return ClipReader.standard();
  }
}
