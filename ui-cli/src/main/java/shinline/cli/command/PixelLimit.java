package shinline.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import shinline.cli.words.Words;

/** The option that bounds how large a picture may be. */
final class PixelLimit {
  private static final double LEAST = 0.1;
  private static final double MOST_MEGAPIXELS = 268;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--limit-pixels",
      paramLabel = "MILLIONS",
      descriptionKey = "shinline.shared.limit-pixels",
      defaultValue = "67")
  private double megapixels;

  @SuppressWarnings("NullAway.Init") // picocli sets the command and the default
  PixelLimit() {}

  /**
   * @throws ParameterException when it is out of range
   */
  long pixels() {
    if (!(megapixels >= LEAST && megapixels <= MOST_MEGAPIXELS)) {
      throw new ParameterException(
          command.commandLine(),
          Words.say(
              "option.limit-range",
              "--limit-pixels",
              Double.toString(megapixels),
              LEAST,
              MOST_MEGAPIXELS));
    }
    return Math.round(1e6 * megapixels);
  }
}
