package shinline.cli.speed;

import java.nio.file.Path;
import java.util.OptionalDouble;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.FfmpegClipReader;
import shinline.vision.clip.FrameChoice;

/** Clips through the program's own reader, on the thread that asks. */
final class Reading {
  private Reading() {}

  /**
   * @param threads of the decoder, 1 or more
   */
  static Clip open(Path file, int threads, FrameChoice choice) {
    return new FfmpegClipReader()
        .open(file, new ClipOptions(OptionalDouble.empty(), threads), choice)
        .fold(
            opened -> opened.clip(),
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }

  /** Reads a clip to its end, and tells the seconds it took. */
  static double wallS(Path file, int threads, FrameChoice choice) {
    long start = System.nanoTime();
    try (Clip clip = open(file, threads, choice)) {
      while (clip.next().isPresent()) {
        // Nothing is done with it.
      }
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
