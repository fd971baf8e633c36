package shinline.cli.sheet;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import shinline.cli.csv.CsvTable;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.words.Words;

/**
 * A sheet for the coach to fill in: a row a clip, room for sets judged by eye, the athletes on a
 * tab or in a second file, and what each column may hold.
 */
public final class NewSheet {
  private static final int BY_EYE = 8;
  private static final List<String> ATHLETE_HEADINGS = List.of("athlete", "height", "start_step");
  private static final String CHOICES = "choices";

  /** Rows of a spreadsheet that offer their choices; more than any session has. */
  private static final int LISTED_ROWS = 500;

  private final List<Filmed> clips;
  private final List<AthleteName> athletes;
  private final List<Choice> choices;
  private final LocalDate today;

  /** A clip and the day it was written. */
  public record Filmed(String clip, LocalDate day) {}

  /** What a column may hold. */
  public record Choice(String column, List<String> words) {
    public Choice {
      words = List.copyOf(words);
    }
  }

  /**
   * @param today day of sets judged by eye
   */
  public NewSheet(
      List<Filmed> clips, List<AthleteName> athletes, List<Choice> choices, LocalDate today) {
    this.clips = List.copyOf(clips);
    this.athletes = List.copyOf(athletes);
    this.choices = List.copyOf(choices);
    this.today = today;
  }

  /**
   * Writes the sheet; a coach's file in its place is left alone.
   *
   * @return what was written
   * @throws CoachException when it cannot be written
   */
  public List<Path> write(Path file, OutputFiles files) {
    if (SheetFile.isWorkbook(file)) {
      WholeFile whole = free(file, files);
      whole.replace(
          (path, how) -> {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(path, how))) {
              workbook(out);
            }
          });
      return List.of(file);
    }
    List<Path> all = List.of(file, SheetFile.athletesBeside(file), SheetFile.beside(file, CHOICES));
    List<WholeFile> wholes = all.stream().map(f -> free(f, files)).toList();
    wholes.get(0).write(w -> CsvTable.write(sets().stream(), w));
    wholes.get(1).write(w -> CsvTable.write(athleteRows().stream(), w));
    wholes.get(2).write(w -> CsvTable.write(choiceRows().stream(), w));
    return all;
  }

  private static WholeFile free(Path file, OutputFiles files) {
    WholeFile whole = files.file(file, Claim.OURS);
    whole.checkWritable();
    return whole;
  }

  private void workbook(OutputStream out) throws IOException {
    try (Workbook book = new Workbook(out, "shinline", "1.0")) {
      Worksheet sets = book.newWorksheet(Words.say("sheet.tab.sets"));
      fill(sets, sets());
      for (Choice choice : choices) {
        int column = SheetColumn.headings().indexOf(choice.column());
        int at = choices.indexOf(choice);
        // The words are on the tab of choices, a column each, below the heading.
        sets.range(1, column, LISTED_ROWS, column)
            .validateWithListByFormula(
                CHOICES
                    + "!$"
                    + letter(at)
                    + "$2:$"
                    + letter(at)
                    + "$"
                    + (choice.words().size() + 1))
            .allowBlank(true);
      }
      fill(book.newWorksheet(SheetFile.ATHLETES), athleteRows());
      fill(book.newWorksheet(CHOICES), choiceRows());
    }
  }

  private static char letter(int column) {
    return (char) ('A' + column);
  }

  private static void fill(Worksheet sheet, List<List<String>> rows) {
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        sheet.value(r, c, rows.get(r).get(c));
      }
    }
    for (int c = 0; c < rows.get(0).size(); c++) {
      sheet.style(0, c).bold().set();
      sheet.width(c, Math.max(10, rows.get(0).get(c).length() + 4));
    }
    sheet.freezePane(0, 1);
  }

  private List<List<String>> sets() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(SheetColumn.headings());
    clips.forEach(c -> rows.add(row(c.clip(), c.day())));
    for (int i = 0; i < BY_EYE; i++) {
      rows.add(row("", today));
    }
    return rows;
  }

  private static List<String> row(String clip, LocalDate day) {
    List<String> cells = new ArrayList<>();
    for (SheetColumn column : SheetColumn.values()) {
      cells.add(
          switch (column) {
            case CLIP -> clip;
            case DATE -> day.toString();
            default -> "";
          });
    }
    return cells;
  }

  private List<List<String>> athleteRows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(ATHLETE_HEADINGS);
    athletes.forEach(a -> rows.add(List.of(a.written(), "", "")));
    return rows;
  }

  private List<List<String>> choiceRows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(choices.stream().map(Choice::column).toList());
    int most = choices.stream().mapToInt(c -> c.words().size()).max().orElse(0);
    for (int i = 0; i < most; i++) {
      int row = i;
      rows.add(
          choices.stream().map(c -> row < c.words().size() ? c.words().get(row) : "").toList());
    }
    return rows;
  }
}
