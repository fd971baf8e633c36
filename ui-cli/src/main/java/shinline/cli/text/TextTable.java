package shinline.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Columns of text under a two-line heading: what, and in which unit. Numbers line up on the right,
 * words on the left.
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
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(line(columns.stream().map(Column::name).toList(), widths)));
    lines.add(line(columns.stream().map(Column::unit).toList(), widths));
    lines.add(
        IntStream.of(widths)
            .mapToObj(layout.signs().rule()::repeat)
            .collect(Collectors.joining(GAP)));
    for (List<Cell> row : rows) {
      StringBuilder out = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        Cell cell = row.get(i);
        String blanks = " ".repeat(widths[i] - cell.text().length());
        out.append(i == 0 ? "" : GAP)
            .append(
                columns.get(i).edge() == Edge.LEFT ? cell.shown() + blanks : blanks + cell.shown());
      }
      lines.add(out.toString().stripTrailing());
    }
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

  private int width(int column) {
    Column head = columns.get(column);
    return Math.max(
        Math.max(head.name().length(), head.unit().length()),
        rows.stream().mapToInt(r -> r.get(column).text().length()).max().orElse(0));
  }
}
