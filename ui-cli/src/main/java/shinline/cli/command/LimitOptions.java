package shinline.cli.command;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import shinline.cli.words.Words;
import shinline.vision.clip.ClipLimits;

/** The options that bound what one clip may ask of the computer. */
final class LimitOptions {
  private static final double LEAST = 0.1;
  private static final double MOST_MINUTES = 24 * 60;
  private static final double MOST_GAP_S = 600;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--limit-length",
      paramLabel = "MINUTES",
      descriptionKey = "shinline.shared.limit-length",
      defaultValue = "60")
  private double minutes;

  @Option(
      names = "--limit-gap",
      paramLabel = "SECONDS",
      descriptionKey = "shinline.shared.limit-gap",
      defaultValue = "30")
  private double gapS;

  @Mixin private PixelLimit pictures;

  @SuppressWarnings("NullAway.Init") // picocli sets the command and the defaults
  LimitOptions() {}

  /**
   * @throws ParameterException when one is out of range
   */
  ClipLimits limits() {
    check("--limit-length", minutes, MOST_MINUTES);
    check("--limit-gap", gapS, MOST_GAP_S);
    return new ClipLimits(60 * minutes, gapS, pictures.pixels());
  }

  private void check(String option, double given, double most) {
    if (!(given >= LEAST && given <= most)) {
      throw new ParameterException(
          command.commandLine(),
          Words.say("option.limit-range", option, Double.toString(given), LEAST, most));
    }
  }
}
