package shinline.cli.accuracy;

import java.util.List;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.target.TempoTarget.Phase;

/**
 * A target against which every clip is judged again, whatever it was filmed for: verdicts are right
 * or wrong whether or not anybody asked for that target.
 *
 * @param name as in a target file
 */
record AskedTarget(String name, Target target) {
  /** The house's presets, depth alone, and two usual tempos: one quick, one slow. */
  static final List<AskedTarget> ALL =
      List.of(
          preset(ShinPreset.UPRIGHT),
          preset(ShinPreset.OVER_TOE),
          preset(ShinPreset.PAST_TOE),
          new AskedTarget(
              Words.say("accuracy.target.full-depth"), with(DepthTarget.full(), TempoTarget.any())),
          new AskedTarget(
              Words.say("accuracy.target.tempo", "2-1-1"),
              with(DepthTarget.any(), new TempoTarget(about(2), about(1), about(1), open()))),
          new AskedTarget(
              Words.say("accuracy.target.tempo", "4-2-X"),
              with(DepthTarget.any(), new TempoTarget(about(4), about(2), open(), open()))));

  private static AskedTarget preset(ShinPreset preset) {
    return new AskedTarget(Words.say("accuracy.target.shin", preset.word()), Target.preset(preset));
  }

  private static Target with(DepthTarget depth, TempoTarget tempo) {
    return new Target(Optional.empty(), depth, tempo, Optional.empty(), Target.Margin.standard());
  }

  private static Optional<Phase> about(double seconds) {
    return Optional.of(
        new Phase(
            seconds - TempoTarget.DEFAULT_TOLERANCE_S, seconds + TempoTarget.DEFAULT_TOLERANCE_S));
  }

  private static Optional<Phase> open() {
    return Optional.empty();
  }
}
