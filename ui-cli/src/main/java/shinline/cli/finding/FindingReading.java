package shinline.cli.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import shinline.cli.outcome.ClipReport;
import shinline.cli.record.MeasuredSet;
import shinline.cli.report.Cue;
import shinline.cli.text.Headline;
import shinline.cli.text.RefusalWords;
import shinline.cli.text.SetUpWords;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.WorkOn;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetCounts;

/** What is kept of a clip's report (docs/record.md, column "from a measured clip"). */
final class FindingReading {
  private static final String DRIVE_SPEED = "driveSpeedMps";
  private static final String BAR_SPEED = "barSpeedMps";

  private FindingReading() {}

  static ClipFinding of(ClipReport report, String version) {
    return report.fold(
        measured -> of(measured, version),
        not ->
            ClipFinding.without(
                ClipFinding.State.NOT_MEASURED,
                Words.say("text.not-measured", RefusalWords.reason(not.why())),
                RefusalWords.advice(not.why())),
        unreadable ->
            ClipFinding.without(
                ClipFinding.State.UNREADABLE, unreadable.reason(), unreadable.advice()));
  }

  private static ClipFinding of(ClipReport.Measured report, String version) {
    SetResult set = report.set();
    List<String> warnings = SetUpWords.warnings(set.setUp(), report.warnings());
    return new ClipFinding(
        ClipFinding.State.MEASURED,
        Headline.of(set),
        Optional.empty(),
        WorkOn.of(set.reps()).stream().findFirst().map(w -> Cue.title(w.worst())),
        Optional.of(counts(set)),
        means(report, version),
        shownLeg(set),
        warnings,
        ClipFinding.Files.NONE);
  }

  private static Optional<Side> shownLeg(SetResult set) {
    return Optional.of(set.setUp().shownLegs())
        .filter(shown -> shown.frontLegClear())
        .map(shown -> shown.frontLeg());
  }

  static SetCounts counts(SetResult set) {
    boolean asked = set.summary().against().isPresent();
    Map<String, Integer> flags = new TreeMap<>();
    List<SetCounts.RepNote> notes = new ArrayList<>();
    int unclear = 0;
    int clean = 0;
    for (RepResult rep : set.reps()) {
      List<FlagKind> kinds = rep.flags().stream().map(Flag::kind).distinct().toList();
      kinds.forEach(k -> flags.merge(k.jsonName(), 1, Integer::sum));
      boolean spoilt = kinds.stream().anyMatch(FlagKind::spoils);
      boolean judged = rep.judgement().notJudged().isEmpty() && !is(rep, Verdict.UNCLEAR);
      boolean onTarget = !asked || is(rep, Verdict.HIT) || is(rep, Verdict.NEAR);
      unclear += !judged && !spoilt ? 1 : 0;
      clean += judged && onTarget && !spoilt ? 1 : 0;
      notes.add(
          new SetCounts.RepNote(
              rep.rep(), judged, onTarget, kinds.stream().map(FlagKind::jsonName).toList()));
    }
    return new SetCounts(
        set.reps().size(),
        asked
            ? Optional.of(
                new SetCounts.Verdicts(
                    count(set, Verdict.HIT), count(set, Verdict.NEAR), count(set, Verdict.MISS)))
            : Optional.empty(),
        unclear,
        clean,
        flags,
        notes);
  }

  private static int count(SetResult set, Verdict verdict) {
    return (int) set.reps().stream().filter(r -> is(r, verdict)).count();
  }

  private static boolean is(RepResult rep, Verdict verdict) {
    return rep.verdict().equals(Optional.of(verdict));
  }

  private static MeasuredSet means(ClipReport.Measured report, String version) {
    List<RepResult> reps = report.set().reps();
    Map<String, MeasuredSet.BottomMean> bottom = new LinkedHashMap<>();
    for (Measure measure : Measure.values()) {
      List<Reading> seen = reps.stream().map(r -> r.at(measure)).toList();
      mean(seen)
          .ifPresent(
              mean ->
                  bottom.put(
                      measure.jsonName(),
                      new MeasuredSet.BottomMean(
                          mean,
                          plusMinus(seen),
                          average(seen, Reading.Measured::plusMinusWithin))));
    }
    List<Reading> lowering = reps.stream().map(r -> r.tempo().lowering()).toList();
    List<Reading> hold = reps.stream().map(r -> r.tempo().hold()).toList();
    List<Reading> drive = reps.stream().map(r -> r.drive().meanSpeed()).toList();
    List<Reading> bar = reps.stream().flatMap(r -> barSpeed(r).stream()).toList();
    Map<String, Double> plusMinus = new LinkedHashMap<>();
    plusMinus(lowering).ifPresent(v -> plusMinus.put("loweringS", v));
    plusMinus(hold).ifPresent(v -> plusMinus.put("holdS", v));
    plusMinus(drive).ifPresent(v -> plusMinus.put(DRIVE_SPEED, v));
    plusMinus(bar).ifPresent(v -> plusMinus.put(BAR_SPEED, v));
    Map<Integer, Map<String, Double>> ofReps = new LinkedHashMap<>();
    reps.forEach(r -> ofReps.put(r.rep(), values(r)));
    return new MeasuredSet(
        Optional.of(report.clip().sha256()),
        Optional.of(version),
        bottom,
        mean(lowering),
        mean(hold),
        mean(drive),
        mean(bar),
        plusMinus,
        ofReps);
  }

  private static Map<String, Double> values(RepResult rep) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (Measure measure : Measure.values()) {
      rep.at(measure).measured().ifPresent(m -> values.put(measure.jsonName(), rounded(m.value())));
    }
    rep.drive().meanSpeed().measured().ifPresent(m -> values.put(DRIVE_SPEED, rounded(m.value())));
    barSpeed(rep)
        .flatMap(Reading::measured)
        .ifPresent(m -> values.put(BAR_SPEED, rounded(m.value())));
    return values;
  }

  /** Empty without a bar. */
  private static Optional<Reading> barSpeed(RepResult rep) {
    return rep.drive().bar().map(BarReading::meanSpeed);
  }

  private static Optional<Double> plusMinus(List<Reading> readings) {
    return average(readings, Reading.Measured::plusMinus);
  }

  private static Optional<Double> mean(List<Reading> readings) {
    return average(readings, Reading.Measured::value);
  }

  private static Optional<Double> average(
      List<Reading> readings, ToDoubleFunction<Reading.Measured> of) {
    OptionalDouble mean =
        readings.stream().flatMap(r -> r.measured().stream()).mapToDouble(of).average();
    return mean.isPresent() ? Optional.of(rounded(mean.getAsDouble())) : Optional.empty();
  }

  private static double rounded(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
