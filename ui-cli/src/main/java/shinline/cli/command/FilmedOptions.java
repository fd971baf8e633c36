package shinline.cli.command;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import shinline.cli.text.Length;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.target.Target;
import shinline.metrics.track.Side;
import shinline.metrics.track.ToldLegs;
import shinline.vision.observation.DiscWanted;

/** What is asked of a clip or a picture, and what the coach knows of how it was taken. */
final class FilmedOptions {
  private static final double SHORTEST_ATHLETE_M = 1.0;
  private static final double TALLEST_ATHLETE_M = 2.5;
  private static final double LOWEST_BENCH_M = 0.1;
  private static final double HIGHEST_BENCH_M = 1.0;
  private static final double SMALLEST_DISC_M = 0.1;
  private static final double LARGEST_DISC_M = 0.6;
  private static final double STEEPEST_ROLL_DEG = 45;
  private static final double STEEPEST_PITCH_DEG = 35;

  @Option(
      names = "--target",
      paramLabel = "SHIN|FILE",
      completionCandidates = CheckCommand.ShinWords.class,
      descriptionKey = "shinline.filmed.target")
  private @Nullable Target target;

  @Option(names = "--height", paramLabel = "LENGTH", descriptionKey = "shinline.filmed.height")
  private @Nullable Length height;

  @Option(names = "--bench", paramLabel = "LENGTH", descriptionKey = "shinline.filmed.bench")
  private @Nullable Length bench;

  @Option(names = "--disc", paramLabel = "DIAMETER", descriptionKey = "shinline.filmed.disc")
  private @Nullable Length disc;

  @Option(names = "--disc-at", paramLabel = "X,Y", descriptionKey = "shinline.filmed.disc-at")
  private DiscWanted.@Nullable Place discAt;

  @Option(names = "--roll", paramLabel = "DEG", descriptionKey = "shinline.filmed.roll")
  private @Nullable Double roll;

  @Option(names = "--pitch", paramLabel = "DEG", descriptionKey = "shinline.filmed.pitch")
  private @Nullable Double pitch;

  @Option(names = "--front", paramLabel = "LEG", descriptionKey = "shinline.filmed.front")
  private @Nullable Side front;

  @Option(names = "--facing", paramLabel = "SIDE", descriptionKey = "shinline.filmed.facing")
  private @Nullable Side facing;

  /**
   * What is asked, and told.
   *
   * @throws ParameterException when a value is out of range
   */
  SetRequest request(CommandLine line) {
    SetRequest request = SetRequest.of(target == null ? Target.none() : target);
    if (height != null) {
      within(line, height, SHORTEST_ATHLETE_M, TALLEST_ATHLETE_M, "--height");
      request = request.withAthleteHeightM(height.metres());
    }
    if (bench != null) {
      within(line, bench, LOWEST_BENCH_M, HIGHEST_BENCH_M, "--bench");
      request = request.withBenchHeightM(bench.metres());
    }
    if (roll != null) {
      if (!(Math.abs(roll) <= STEEPEST_ROLL_DEG)) {
        throw new ParameterException(line, Words.say("check.roll-range", roll.toString()));
      }
      request = request.withRollDeg(roll);
    }
    if (pitch != null) {
      if (!(Math.abs(pitch) <= STEEPEST_PITCH_DEG)) {
        throw new ParameterException(line, Words.say("check.pitch-range", pitch.toString()));
      }
      request = request.withPitchDeg(pitch);
    }
    return request.withLegs(new ToldLegs(Optional.ofNullable(facing), Optional.ofNullable(front)));
  }

  /**
   * The disc to look for.
   *
   * @throws ParameterException when its diameter is out of range, or lacking
   */
  Optional<DiscWanted> disc(CommandLine line) {
    if (disc == null) {
      if (discAt != null) {
        throw new ParameterException(line, Words.say("check.disc-at-alone"));
      }
      return Optional.empty();
    }
    discWithin(line, disc, "--disc");
    return Optional.of(new DiscWanted(disc.metres(), Optional.ofNullable(discAt)));
  }

  /** Whether a disc can have that diameter. */
  static void discWithin(CommandLine line, Length diameter, String option) {
    within(line, diameter, SMALLEST_DISC_M, LARGEST_DISC_M, option);
  }

  private static void within(
      CommandLine line, Length given, double min, double max, String option) {
    if (given.metres() < min || given.metres() > max) {
      throw new ParameterException(
          line,
          Words.say(
              "check.length-range", option, given.toString(), new Length(min), new Length(max)));
    }
  }
}
