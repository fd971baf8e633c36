package shinline.cli.check;

import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRequest.KnownLengths;
import shinline.vision.scene.NoDisc;

/** What the coach has to know when a wanted disc was not found. */
final class DiscNotes {
  private DiscNotes() {}

  /**
   * @param given what else centimetres may come from
   */
  static String of(NoDisc why, KnownLengths given) {
    String reason =
        why.fold(
            plain -> Words.of(plain, "text"),
            two -> Words.say("disc.two-sizes", two.diameterPx(), two.otherDiameterPx()));
    if (given.athleteHeightM().isPresent()) {
      return Words.say("disc.not-found.height", reason);
    }
    return Words.say(
        given.benchHeightM().isPresent() ? "disc.not-found.bench" : "disc.not-found", reason);
  }
}
