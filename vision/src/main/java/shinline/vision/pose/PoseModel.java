package shinline.vision.pose;

/** The two sizes of the landmark model. */
public enum PoseModel {
  /** About 7 ms an inference on one core. */
  FULL("full"),
  /** Four to five times slower and surer of the legs, the far one above all. */
  HEAVY("heavy");

  private final String fileName;

  PoseModel(String fileName) {
    this.fileName = fileName;
  }

  String landmarksFile() {
    return "landmarks-" + fileName + ".onnx";
  }

  String landmarksAndMaskFile() {
    return "landmarks-mask-" + fileName + ".onnx";
  }
}
