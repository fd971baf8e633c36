package shinline.cli.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.words.Words;

/**
 * A coach's sheet.
 *
 * @param sets rows that can be used
 * @param athletes of the athletes' table; empty when there is none
 * @param problems with rows that cannot be used, each with row and column
 * @param notes on what is used all the same
 */
public record SessionSheet(
    List<PlannedSet> sets,
    List<ListedAthlete> athletes,
    List<String> problems,
    List<String> notes) {

  public SessionSheet {
    sets = List.copyOf(sets);
    athletes = List.copyOf(athletes);
    problems = List.copyOf(problems);
    notes = List.copyOf(notes);
  }

  /** No sheet: nobody knows who is in the clips. */
  public static SessionSheet none() {
    return new SessionSheet(List.of(), List.of(), List.of(), List.of());
  }

  /**
   * @throws CoachException when the file cannot be read or lacks a column that is needed
   */
  public static SessionSheet read(Path file) {
    SheetFile tables = SheetFile.read(file);
    for (String needed : SheetColumn.needed()) {
      if (!tables.sets().headings().contains(needed)) {
        throw CoachException.usage(
            Words.say("sheet.no-heading", file, needed, String.join(", ", SheetColumn.needed())));
      }
    }
    List<String> problems = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    if (SheetFile.isOpenElsewhere(file)) {
      notes.add(Words.say("sheet.open-elsewhere", file));
    }
    List<ListedAthlete> athletes = new ArrayList<>();
    tables.athletes().ifPresent(t -> athletes(t, athletes, problems));
    List<PlannedSet> sets = new ArrayList<>();
    for (SheetTable.Row row : tables.sets().rows()) {
      SheetCells cells = new SheetCells(row, Words.say("sheet.row", row.number()));
      if (cells.isPrepared()) {
        continue;
      }
      Optional<PlannedSet> set = cells.set();
      problems.addAll(cells.problems());
      set.ifPresent(sets::add);
      set.map(PlannedSet::athlete)
          .filter(a -> !athletes.isEmpty() && athletes.stream().noneMatch(k -> k.name().sameAs(a)))
          .ifPresent(a -> notes.add(Words.say("sheet.athlete-unknown", row.number(), a.written())));
    }
    return new SessionSheet(sets, athletes, problems, notes);
  }

  private static void athletes(
      SheetTable table, List<ListedAthlete> athletes, List<String> problems) {
    for (SheetTable.Row row : table.rows()) {
      SheetCells cells = new SheetCells(row, Words.say("sheet.athletes-row", row.number()));
      cells.athlete().ifPresent(athletes::add);
      problems.addAll(cells.problems());
    }
  }

  /**
   * The same without an athlete, and without what was wrong with rows: it may tell whose they are.
   */
  public SessionSheet without(AthleteName athlete) {
    return new SessionSheet(
        sets.stream().filter(s -> !s.athlete().sameAs(athlete)).toList(),
        athletes.stream().filter(a -> !a.name().sameAs(athlete)).toList(),
        List.of(),
        List.of());
  }

  /** What the athletes' table says of somebody. */
  public Optional<ListedAthlete> athlete(AthleteName name) {
    return athletes.stream().filter(a -> a.name().sameAs(name)).findFirst();
  }
}
