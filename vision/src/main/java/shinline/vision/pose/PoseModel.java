package shinline.vision.pose;

/** The pose models there are: two sizes of one landmark model. */
public enum PoseModel {
  /** About 7 ms an inference on one core. */
  FULL("full"),
  /** Four to five times slower and surer of the legs, the far one above all. */
  HEAVY("heavy");

  private final String word;

  PoseModel(String word) {
    this.word = word;
  }

  /** As written in results and found in the names of files. */
  public String word() {
    return word;
  }

  /** Name of its landmark network in the jar. */
  public String landmarksFile() {
    return "landmarks-" + word + ".onnx";
  }
}
