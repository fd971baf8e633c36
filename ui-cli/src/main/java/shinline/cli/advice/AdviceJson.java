package shinline.cli.advice;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import shinline.cli.record.Overrule;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.advice.Because;
import shinline.metrics.advice.Prescription;
import shinline.metrics.advice.ThreeRepMaximum;
import shinline.metrics.load.Mass;
import shinline.metrics.load.TrainingLoad;

/** Writes {@code shinline-advice/1}, the contract of docs/advice.schema.json. */
public final class AdviceJson {
  /** Name and version of the format. */
  public static final String SCHEMA = "shinline-advice/1";

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .nodeFactory(JsonNodeFactory.withExactBigDecimals(true))
          .build();

  private AdviceJson() {}

  public static void write(GivenAdvice given, Writer out) throws IOException {
    out.write(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node(given)));
    out.write('\n');
  }

  private static ObjectNode node(GivenAdvice given) {
    Advice advice = given.advice();
    ObjectNode node = MAPPER.createObjectNode();
    node.put("schema", SCHEMA);
    node.put("athlete", given.athlete().written());
    node.put("asOf", advice.asOf().toString());
    node.put("decision", advice.decision().word());
    if (advice.prescription().isPresent()) {
      prescription(node, advice.prescription().get());
    } else {
      List.of("step", "target", "sets", "reps", "tempo", "load").forEach(node::putNull);
    }
    ArrayNode because = node.putArray("because");
    advice.because().forEach(b -> because(because.addObject(), b));
    texts(node.putArray("missing"), AdviceWords.missing(advice));
    node.put("earliest", advice.earliest().map(Object::toString).orElse(null));
    texts(node.putArray("cautions"), AdviceWords.cautions());
    node.put(
        "goodUntil", advice.prescription().map(p -> advice.goodUntil().toString()).orElse(null));
    texts(node.putArray("notes"), advice.prescription().map(Prescription::notes).orElse(List.of()));
    advice
        .prescription()
        .flatMap(Prescription::load)
        .flatMap(TrainingLoad::vest)
        .ifPresent(v -> mass(node.putObject("vest"), v));
    advice.maximum().ifPresent(m -> maximum(node.putObject("threeRepMaximum"), m));
    given.overrule().ifPresent(o -> overrule(node.putObject("overruled"), o));
    return node;
  }

  private static void prescription(ObjectNode node, Prescription next) {
    node.put("step", next.step());
    node.put("target", next.target());
    node.put("sets", next.scheme().sets());
    node.put("reps", next.scheme().reps());
    node.put("tempo", next.tempo().orElse(null));
    if (next.load().isPresent()) {
      ObjectNode load = node.putObject("load");
      mass(load, next.load().get().mass());
      load.put("kind", next.load().get().kind().word());
    } else {
      node.putNull("load");
    }
  }

  private static void because(ObjectNode node, Because because) {
    node.put("rule", because.rule().word());
    texts(node.putArray("lines"), because.lines());
    node.put("why", Words.of(because.rule(), "why"));
  }

  private static void maximum(ObjectNode node, ThreeRepMaximum maximum) {
    node.put("value", maximum.mass().value().setScale(2, java.math.RoundingMode.HALF_EVEN));
    node.put("unit", maximum.mass().unit().word());
    node.put("formula", maximum.formula().word());
    node.put("line", maximum.set().id());
  }

  private static void overrule(ObjectNode node, Overrule overrule) {
    node.put("line", overrule.id());
    node.put("date", overrule.date().toString());
    node.put("reason", overrule.reason());
    node.put("instead", overrule.instead());
  }

  private static void mass(ObjectNode node, Mass mass) {
    node.put("value", mass.value());
    node.put("unit", mass.unit().word());
  }

  private static void texts(ArrayNode array, List<String> texts) {
    texts.forEach(array::add);
  }
}
