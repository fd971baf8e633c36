package shinline.cli.text;

import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRefusal;

/** Why no set was measured, and what to do about it, in the coach's words. */
public final class RefusalWords {
  private RefusalWords() {}

  /** Without a full stop. */
  public static String reason(SetRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "reason"),
        off ->
            Words.say(
                "refusal.off-side.reason", Math.round(off.yawDeg()), Math.round(off.mostDeg())),
        part -> Words.say("clip.part-behind.reason", part.fromS(), part.clipS()),
        legs -> Words.say("refusal.legs-alike.reason", Words.of(legs.doubt(), "reason")),
        noRep ->
            Words.say(
                "refusal.no-rep.reason",
                noRep
                    .first()
                    .map(reason -> Words.of(reason, "not-counted"))
                    .orElseGet(() -> Words.say("refusal.no-movement"))));
  }

  /** Without a full stop. */
  public static String advice(SetRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "advice"),
        off -> Words.say("refusal.off-side.advice"),
        part -> Words.say("clip.part-behind.advice"),
        legs -> Words.say("refusal.legs-alike.advice"),
        noRep -> Words.say("refusal.no-rep.advice"));
  }
}
