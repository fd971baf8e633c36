package shinline.cli.text;

import shinline.cli.words.Words;
import shinline.vision.clip.ClipRefusal;

/** Why a clip cannot be read, and what to do about it, in the coach's words. */
public final class ClipWords {
  private ClipWords() {}

  /** Without a full stop. */
  public static String reason(ClipRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "reason"),
        other -> Words.of(other.content(), "reason"),
        unknown -> Words.say("clip.codec.reason", unknown.codec()),
        large ->
            Words.say(
                "clip.large.reason", large.widthPx(), large.heightPx(), large.mostPixels() / 1e6),
        tooLong -> Words.say("clip.long.reason", tooLong.seconds() / 60, tooLong.longestS() / 60),
        slow -> Words.say("clip.capture-rate.reason", slow.captureFps(), slow.playbackFps()));
  }

  /** Without a full stop. */
  public static String advice(ClipRefusal refusal) {
    return refusal.fold(
        plain -> Words.of(plain, "advice"),
        other -> Words.say("clip.content.advice"),
        unknown -> Words.say("clip.codec.advice"),
        large -> Words.say("clip.large.advice"),
        tooLong -> Words.say("clip.long.advice"),
        slow -> Words.say("clip.capture-rate.advice"));
  }
}
