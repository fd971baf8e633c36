package shinline.cli.format;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.csv.CsvTable;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.JudgementWords;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;

/**
 * One row a rep, for a spreadsheet: numbers with a point, each value followed by its ±, an empty
 * cell where nothing was measured. Names as in docs/result-format.md.
 */
public final class RepCsv {
  private static final int PLACES = 3;

  private static final List<ReadingKey<RepResult>> READINGS =
      Stream.of(ReadingKey.TEMPO, ReadingKey.AT_BOTTOM, ReadingKey.DRIVE)
          .flatMap(List::stream)
          .toList();

  private RepCsv() {}

  /** Writes heading and rows. */
  public static void write(ClipReport.Measured report, Writer out) throws IOException {
    String clip = report.clip().fileName();
    CsvTable.write(
        Stream.concat(Stream.of(names()), report.set().reps().stream().map(rep -> row(clip, rep))),
        out);
  }

  /** What such a file begins with. */
  public static String headings() {
    return String.join(",", names());
  }

  /** The heading alone: what a clip without a measured set has. */
  public static void header(Writer out) throws IOException {
    CsvTable.write(Stream.of(names()), out);
  }

  static List<String> names() {
    List<String> names =
        new ArrayList<>(List.of("clip", "rep", "verdict", "startS", "bottomS", "endS"));
    for (ReadingKey<RepResult> key : READINGS) {
      names.add(key.name());
      names.add(key.name() + "PlusMinus");
    }
    names.add("flags");
    names.add("reasons");
    return names;
  }

  private static List<String> row(String clip, RepResult rep) {
    List<String> cells = new ArrayList<>();
    cells.add(CsvTable.defused(clip));
    cells.add(Integer.toString(rep.rep()));
    cells.add(rep.verdict().map(v -> v.name().toLowerCase(Locale.ROOT)).orElse(""));
    cells.add(Decimals.fixed(rep.startS(), PLACES));
    cells.add(Decimals.fixed(rep.bottomS(), PLACES));
    cells.add(Decimals.fixed(rep.endS(), PLACES));
    for (ReadingKey<RepResult> key : READINGS) {
      Reading reading = key.of().apply(rep);
      cells.add(reading.fold(m -> Decimals.fixed(m.value(), PLACES), gap -> ""));
      cells.add(reading.fold(m -> Decimals.fixed(m.plusMinus(), PLACES), gap -> ""));
    }
    cells.add(
        rep.flags().stream()
            .map(Flag::kind)
            .map(FlagKind::jsonName)
            .distinct()
            .collect(Collectors.joining(" ")));
    cells.add(CsvTable.defused(String.join("; ", JudgementWords.reasons(rep))));
    return cells;
  }
}
