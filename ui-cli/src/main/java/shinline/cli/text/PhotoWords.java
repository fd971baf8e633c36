package shinline.cli.text;

import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRefusal;
import shinline.vision.still.StillRefusal;

/** What is said of a still picture where a clip would be told otherwise. */
public final class PhotoWords {
  private PhotoWords() {}

  /** Why it cannot be read, without a full stop. */
  public static String reason(StillRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "reason"),
        large ->
            Words.say(
                "photo.large.reason", large.widthPx(), large.heightPx(), large.mostPixels() / 1e6),
        small ->
            Words.say(
                "photo.small.reason", small.widthPx(), small.heightPx(), small.leastSidePx()));
  }

  /** What to do about it, without a full stop. */
  public static String advice(StillRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "advice"),
        large -> Words.say("photo.large.advice"),
        small -> Words.say("photo.small.advice"));
  }

  /** Why no posture was measured, without a full stop. */
  public static String reason(SetRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "photo-reason"),
        off -> RefusalWords.reason(off),
        part -> RefusalWords.reason(part),
        legs -> Words.say("photo.legs-alike.reason"),
        noRep -> RefusalWords.reason(noRep));
  }

  /** What to do about it, without a full stop. */
  public static String advice(SetRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "photo-advice"),
        off -> Words.say("photo.off-side.advice"),
        part -> RefusalWords.advice(part),
        legs -> Words.say("photo.legs-alike.advice"),
        noRep -> RefusalWords.advice(noRep));
  }
}
