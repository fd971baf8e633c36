package shinline.cli.process;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages the bytes of a file as cards, copies and editors do. */
final class Damage {
  private static final int SECTOR = 512;
  private static final int MOST_FLIPS = 60;

  /** What programs stumble over where they wait for a number, a word or an end. */
  private static final List<String> STUMBLING_BLOCKS =
      List.of(
          "NaN",
          "-1",
          "0",
          "1e999",
          "99999999999999999999",
          "-0.0",
          "\"",
          "'",
          "[[[[",
          "]",
          "{",
          "}",
          "\u0000",
          "null",
          "true",
          "{}",
          "\uFEFF",
          "=1+1",
          ",",
          ";",
          ":",
          "\n",
          "\r",
          "\t- ",
          "&a *a",
          "\u202E",
          "2026-02-30",
          "left",
          "<",
          "\\u",
          "\\",
          "%s",
          "{0}",
          "../../x",
          "1,5",
          "٣");

  private final Random random;

  Damage(Random random) {
    this.random = random;
  }

  /** Flipped bits, a lost end, zeroed sectors, or a piece in place of another. */
  byte[] ofBytes(byte[] whole) {
    byte[] bytes = whole.clone();
    switch (random.nextInt(4)) {
      case 0 -> {
        for (int i = random.nextInt(MOST_FLIPS); i >= 0; i--) {
          bytes[place(bytes)] ^= (byte) (1 << random.nextInt(8));
        }
      }
      case 1 -> bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
      case 2 -> {
        int from = random.nextInt(1 + bytes.length / SECTOR) * SECTOR;
        int to = Math.min(bytes.length, from + SECTOR * (1 + random.nextInt(8)));
        Arrays.fill(bytes, Math.min(from, to), to, (byte) 0);
      }
      default -> {
        // A piece of the file in place of another, its index included.
        int length = 1 + random.nextInt(Math.min(SECTOR, bytes.length - 1));
        int from = random.nextInt(bytes.length - length);
        int to = place(bytes);
        System.arraycopy(whole, from, bytes, to, Math.min(length, bytes.length - to));
      }
    }
    return bytes;
  }

  /**
   * Half the time the above, else some words that stumble, in place of what was there or before.
   */
  byte[] ofText(byte[] whole) {
    if (random.nextBoolean()) {
      return ofBytes(whole);
    }
    StringBuilder text = new StringBuilder(new String(whole, StandardCharsets.UTF_8));
    for (int i = random.nextInt(3); i >= 0; i--) {
      int at = random.nextInt(text.length() + 1);
      int end = at;
      while (random.nextBoolean() && end < text.length() && wordSign(text.charAt(end))) {
        end++;
      }
      String block = STUMBLING_BLOCKS.get(random.nextInt(STUMBLING_BLOCKS.size()));
      text.replace(at, end, block.repeat(random.nextInt(20) == 0 ? 5000 : 1));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static boolean wordSign(char sign) {
    return Character.isLetterOrDigit(sign) || sign == '.' || sign == '-';
  }

  /** Half of the damage hits the first or last twentieth, where a film's index lies. */
  private int place(byte[] bytes) {
    int edge = Math.max(1, bytes.length / 20);
    return switch (random.nextInt(4)) {
      case 0 -> random.nextInt(edge);
      case 1 -> bytes.length - 1 - random.nextInt(edge);
      default -> random.nextInt(bytes.length);
    };
  }
}
