package shinline.cli.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;

/**
 * A worker that damages a clip in many ways, one number a way, and reads each to its end. It prints
 * a line when it begins one and a line when it is done, so that whoever watches knows which one it
 * died or hung at. The same number always gives the same damage.
 */
final class MangledClips {
  private static final int SECTOR = 512;
  private static final int MOST_FLIPS = 60;

  private MangledClips() {}

  /** Clip, scratch folder, seed, first number, number after the last. */
  public static void main(String[] words) throws IOException {
    byte[] whole = Files.readAllBytes(Path.of(words[0]));
    Path scratch = Path.of(words[1]).resolve("mangled.mp4");
    long seed = Long.parseLong(words[2]);
    for (int n = Integer.parseInt(words[3]); n < Integer.parseInt(words[4]); n++) {
      System.out.println("begin " + n);
      Files.write(scratch, mangled(whole, new Random(seed * 1_000_003 + n)));
      System.out.println("done " + n + " " + read(scratch));
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

  private static byte[] mangled(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    switch (random.nextInt(4)) {
      case 0 -> {
        for (int i = random.nextInt(MOST_FLIPS); i >= 0; i--) {
          bytes[place(bytes, random)] ^= (byte) (1 << random.nextInt(8));
        }
      }
      case 1 -> bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
      case 2 -> {
        int from = random.nextInt(bytes.length / SECTOR) * SECTOR;
        int to = Math.min(bytes.length, from + SECTOR * (1 + random.nextInt(8)));
        Arrays.fill(bytes, from, to, (byte) 0);
      }
      default -> {
        // A piece of the film in place of another, its index included.
        int length = 1 + random.nextInt(SECTOR);
        int from = random.nextInt(bytes.length - length);
        int to = place(bytes, random);
        System.arraycopy(whole, from, bytes, to, Math.min(length, bytes.length - to));
      }
    }
    return bytes;
  }

  /** Half of the damage hits the first or last twentieth, where the index lies. */
  private static int place(byte[] bytes, Random random) {
    int edge = Math.max(1, bytes.length / 20);
    return switch (random.nextInt(4)) {
      case 0 -> random.nextInt(edge);
      case 1 -> bytes.length - 1 - random.nextInt(edge);
      default -> random.nextInt(bytes.length);
    };
  }
}
