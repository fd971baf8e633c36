package shinline.cli.report;

import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;

/**
 * What to say to the athlete about a fault, and what the number beside it counts. Common practice
 * in our own words; one thing to do, not a list.
 */
public final class Cue {
  private Cue() {}

  /** A heading: what to do, in a few words. */
  public static String title(Flag flag) {
    return shinTooShort(flag) ? Words.say("cue.shin-short") : Words.of(flag.kind(), "cue");
  }

  /** One sentence to the athlete. */
  static String sentence(Flag flag) {
    return shinTooShort(flag)
        ? Words.say("cue.shin-short.sentence")
        : Words.of(flag.kind(), "cue-sentence");
  }

  /** What the value of a flag counts; a colon and the value follow. */
  static String counts(Flag flag) {
    return flag.kind() == FlagKind.SHIN_OFF_TARGET && flag.unit() != MeasureUnit.DEGREES
        ? Words.say("cue.knee.counts")
        : Words.of(flag.kind(), "counts");
  }

  private static boolean shinTooShort(Flag flag) {
    return flag.kind() == FlagKind.SHIN_OFF_TARGET && wantsMore(flag);
  }

  /** Whether a flag is raised by a value that is too small. */
  static boolean wantsMore(Flag flag) {
    return flag.value() < flag.limit();
  }
}
