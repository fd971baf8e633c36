package shinline.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Columns of text under a heading: what, and in which unit. Numbers line up on the right, words on
 * the left; words in the last column wrap where the table would be wider than a small terminal.
 */
public final class TextTable {

  /** Which edge of the column the cells touch. */
  public enum Edge {
    LEFT,
    RIGHT
  }

  /**
   * @param name first heading line
   * @param unit second heading line, empty for words
   */
  public record Column(String name, String unit, Edge edge) {}

  /**
   * @param text what is printed
   * @param shown the same with colour codes, which take no room
   */
  public record Cell(String text, String shown) {
    public static Cell of(String text) {
      return new Cell(text, text);
    }
  }

  private static final String GAP = "  ";

  /** Columns of the narrowest usual terminal. */
  private static final int MOST_WIDE = 80;

  /** Words in the last column are not pressed together more than this. */
  private static final int LEAST_WORDS = 20;

  private final List<Column> columns;
  private final List<List<Cell>> rows = new ArrayList<>();

  public TextTable(List<Column> columns) {
    this.columns = List.copyOf(columns);
  }

  public void row(List<Cell> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(cells.size() + " cells in " + columns.size() + " columns");
    }
    rows.add(List.copyOf(cells));
  }

  /** The lines of the table, without trailing blanks. */
  public List<String> lines(Layout layout) {
    int[] widths = IntStream.range(0, columns.size()).map(this::width).toArray();
    int last = widths.length - 1;
    if (columns.get(last).edge() == Edge.LEFT) {
      int before = IntStream.range(0, last).map(i -> widths[i] + GAP.length()).sum();
      widths[last] = Math.min(widths[last], Math.max(LEAST_WORDS, MOST_WIDE - before));
    }
    List<List<String>> heads =
        IntStream.range(0, widths.length)
            .mapToObj(i -> wrapped(columns.get(i).name(), widths[i]))
            .toList();
    int headLines = heads.stream().mapToInt(List::size).max().orElse(1);
    List<String> lines = new ArrayList<>();
    for (int k = 0; k < headLines; k++) {
      int line = k;
      List<String> texts =
          heads.stream()
              .map(
                  head -> {
                    // The shorter headings stand at the bottom, next to their units.
                    int own = line - headLines + head.size();
                    return own < 0 ? "" : head.get(own);
                  })
              .toList();
      lines.add(layout.paint().heading(line(texts, widths)));
    }
    lines.add(line(columns.stream().map(Column::unit).toList(), widths));
    lines.add(
        IntStream.of(widths)
            .mapToObj(layout.signs().rule()::repeat)
            .collect(Collectors.joining(GAP)));
    rows.forEach(row -> lines.addAll(lines(row, widths)));
    return lines;
  }

  /** A row, and below it what did not fit of the words in its last cell. */
  private List<String> lines(List<Cell> row, int[] widths) {
    int last = widths.length - 1;
    List<String> words = wrapped(row.get(last).text(), widths[last]);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      Cell cell = i == last && words.size() > 1 ? Cell.of(words.get(0)) : row.get(i);
      String blanks = " ".repeat(Math.max(0, widths[i] - cell.text().length()));
      out.append(i == 0 ? "" : GAP)
          .append(
              columns.get(i).edge() == Edge.LEFT ? cell.shown() + blanks : blanks + cell.shown());
    }
    List<String> lines = new ArrayList<>();
    lines.add(out.toString().stripTrailing());
    int before = IntStream.range(0, last).map(i -> widths[i] + GAP.length()).sum();
    words.stream().skip(1).forEach(rest -> lines.add(" ".repeat(before) + rest));
    return lines;
  }

  private String line(List<String> texts, int[] widths) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      String blanks = " ".repeat(widths[i] - texts.get(i).length());
      cells.add(columns.get(i).edge() == Edge.LEFT ? texts.get(i) + blanks : blanks + texts.get(i));
    }
    return String.join(GAP, cells).stripTrailing();
  }

  /** Between words; a word alone may be wider. */
  private static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** A heading of numbers may break between words; what stands below it may not. */
  private int width(int column) {
    Column head = columns.get(column);
    int name =
        head.edge() == Edge.LEFT
            ? head.name().length()
            : Stream.of(head.name().split(" ")).mapToInt(String::length).max().orElse(0);
    return Math.max(
        Math.max(name, head.unit().length()),
        rows.stream().mapToInt(r -> r.get(column).text().length()).max().orElse(0));
  }
}
