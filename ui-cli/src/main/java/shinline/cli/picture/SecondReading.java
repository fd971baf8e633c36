package shinline.cli.picture;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.cli.outcome.ClipFacts;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipLimits;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.FrameChoice;

/** Opens a clip again, in the same way as when it was measured. */
final class SecondReading {
  /** The first look leaves a core to the pose model; the second has the machine to itself. */
  private static final int DECODE_THREADS = 2;

  private SecondReading() {}

  /**
   * @param captureFps as the clip was measured with
   * @param choice which pictures to hand out; asked anew from the first when the clip is turned
   * @return the clip, to be closed; empty when it cannot be read, or is no longer the same
   */
  static Optional<Clip> at(
      ClipReader reader,
      Path file,
      OptionalDouble captureFps,
      ClipFacts facts,
      FrameChoice choice) {
    ClipOptions how = new ClipOptions(captureFps, DECODE_THREADS).within(ClipLimits.NONE);
    Optional<Clip> clip = open(reader, file, how, choice);
    if (clip.isEmpty() || fits(clip.get(), facts)) {
      return clip;
    }
    // The first look found the athlete lying and turned the picture.
    int missing = Math.floorMod(facts.rotationDeg() - clip.get().info().rotationDeg(), 360) / 90;
    clip.get().close();
    if (missing == 0) {
      return Optional.empty();
    }
    Optional<Clip> turned = open(reader, file, how.turnedMore(missing), choice);
    if (turned.isPresent() && !fits(turned.get(), facts)) {
      turned.get().close();
      return Optional.empty();
    }
    return turned;
  }

  private static boolean fits(Clip clip, ClipFacts facts) {
    return clip.info().rotationDeg() == facts.rotationDeg()
        && clip.info().widthPx() == facts.widthPx()
        && clip.info().heightPx() == facts.heightPx();
  }

  private static Optional<Clip> open(
      ClipReader reader, Path file, ClipOptions how, FrameChoice choice) {
    ClipOpening opening = reader.open(file, how, choice);
    return opening.fold(opened -> Optional.of(opened.clip()), refused -> Optional.empty());
  }
}
