package shinline.cli.demo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/** A sample clip that is part of the program; its athlete is computer-made. */
enum DemoClip {
  /** Four clean reps of the right leg on a bench. */
  CLEAN("gym1-bench-clean.mp4", 183),
  /** Three reps of the right leg on a bench, the last shallow. */
  SHALLOW("plain1-bench-shallow.mp4", 180),
  /** Five reps of the right leg from the floor, the last three shallow. */
  FLOOR("gym4-floor-portrait-rotated.mp4", 178);

  private final String file;
  private final int heightCm;

  DemoClip(String file, int heightCm) {
    this.file = file;
    this.heightCm = heightCm;
  }

  /** The athlete's. */
  int heightCm() {
    return heightCm;
  }

  /**
   * Puts a copy into a folder, as if it had been filmed then.
   *
   * @param name of the copy
   */
  void copy(Path folder, String name, Instant filmed) {
    Path copy = folder.resolve(name);
    try (InputStream clip = DemoClip.class.getResourceAsStream("clips/" + file)) {
      if (clip == null) {
        throw new IllegalStateException(file + " is missing from the program");
      }
      Files.copy(clip, copy);
      Files.setLastModifiedTime(copy, FileTime.from(filmed));
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("demo.unwritable", copy, String.valueOf(e.getMessage())));
    }
  }
}
