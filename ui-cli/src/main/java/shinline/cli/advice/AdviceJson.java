package shinline.cli.advice;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import shinline.cli.json.JsonRecords;
import shinline.cli.record.Overrule;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.advice.Because;
import shinline.metrics.advice.Decision;
import shinline.metrics.advice.Prescription;
import shinline.metrics.advice.Rule;
import shinline.metrics.advice.ThreeRepMaximum;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.load.TrainingLoad;

/** {@code shinline-advice/1}: the keys of docs/advice.schema.json, in their order. */
public record AdviceJson(
    String schema,
    String athlete,
    String asOf,
    Decision decision,
    Optional<String> step,
    Optional<String> target,
    Optional<Integer> sets,
    Optional<Integer> reps,
    Optional<String> tempo,
    Optional<Load> load,
    List<Reason> because,
    List<String> missing,
    Optional<String> earliest,
    List<String> cautions,
    Optional<String> goodUntil,
    List<String> notes,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Mass> vest,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Maximum> threeRepMaximum,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Overruled> overruled) {
  /** Name and version of the format. */
  public static final String SCHEMA = "shinline-advice/1";

  private static final ObjectMapper MAPPER = JsonRecords.mapper().build();

  record Load(BigDecimal value, MassUnit unit, LoadKind kind) {
    static Load of(TrainingLoad load) {
      return new Load(load.mass().value(), load.mass().unit(), load.kind());
    }
  }

  record Reason(Rule rule, List<String> lines, String why) {
    static Reason of(Because because) {
      return new Reason(because.rule(), because.lines(), Words.of(because.rule(), "why"));
    }
  }

  record Maximum(BigDecimal value, MassUnit unit, OneRepMax formula, String line) {
    static Maximum of(ThreeRepMaximum maximum) {
      return new Maximum(
          maximum.mass().value().setScale(2, RoundingMode.HALF_EVEN),
          maximum.mass().unit(),
          maximum.formula(),
          maximum.set().id());
    }
  }

  record Overruled(String line, String date, String reason, String instead) {
    static Overruled of(Overrule by) {
      return new Overruled(by.id(), by.date().toString(), by.reason(), by.instead());
    }
  }

  public static void write(GivenAdvice given, Writer out) throws IOException {
    out.write(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(of(given)));
    out.write('\n');
  }

  private static AdviceJson of(GivenAdvice given) {
    Advice advice = given.advice();
    Optional<Prescription> next = advice.prescription();
    return new AdviceJson(
        SCHEMA,
        given.athlete().written(),
        advice.asOf().toString(),
        advice.decision(),
        next.map(Prescription::step),
        next.map(Prescription::target),
        next.map(p -> p.scheme().sets()),
        next.map(p -> p.scheme().reps()),
        next.flatMap(Prescription::tempo),
        next.flatMap(Prescription::load).map(Load::of),
        advice.because().stream().map(Reason::of).toList(),
        AdviceWords.missing(advice),
        advice.earliest().map(Object::toString),
        AdviceWords.cautions(),
        next.map(p -> advice.goodUntil().toString()),
        next.map(Prescription::notes).orElse(List.of()),
        next.flatMap(Prescription::load).flatMap(TrainingLoad::vest),
        advice.maximum().map(Maximum::of),
        given.overrule().map(Overruled::of));
  }
}
