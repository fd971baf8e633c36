package shinline.cli.sheet;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import shinline.cli.record.AthleteName;
import shinline.cli.text.Length;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.track.Side;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;

/** The cells of one row as what they stand for; what cannot be read is told with its column. */
final class SheetCells {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(kg|lb)?");
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2}).*");
  private static final Pattern DOTS = Pattern.compile("(\\d{1,2})\\.\\s*(\\d{1,2})\\.\\s*(\\d{4})");
  private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})");
  private static final Set<String> YES = Set.of("yes", "y", "true");
  private static final Set<String> NO = Set.of("no", "n", "false");

  /** A sheet written ahead has these filled in while nobody has done the set. */
  private static final Set<String> WRITTEN_AHEAD = Set.of("clip", "date", "purpose", "load_unit");

  private final SheetTable.Row row;
  private final String where;
  private final List<String> problems = new ArrayList<>();

  SheetCells(SheetTable.Row row, String where) {
    this.row = row;
    this.where = where;
  }

  List<String> problems() {
    return problems;
  }

  /** Whether the row is still as it was written for the coach to fill in. */
  boolean isPrepared() {
    return WRITTEN_AHEAD.containsAll(row.cells().keySet());
  }

  /** The set; empty when something is wrong with the row. */
  Optional<PlannedSet> set() {
    Optional<AthleteName> athlete = need("athlete", row.cell("athlete")).map(AthleteName::new);
    Optional<Side> leg = need("leg", row.cell("leg")).flatMap(this::leg);
    Optional<LocalDate> date = read("date", this::date, Words.say("sheet.date.do"));
    PlannedSet.Work work =
        new PlannedSet.Work(
            row.cell("step"),
            row.cell("set"),
            word(
                    "purpose",
                    Purpose::of,
                    Arrays.stream(Purpose.values()).map(Purpose::word).toList())
                .orElse(Purpose.WORK),
            count("asked_sets"),
            count("asked_reps"),
            row.cell("target"),
            row.cell("tempo"),
            row.cell("depth"));
    PlannedSet.Carried carried = carried();
    PlannedSet.Lengths lengths = new PlannedSet.Lengths(length("height"), length("bench"));
    PlannedSet.Seen seen =
        new PlannedSet.Seen(count("done_reps"), count("clean_reps"), pain(), row.cell("note"));
    if (row.cell("clip").isEmpty()) {
      need("done_reps", seen.doneReps());
      need("clean_reps", seen.cleanReps());
    }
    if (seen.cleanReps().orElse(0) > seen.doneReps().orElse(Integer.MAX_VALUE)) {
      wrong("clean_reps", row.cell("clean_reps").orElse(""), Words.say("sheet.clean-reps.do"));
    }
    if (work.reps().filter(r -> r == 0).isPresent()
        || work.sets().filter(s -> s == 0).isPresent()) {
      wrong("asked_reps", "0", Words.say("sheet.count.do"));
    }
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PlannedSet(
            row.number(),
            row.cell("clip"),
            athlete.orElseThrow(),
            leg.orElseThrow(),
            date,
            work,
            carried,
            lengths,
            seen,
            others()));
  }

  /** A row of the athletes' table. */
  Optional<ListedAthlete> athlete() {
    Optional<AthleteName> name = need("athlete", row.cell("athlete")).map(AthleteName::new);
    Optional<Length> height = length("height");
    return name.map(n -> new ListedAthlete(n, height, row.cell("start_step")));
  }

  private Map<String, String> others() {
    Map<String, String> others = new LinkedHashMap<>(row.cells());
    SheetColumn.headings().forEach(others::remove);
    return others;
  }

  private PlannedSet.Carried carried() {
    Optional<MassUnit> unit = word("load_unit", MassUnit::of, List.of("kg", "lb"));
    Optional<LoadKind> kind =
        word(
            "load_kind",
            LoadKind::of,
            Arrays.stream(LoadKind.values()).map(LoadKind::word).toList());
    return new PlannedSet.Carried(mass("load", unit), kind, mass("vest", unit));
  }

  private Optional<Mass> mass(String column, Optional<MassUnit> unit) {
    return read(
        column,
        text -> {
          if (text.equals("none")) {
            return Optional.of(Mass.zero(MassUnit.KG));
          }
          Matcher m = NUMBER_AND_UNIT.matcher(text);
          if (!m.matches()) {
            return Optional.empty();
          }
          MassUnit own =
              Optional.ofNullable(m.group(2))
                  .flatMap(MassUnit::of)
                  .or(() -> unit)
                  .orElse(MassUnit.KG);
          return Optional.of(new Mass(new BigDecimal(m.group(1).replace(',', '.')), own));
        },
        Words.say("sheet.mass.do"));
  }

  private Optional<Length> length(String column) {
    return read(
        column,
        // A sheet's column of heights in centimetres, and of benches, seldom repeats the unit.
        text -> Length.parse(text.matches("\\d{2,3}([.,]\\d+)?") ? text + "cm" : text),
        Words.say("sheet.length.do"));
  }

  private Optional<Integer> count(String column) {
    return read(
        column,
        text ->
            text.matches("\\d{1,3}([.,]0+)?")
                ? Optional.of(Integer.parseInt(text.replaceAll("[.,].*", "")))
                : Optional.empty(),
        Words.say("sheet.count.do"));
  }

  private Pain pain() {
    return read(
            "pain",
            text ->
                YES.contains(text)
                    ? Optional.of(Pain.YES)
                    : NO.contains(text) ? Optional.of(Pain.NO) : Optional.empty(),
            Words.say("sheet.pain.do"))
        .orElse(Pain.NOT_ASKED);
  }

  private Optional<Side> leg(String text) {
    Optional<Side> leg =
        switch (text.toLowerCase(Locale.ROOT)) {
          case "left", "l" -> Optional.of(Side.LEFT);
          case "right", "r" -> Optional.of(Side.RIGHT);
          default -> Optional.empty();
        };
    if (leg.isEmpty()) {
      wrong("leg", text, Words.say("sheet.leg.do"));
    }
    return leg;
  }

  /** Day and month are told apart only where their order is plain. */
  private Optional<LocalDate> date(String text) {
    Matcher iso = ISO.matcher(text);
    Matcher dots = DOTS.matcher(text);
    Matcher slashes = SLASHES.matcher(text);
    if (iso.matches()) {
      return day(iso.group(1), iso.group(2), iso.group(3));
    } else if (dots.matches()) {
      return day(dots.group(3), dots.group(2), dots.group(1));
    } else if (slashes.matches()) {
      int first = Integer.parseInt(slashes.group(1));
      int second = Integer.parseInt(slashes.group(2));
      if (first > 12 || first == second) {
        return day(slashes.group(3), slashes.group(2), slashes.group(1));
      } else if (second > 12) {
        return day(slashes.group(3), slashes.group(1), slashes.group(2));
      }
    }
    return Optional.empty();
  }

  private static Optional<LocalDate> day(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private <T> Optional<T> word(
      String column, Function<String, Optional<T>> of, List<String> choices) {
    return read(
        column, of, Words.say("sheet.word.do", choices.stream().collect(Collectors.joining(", "))));
  }

  private <T> Optional<T> read(String column, Function<String, Optional<T>> of, String toDo) {
    Optional<String> text = row.cell(column).map(t -> t.toLowerCase(Locale.ROOT));
    Optional<T> found = text.flatMap(of);
    if (text.isPresent() && found.isEmpty()) {
      wrong(column, row.cell(column).orElse(""), toDo);
    }
    return found;
  }

  private <T> Optional<T> need(String column, Optional<T> value) {
    if (value.isEmpty() && row.cell(column).isEmpty()) {
      problems.add(Words.say("sheet.lacks", where, column));
    }
    return value;
  }

  private void wrong(String column, String text, String toDo) {
    String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
    problems.add(Words.say("sheet.wrong", where, column, shown, toDo));
  }
}
