package shinline.cli.team;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.csv.CsvTable;
import shinline.cli.csv.DecimalSign;
import shinline.cli.finding.ClipFinding;
import shinline.cli.record.MeasuredSet;
import shinline.metrics.result.Measure;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** The session as a table, a row a set: RFC 4180, UTF-8; a coach's own columns come last. */
public final class SessionCsv {
  private SessionCsv() {}

  public static void write(SessionView session, DecimalSign sign, Writer out) throws IOException {
    List<SetOutcome> sets =
        session.athletes().stream()
            .flatMap(a -> a.sets().stream())
            .sorted(java.util.Comparator.comparingInt(s -> s.planned().row()))
            .toList();
    TreeSet<String> others = new TreeSet<>();
    sets.forEach(s -> others.addAll(s.planned().others().keySet()));
    List<String> head =
        new ArrayList<>(
            List.of(
                "row",
                "clip",
                "athlete",
                "leg",
                "date",
                "step",
                "set",
                "purpose",
                "asked_sets",
                "asked_reps",
                "target",
                "tempo",
                "load",
                "load_unit",
                "load_kind",
                "pain",
                "state",
                "on_record",
                "reps",
                "clean_reps",
                "hit",
                "near",
                "miss",
                "unclear",
                "flags"));
    for (Measure measure : Measure.values()) {
      head.add(measure.jsonName());
      head.add(measure.jsonName() + "PlusMinus");
    }
    head.addAll(List.of("loweringS", "holdS", "driveSpeedMps", "note"));
    head.addAll(others);
    CsvTable.write(
        Stream.concat(
            Stream.of(head),
            sets.stream()
                .map(
                    set -> {
                      List<String> cells = row(set, sign);
                      Map<String, String> own = set.planned().others();
                      others.forEach(o -> cells.add(CsvTable.defused(own.getOrDefault(o, ""))));
                      return cells;
                    })),
        sign,
        out);
  }

  private static List<String> row(SetOutcome set, DecimalSign sign) {
    Optional<SetEntry> entry = set.entry();
    Optional<SetCounts> counts = entry.map(SetEntry::counts);
    Optional<SetCounts.Verdicts> verdicts = counts.flatMap(SetCounts::verdicts);
    List<String> cells = new ArrayList<>();
    cells.add("" + set.planned().row());
    cells.add(CsvTable.defused(set.planned().clip().orElse("")));
    cells.add(CsvTable.defused(set.athlete().written()));
    cells.add(word(set.leg()));
    cells.add(text(entry, e -> e.date().toString()));
    cells.add(CsvTable.defused(text(entry, SetEntry::step)));
    cells.add(CsvTable.defused(set.planned().work().label().orElse("")));
    cells.add(set.planned().work().purpose().word());
    cells.add(
        entry.isPresent() && entry.get().asked().sets().isPresent()
            ? "" + entry.get().asked().sets().getAsInt()
            : "");
    cells.add(text(entry, e -> "" + e.asked().reps()));
    cells.add(CsvTable.defused(text(entry, e -> e.asked().target())));
    cells.add(CsvTable.defused(text(entry.flatMap(e -> e.asked().tempo()), t -> t)));
    cells.add(
        text(entry.flatMap(SetEntry::load), l -> sign.cell(l.mass().value().toPlainString())));
    cells.add(text(entry.flatMap(SetEntry::load), l -> l.mass().unit().word()));
    cells.add(text(entry.flatMap(SetEntry::load), l -> l.kind().word()));
    cells.add(word(set.planned().seen().pain()));
    cells.add(word(set.finding().map(ClipFinding::state).orElse(null)));
    cells.add(word(set.onRecord()));
    cells.add(text(counts, c -> "" + c.reps()));
    cells.add(text(counts, c -> "" + c.cleanReps()));
    cells.add(text(verdicts, v -> "" + v.hit()));
    cells.add(text(verdicts, v -> "" + v.near()));
    cells.add(text(verdicts, v -> "" + v.miss()));
    cells.add(text(counts, c -> "" + c.unclear()));
    cells.add(
        text(
            counts,
            c ->
                c.flags().entrySet().stream()
                    .sorted(java.util.Map.Entry.comparingByKey())
                    .map(f -> f.getKey() + "=" + f.getValue())
                    .collect(Collectors.joining(" "))));
    Optional<MeasuredSet> measured = set.finding().map(ClipFinding::measured);
    Arrays.stream(Measure.values())
        .map(m -> measured.flatMap(s -> Optional.ofNullable(s.atBottom().get(m.jsonName()))))
        .forEach(
            mean -> {
              cells.add(text(mean, m -> sign.cell("" + m.mean())));
              cells.add(
                  text(mean.flatMap(MeasuredSet.BottomMean::plusMinus), v -> sign.cell("" + v)));
            });
    cells.add(text(measured.flatMap(MeasuredSet::loweringS), v -> sign.cell("" + v)));
    cells.add(text(measured.flatMap(MeasuredSet::holdS), v -> sign.cell("" + v)));
    cells.add(text(measured.flatMap(MeasuredSet::driveSpeedMps), v -> sign.cell("" + v)));
    cells.add(CsvTable.defused(set.planned().seen().note().orElse("")));
    return cells;
  }

  private static <T> String text(Optional<T> value, Function<T, String> of) {
    return value.map(of).orElse("");
  }

  private static String word(@org.jspecify.annotations.Nullable Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
