package shinline.cli.sheet;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/** The tables of a file: its sets, and its athletes where it has them. */
record SheetFile(SheetTable sets, Optional<SheetTable> athletes) {
  static final String ATHLETES = "athletes";

  /** More is no sheet of a session. */
  private static final long MOST_BYTES = 8L << 20;

  /** A table's texts with the number of each row. */
  private record Line(int number, List<String> texts) {}

  /**
   * @throws CoachException when the file cannot be read or has no heading row
   */
  static SheetFile read(Path file) {
    try {
      byte[] bytes = bytes(file);
      if (isWorkbook(file)) {
        return workbook(file, bytes);
      }
      Path beside = athletesBeside(file);
      Optional<SheetTable> athletes =
          Files.isRegularFile(beside)
              ? Optional.of(table(beside, lines(bytes(beside))))
              : Optional.empty();
      return new SheetFile(table(file, lines(bytes)), athletes);
    } catch (CsvParseException | UncheckedIOException e) {
      throw CoachException.usage(Words.say("sheet.damaged", file));
    } catch (NoSuchFileException e) {
      throw CoachException.usage(Words.say("sheet.none", file));
    } catch (IOException e) {
      throw CoachException.usage(Words.say("sheet.closed", file));
    }
  }

  static boolean isWorkbook(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".xlsx");
  }

  /** The athletes of {@code day.csv} are in {@code day-athletes.csv}. */
  static Path athletesBeside(Path file) {
    return beside(file, ATHLETES);
  }

  static Path beside(Path file, String what) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    return file.resolveSibling(stem + "-" + what + ".csv");
  }

  /** Whether a spreadsheet has the file open: what is typed there and not saved is not read. */
  static boolean isOpenElsewhere(Path file) {
    String name = String.valueOf(file.getFileName());
    return Files.exists(file.resolveSibling("~$" + name))
        || Files.exists(file.resolveSibling(".~lock." + name + "#"));
  }

  private static byte[] bytes(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw CoachException.usage(Words.say("sheet.large", file, MOST_BYTES >> 20));
    }
    return Files.readAllBytes(file);
  }

  private static List<Line> lines(byte[] bytes) {
    String text = text(bytes);
    List<Line> lines = new ArrayList<>();
    for (CsvRecord record : CsvReader.builder().fieldSeparator(separator(text)).ofCsvRecord(text)) {
      lines.add(new Line((int) record.getStartingLineNumber(), record.getFields()));
    }
    return lines;
  }

  /** UTF-8; a spreadsheet on Windows may write its own code page instead. */
  private static String text(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      text = new String(bytes, Charset.forName("windows-1252"));
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** Where the comma is the decimal sign, spreadsheets part columns by semicolons. */
  private static char separator(String text) {
    String head = text.lines().findFirst().orElse("");
    char best = ',';
    for (char each : new char[] {';', '\t'}) {
      if (count(head, each) > count(head, best)) {
        best = each;
      }
    }
    return best;
  }

  private static long count(String text, char sign) {
    return text.chars().filter(c -> c == sign).count();
  }

  private static SheetFile workbook(Path file, byte[] bytes) {
    Optional<SheetTable> athletes = Optional.empty();
    Optional<SheetTable> sets = Optional.empty();
    for (Page page : pages(file, bytes)) {
      if (page.name().strip().equalsIgnoreCase(ATHLETES)) {
        athletes = Optional.of(table(file, page.lines()));
      } else if (sets.isEmpty()) {
        sets = Optional.of(table(file, page.lines()));
      }
    }
    return new SheetFile(
        sets.orElseThrow(() -> CoachException.usage(Words.say("sheet.empty", file))), athletes);
  }

  /** One of the sheets of a workbook. */
  private record Page(String name, List<Line> lines) {}

  /** The library tells of a damaged file by whatever its parts throw. */
  private static List<Page> pages(Path file, byte[] bytes) {
    try (ReadableWorkbook book =
        new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
      List<Page> pages = new ArrayList<>();
      for (Sheet sheet : book.getSheets().toList()) {
        pages.add(new Page(sheet.getName(), lines(sheet)));
      }
      return pages;
    } catch (IOException | RuntimeException e) {
      // The bytes are read: what is wrong is in them.
      throw CoachException.usage(Words.say("sheet.damaged", file));
    }
  }

  private static List<Line> lines(Sheet sheet) throws IOException {
    List<Line> lines = new ArrayList<>();
    for (Row row : sheet.read()) {
      List<String> texts = new ArrayList<>();
      for (int i = 0; i < row.getCellCount(); i++) {
        texts.add(row.getOptionalCell(i).map(SheetFile::text).orElse(""));
      }
      lines.add(new Line(row.getRowNum(), texts));
    }
    return lines;
  }

  private static String text(Cell cell) {
    if (cell.getType() == CellType.NUMBER) {
      return isDate(cell)
          ? cell.asDate().toLocalDate().toString()
          : cell.asNumber().stripTrailingZeros().toPlainString();
    }
    return cell.getText() == null ? "" : cell.getText();
  }

  /** A spreadsheet keeps a date as a number, and only its format tells. */
  private static boolean isDate(Cell cell) {
    String format = cell.getDataFormatString();
    if (format == null) {
      return false;
    }
    String bare = format.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.", "").toLowerCase(Locale.ROOT);
    return bare.contains("y") || bare.contains("d") && bare.contains("m");
  }

  private static SheetTable table(Path file, List<Line> lines) {
    Line head =
        lines.stream()
            .filter(l -> l.texts().stream().anyMatch(t -> !t.isBlank()))
            .findFirst()
            .orElseThrow(() -> CoachException.usage(Words.say("sheet.empty", file)));
    List<String> headings = head.texts().stream().map(SheetTable::heading).toList();
    for (int i = 0; i < headings.size(); i++) {
      if (!headings.get(i).isEmpty() && headings.indexOf(headings.get(i)) != i) {
        throw CoachException.usage(Words.say("sheet.heading-twice", file, headings.get(i)));
      }
    }
    List<SheetTable.Row> rows = new ArrayList<>();
    for (Line line : lines) {
      if (line.number() <= head.number()) {
        continue;
      }
      Map<String, String> cells = new LinkedHashMap<>();
      for (int i = 0; i < Math.min(headings.size(), line.texts().size()); i++) {
        String cell = line.texts().get(i).strip();
        if (!cell.isEmpty() && !headings.get(i).isEmpty()) {
          cells.put(headings.get(i), cell);
        }
      }
      if (!cells.isEmpty()) {
        rows.add(new SheetTable.Row(line.number(), cells));
      }
    }
    return new SheetTable(headings.stream().filter(h -> !h.isEmpty()).toList(), rows);
  }
}
