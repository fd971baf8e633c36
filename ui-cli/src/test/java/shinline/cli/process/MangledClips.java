package shinline.cli.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;

/**
 * A worker that damages clips in many ways, one number a way, and reads each to its end. It tells
 * {@link WatchedWorker} when it begins one and when it is done. The same number always gives the
 * same damage.
 */
final class MangledClips {
  private MangledClips() {}

  /** Folder of whole clips, scratch folder, seed, first number, number after the last. */
  public static void main(String[] words) throws IOException {
    List<Path> whole;
    try (Stream<Path> files = Files.list(Path.of(words[0]))) {
      whole = files.sorted().toList();
    }
    long seed = Long.parseLong(words[2]);
    for (int n = Integer.parseInt(words[3]); n < Integer.parseInt(words[4]); n++) {
      Path clip = whole.get(n % whole.size());
      Path scratch = Path.of(words[1]).resolve(String.valueOf(clip.getFileName()));
      WatchedWorker.begin(n);
      Damage damage = new Damage(new Random(seed * 1_000_003 + n));
      Files.write(scratch, damage.ofBytes(Files.readAllBytes(clip)));
      WatchedWorker.done(n, read(scratch));
    }
  }

  private static String read(Path file) {
    ClipOpening opening = ClipReader.standard().open(file, ClipOptions.defaults());
    return opening.fold(
        opened -> {
          try (Clip clip = opened.clip()) {
            Optional<Frame> frame = clip.next();
            while (frame.isPresent()) {
              frame = clip.next();
            }
            return clip.ending().getClass().getSimpleName();
          }
        },
        refused -> "Refused");
  }
}
