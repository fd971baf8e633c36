package shinline.cli.text;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.Warning;

/** What a coach should know of how a set was filmed, in words. */
public final class SetUpWords {
  private SetUpWords() {}

  /** Most important first: those of the set, then those of the clip. */
  public static List<String> warnings(SetUp setUp, List<String> ofClip) {
    return Stream.concat(setUp.warnings().stream().map(SetUpWords::of), ofClip.stream()).toList();
  }

  static String of(Warning warning) {
    return warning.fold(
        plain -> Words.of(plain, "text"),
        off -> Words.say("warning.off-side", Math.round(off.yawDeg())),
        pitch -> Words.say("warning.pitch-unknown", pitch.shinPlusMinusDeg()),
        disc -> Words.of(disc.disc(), "warning", 100 * disc.share()),
        tall -> Words.say("warning.unusual-stature", tall.statureCm()),
        legs -> Words.say("warning.legs-unsure", Words.of(legs.frontLeg(), "name")),
        back -> Words.say("warning.back-unseen", where(back)));
  }

  private static String where(Warning.BackUnseen back) {
    if (back.reps().size() == back.all()) {
      return Words.say("warning.any-rep");
    }
    String reps = back.reps().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return Words.say(back.reps().size() == 1 ? "reps.one" : "reps.listed", reps);
  }
}
