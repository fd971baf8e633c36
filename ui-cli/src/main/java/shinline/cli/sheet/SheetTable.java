package shinline.cli.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A table with a heading row, as texts.
 *
 * @param headings in the order of the file, in the form of {@link #heading}
 * @param rows without those that are blank
 */
record SheetTable(List<String> headings, List<Row> rows) {
  SheetTable {
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param number in the file, from 1, the heading row counted
   * @param cells by heading; blank ones left out
   */
  record Row(int number, Map<String, String> cells) {
    Row {
      cells = Map.copyOf(cells);
    }

    Optional<String> cell(String heading) {
      return Optional.ofNullable(cells.get(heading));
    }
  }

  /** "Done reps", "done-reps" and "done_reps" are one heading. */
  static String heading(String written) {
    return written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
  }
}
