package shinline.cli.text;

import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** What a coach types and reads for a pose model. Results and files keep the model's own word. */
public final class ModelWords {
  private ModelWords() {}

  public static String of(PoseModel model) {
    return Words.of(model, "name");
  }
}
