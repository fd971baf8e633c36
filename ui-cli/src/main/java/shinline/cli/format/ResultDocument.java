package shinline.cli.format;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.file.FlagImages;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Cautions;
import shinline.cli.text.Headline;
import shinline.cli.text.RefusalWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.fault.Sight;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Measure;
import shinline.metrics.result.SetResult;
import shinline.metrics.target.Target;

/**
 * {@code shinline-result/1} as it is written and read back: the keys of docs/result-format.md, in
 * their order.
 */
public record ResultDocument(
    String schema,
    Clip clip,
    ResultSetUp setup,
    ResultTarget target,
    List<ResultRep> reps,
    SetPart set,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Refusal> notMeasured,
    List<String> cautions) {
  /** Name and version of the format. */
  public static final String SCHEMA = "shinline-result/1";

  /** The file and what was decoded of it. */
  public record Clip(
      String file,
      String sha256,
      int widthPx,
      int heightPx,
      int rotationDeg,
      int frames,
      double durationS,
      double medianFps,
      boolean variableFrameRate) {
    static Clip of(ClipFacts facts) {
      return new Clip(
          facts.fileName(),
          facts.sha256(),
          facts.widthPx(),
          facts.heightPx(),
          facts.rotationDeg(),
          facts.frames(),
          facts.durationS(),
          facts.medianFps(),
          facts.variableFrameRate());
    }
  }

  /** What is said of all reps. */
  public record SetPart(
      int reps,
      Optional<Long> hits,
      Map<String, Double> trend,
      Optional<Fading> fading,
      List<NotSeen> notSeen,
      String summary,
      List<NotCounted> notCounted) {
    public record Fading(int rep, FlagKind what) {}

    public record NotSeen(Sight what, List<Integer> reps) {}

    public record NotCounted(double fromS, double toS, String reason) {}

    static SetPart of(SetResult set) {
      Map<String, Double> trend = new LinkedHashMap<>();
      for (Measure measure : Measure.values()) {
        Optional.ofNullable(set.trend().get(measure))
            .ifPresent(slope -> trend.put(measure.jsonName(), slope));
      }
      return new SetPart(
          set.reps().size(),
          set.hits(),
          trend,
          set.fading().map(f -> new Fading(f.rep(), f.kind())),
          set.unseen().entrySet().stream().map(e -> new NotSeen(e.getKey(), e.getValue())).toList(),
          Headline.of(set),
          set.notCounted().stream()
              .map(n -> new NotCounted(n.fromS(), n.toS(), Words.of(n.reason(), "not-counted")))
              .toList());
    }

    static SetPart empty(Target target, SetRefusal why) {
      return new SetPart(
          0,
          Asked.of(target).isEmpty() ? Optional.empty() : Optional.of(0L),
          Map.of(),
          Optional.empty(),
          List.of(),
          Words.say("json.not-measured", RefusalWords.reason(why)),
          List.of());
    }
  }

  /** Why nothing was measured. */
  public record Refusal(SetRefusal.Kind kind, String reason, String advice) {}

  static ResultDocument of(ClipReport.Measured report, FlagImages images) {
    SetResult set = report.set();
    return new ResultDocument(
        SCHEMA,
        Clip.of(report.clip()),
        ResultSetUp.of(report),
        ResultTarget.of(set.target()),
        set.reps().stream().map(r -> ResultRep.of(r, images)).toList(),
        SetPart.of(set),
        Optional.empty(),
        Cautions.all());
  }

  static ResultDocument of(ClipReport.NotMeasured report) {
    SetRefusal why = report.why();
    return new ResultDocument(
        SCHEMA,
        Clip.of(report.clip()),
        ResultSetUp.of(report),
        ResultTarget.of(report.target()),
        List.of(),
        SetPart.empty(report.target(), why),
        Optional.of(new Refusal(why.kind(), RefusalWords.reason(why), RefusalWords.advice(why))),
        Cautions.all());
  }
}
