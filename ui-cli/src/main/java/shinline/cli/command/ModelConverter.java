package shinline.cli.command;

import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import shinline.cli.text.ModelWords;
import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** Reads the coach's word for a pose model, or the model's own, as results hold it. */
final class ModelConverter implements ITypeConverter<PoseModel> {
  @Override
  public PoseModel convert(String value) {
    return Arrays.stream(PoseModel.values())
        .filter(model -> ModelWords.of(model).equals(value) || model.word().equals(value))
        .findFirst()
        .orElseThrow(
            () -> new TypeConversionException(Words.say("check.no-model", value, words())));
  }

  private static String words() {
    return Arrays.stream(PoseModel.values()).map(ModelWords::of).collect(Collectors.joining(", "));
  }
}
