package shinline.cli.report;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/**
 * What one window of a page shows, to be kept as a picture and told from a later one. Another
 * computer has other fonts and other last digits: words count, numbers nearly, and the picture as
 * it is seen from afar.
 *
 * @param png the window
 * @param words of the window, in the order of the page
 */
record PagePicture(byte[] png, List<String> words) {
  /** Cells of the picture seen from afar, across. */
  private static final int CELLS = 28;

  private static final Pattern NUMBER = Pattern.compile("[-+−]?[0-9]+([.,][0-9]+)?");

  /** Readings of another processor differ by a few thousandths; of another fit, by more. */
  private static final double SAME_NUMBER = 0.2;

  PagePicture {
    words = List.copyOf(words);
  }

  static PagePicture read(Path png, Path words) throws IOException {
    return new PagePicture(
        Files.readAllBytes(png), List.of(Files.readString(words).strip().split("\\s+")));
  }

  void write(Path to, Path wordsTo) throws IOException {
    Files.createDirectories(to.getParent());
    Files.write(to, png);
    Files.writeString(wordsTo, String.join("\n", words) + "\n");
  }

  /**
   * The first words in which the two differ, each with its counterpart; empty when they tell the
   * same. Where a font is wider the window ends some words earlier.
   */
  List<String> differences(PagePicture other) {
    int common = Math.min(words.size(), other.words.size());
    if (common < 0.8 * Math.max(words.size(), other.words.size())) {
      return List.of(words.size() + " words, " + other.words.size() + " words");
    }
    return IntStream.range(0, common)
        .filter(i -> !same(words.get(i), other.words.get(i)))
        .mapToObj(i -> words.get(i) + ", " + other.words.get(i))
        .limit(5)
        .toList();
  }

  private static boolean same(String a, String b) {
    if (NUMBER.matcher(a).replaceAll("#").equals(NUMBER.matcher(b).replaceAll("#"))) {
      double[] inA = numbers(a);
      double[] inB = numbers(b);
      return IntStream.range(0, inA.length)
          .allMatch(i -> Math.abs(inA[i] - inB[i]) <= SAME_NUMBER + 1e-9);
    }
    return false;
  }

  private static double[] numbers(String word) {
    return NUMBER
        .matcher(word)
        .results()
        .mapToDouble(n -> Double.parseDouble(n.group().replace('−', '-').replace(',', '.')))
        .toArray();
  }

  /** How much the two differ from afar: mean of the cells' differences in brightness, 0 to 255. */
  double unlike(PagePicture other) {
    int[] mine = cells();
    int[] theirs = other.cells();
    return mine.length != theirs.length
        ? 255
        : IntStream.range(0, mine.length)
            .map(i -> Math.abs(mine[i] - theirs[i]))
            .average()
            .orElse(255);
  }

  private int[] cells() {
    BufferedImage whole = picture();
    int down = Math.max(1, CELLS * whole.getHeight() / whole.getWidth());
    // In halves, since a bilinear step looks at four pixels only.
    BufferedImage small = whole;
    while (small.getWidth() > 2 * CELLS) {
      small = shrunk(small, small.getWidth() / 2, small.getHeight() / 2);
    }
    small = shrunk(small, CELLS, down);
    return small.getRaster().getSamples(0, 0, CELLS, down, 0, new int[CELLS * down]);
  }

  private static BufferedImage shrunk(BufferedImage from, int width, int height) {
    BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = to.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(from, 0, 0, width, height, null);
    g.dispose();
    return to;
  }

  private BufferedImage picture() {
    try {
      return ImageIO.read(new ByteArrayInputStream(png));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
