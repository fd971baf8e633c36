package shinline.cli.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes tables as RFC 4180 tells, UTF-8 without a byte order mark: every current spreadsheet opens
 * it, and a mark spoils the first heading for programs.
 */
public final class CsvTable {
  private CsvTable() {}

  /** Rows with a comma between cells, the headings first. */
  public static void write(Stream<List<String>> rows, Writer out) throws IOException {
    write(rows, DecimalSign.POINT, out);
  }

  /**
   * @param sign with which the decimals in the rows are written
   */
  public static void write(Stream<List<String>> rows, DecimalSign sign, Writer out)
      throws IOException {
    CsvWriter csv =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.CRLF)
            .fieldSeparator(sign.separator())
            .build(out);
    rows.forEachOrdered(csv::writeRecord);
    csv.flush();
  }

  /** A text that a spreadsheet would take for a formula gets an apostrophe in front of it. */
  public static String defused(String text) {
    return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
