package shinline.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shinline.cli.words.Words;
import shinline.metrics.result.SetUp;
import shinline.metrics.track.ShownLegs;
import shinline.metrics.track.Side;

/** The coach's word counts, and where the picture clearly shows something else it is said. */
final class ToldNotes {
  /** Share of the evidence from which it is clear which way the athlete faces. */
  private static final double CLEAR_FACING = 0.8;

  private ToldNotes() {}

  static List<String> of(SetUp setUp) {
    ShownLegs shown = setUp.shownLegs();
    List<String> notes = new ArrayList<>();
    if (shown.facing() != setUp.facing() && shown.facingAgreement() > CLEAR_FACING) {
      notes.add(Words.say("clip.note.told-facing", word(setUp.facing()), word(shown.facing())));
    } else if (shown.frontLeg() != setUp.frontLeg() && shown.frontLegClear()) {
      // Which leg is near the camera follows from the facing: only one of the two can be told.
      notes.add(Words.say("clip.note.told-front", word(setUp.frontLeg()), word(shown.frontLeg())));
    }
    return notes;
  }

  private static String word(Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }
}
