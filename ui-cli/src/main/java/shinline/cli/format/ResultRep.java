package shinline.cli.format;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.file.FlagImages;
import shinline.cli.text.JudgementWords;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.Verdict;

/**
 * One rep. Readings stand by their {@link ReadingKey}.
 *
 * @param bar empty without a bar on the back
 * @param notMeasured key of each empty reading, with {@code bar.} before those of the bar, whose
 *     speeds are called as the drive's → why
 */
public record ResultRep(
    int rep,
    double startS,
    double bottomStartS,
    double bottomS,
    double bottomEndS,
    double endS,
    boolean shortRange,
    Map<String, Optional<Reading.Measured>> tempo,
    Map<String, Optional<Reading.Measured>> atBottom,
    Map<String, Optional<Reading.Measured>> drive,
    Optional<Map<String, Optional<Reading.Measured>>> bar,
    Map<String, String> notMeasured,
    Optional<Verdict> verdict,
    List<String> reasons,
    List<Fault> flags) {

  /** A flag, its unit as printed, with the name of its picture. */
  public record Fault(
      FlagKind kind,
      double atS,
      int frame,
      double value,
      double limit,
      String unit,
      double confidence,
      Optional<String> image) {
    static Fault of(Flag flag, Optional<String> image) {
      return new Fault(
          flag.kind(),
          flag.atS(),
          flag.frame(),
          flag.value(),
          flag.limit(),
          flag.unit().symbol(),
          flag.confidence(),
          image);
    }
  }

  static ResultRep of(RepResult rep, FlagImages images) {
    Map<String, String> gaps = new LinkedHashMap<>();
    return new ResultRep(
        rep.rep(),
        rep.startS(),
        rep.bottomStartS(),
        rep.bottomS(),
        rep.bottomEndS(),
        rep.endS(),
        rep.shortRange(),
        readings(ReadingKey.TEMPO, rep, "", gaps),
        readings(ReadingKey.AT_BOTTOM, rep, "", gaps),
        readings(ReadingKey.DRIVE, rep, "", gaps),
        rep.drive().bar().map(bar -> readings(ReadingKey.BAR, bar, "bar.", gaps)),
        gaps,
        rep.verdict(),
        JudgementWords.reasons(rep),
        rep.flags().stream().map(f -> Fault.of(f, images.fileName(rep.rep(), f.kind()))).toList());
  }

  private static <T> Map<String, Optional<Reading.Measured>> readings(
      List<ReadingKey<T>> keys, T from, String group, Map<String, String> gaps) {
    Map<String, Optional<Reading.Measured>> readings = new LinkedHashMap<>();
    for (ReadingKey<T> key : keys) {
      Reading reading = key.of().apply(from);
      readings.put(key.name(), reading.measured());
      if (reading instanceof Reading.NotMeasured not) {
        gaps.put(group + key.name(), Words.of(not.gap(), "reason"));
      }
    }
    return readings;
  }
}
