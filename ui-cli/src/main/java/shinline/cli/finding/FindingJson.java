package shinline.cli.finding;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shinline.cli.record.MeasuredSet;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetCounts;

/** A finding as a file of the cache: this program's own, read by the version that wrote it only. */
final class FindingJson {
  private static final ObjectMapper JSON = new ObjectMapper();

  private FindingJson() {}

  static String write(ClipFinding finding) {
    ObjectNode node = JSON.createObjectNode();
    node.put("state", finding.state().name());
    node.put("headline", finding.headline());
    put(node, "toDo", finding.toDo());
    put(node, "cue", finding.cue());
    put(node, "shownLeg", finding.shownLeg().map(Side::name));
    finding.warnings().forEach(node.putArray("warnings")::add);
    put(node, "page", finding.files().page());
    put(node, "data", finding.files().data());
    put(node, "kept", finding.files().kept());
    put(node, "best", finding.files().best());
    put(node, "worst", finding.files().worst());
    finding.counts().ifPresent(c -> counts(node.putObject("counts"), c));
    MeasuredSet measured = finding.measured();
    put(node, "sha256", measured.sha256());
    put(node, "version", measured.version());
    measured.loweringS().ifPresent(v -> node.put("loweringS", v));
    measured.holdS().ifPresent(v -> node.put("holdS", v));
    measured.driveSpeedMps().ifPresent(v -> node.put("driveSpeedMps", v));
    measured.barSpeedMps().ifPresent(v -> node.put("barSpeedMps", v));
    numbers(node.putObject("plusMinus"), measured.plusMinus());
    ObjectNode ofReps = node.putObject("ofReps");
    new TreeMap<>(measured.reps())
        .forEach((rep, values) -> numbers(ofReps.putObject(rep.toString()), values));
    ObjectNode bottom = node.putObject("atBottom");
    new TreeMap<>(measured.atBottom())
        .forEach(
            (name, mean) -> {
              ObjectNode one = bottom.putObject(name);
              one.put("mean", mean.mean());
              mean.plusMinus().ifPresent(v -> one.put("plusMinus", v));
              mean.plusMinusWithin().ifPresent(v -> one.put("plusMinusWithin", v));
            });
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can be written", e);
    }
  }

  private static void numbers(ObjectNode node, Map<String, Double> numbers) {
    new TreeMap<>(numbers).forEach(node::put);
  }

  private static Map<String, Double> numbers(JsonNode node) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    node.fields().forEachRemaining(f -> numbers.put(f.getKey(), f.getValue().asDouble()));
    return numbers;
  }

  private static void put(ObjectNode node, String name, Optional<String> text) {
    text.ifPresent(t -> node.put(name, t));
  }

  private static void counts(ObjectNode node, SetCounts counts) {
    node.put("reps", counts.reps());
    node.put("unclear", counts.unclear());
    node.put("cleanReps", counts.cleanReps());
    counts
        .verdicts()
        .ifPresent(v -> node.put("hit", v.hit()).put("near", v.near()).put("miss", v.miss()));
    ObjectNode flags = node.putObject("flags");
    new TreeMap<>(counts.flags()).forEach(flags::put);
    ArrayNode reps = node.putArray("perRep");
    for (SetCounts.RepNote rep : counts.perRep()) {
      ObjectNode one = reps.addObject();
      one.put("rep", rep.rep()).put("judged", rep.judged()).put("onTarget", rep.onTarget());
      rep.flags().forEach(one.putArray("flags")::add);
    }
  }

  /** Empty for a file that this version did not write. */
  static Optional<ClipFinding> read(String text) {
    try {
      JsonNode node = JSON.readTree(text);
      List<String> warnings = new ArrayList<>();
      node.path("warnings").forEach(w -> warnings.add(w.asText()));
      Map<String, MeasuredSet.BottomMean> bottom = new LinkedHashMap<>();
      node.path("atBottom")
          .fields()
          .forEachRemaining(
              f ->
                  bottom.put(
                      f.getKey(),
                      new MeasuredSet.BottomMean(
                          f.getValue().path("mean").asDouble(),
                          number(f.getValue(), "plusMinus"),
                          number(f.getValue(), "plusMinusWithin"))));
      Map<Integer, Map<String, Double>> ofReps = new LinkedHashMap<>();
      node.path("ofReps")
          .fields()
          .forEachRemaining(f -> ofReps.put(Integer.valueOf(f.getKey()), numbers(f.getValue())));
      return Optional.of(
          new ClipFinding(
              ClipFinding.State.valueOf(node.path("state").asText()),
              node.path("headline").asText(),
              text(node, "toDo"),
              text(node, "cue"),
              Optional.ofNullable(node.get("counts")).map(FindingJson::counts),
              new MeasuredSet(
                  text(node, "sha256"),
                  text(node, "version"),
                  bottom,
                  number(node, "loweringS"),
                  number(node, "holdS"),
                  number(node, "driveSpeedMps"),
                  number(node, "barSpeedMps"),
                  numbers(node.path("plusMinus")),
                  ofReps),
              text(node, "shownLeg").map(Side::valueOf),
              warnings,
              new ClipFinding.Files(
                  text(node, "page"),
                  text(node, "data"),
                  text(node, "best"),
                  text(node, "worst"),
                  text(node, "kept"))));
    } catch (JsonProcessingException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static SetCounts counts(JsonNode node) {
    Map<String, Integer> flags = new LinkedHashMap<>();
    node.path("flags").fields().forEachRemaining(f -> flags.put(f.getKey(), f.getValue().asInt()));
    List<SetCounts.RepNote> reps = new ArrayList<>();
    for (JsonNode rep : node.path("perRep")) {
      List<String> of = new ArrayList<>();
      rep.path("flags").forEach(f -> of.add(f.asText()));
      reps.add(
          new SetCounts.RepNote(
              rep.path("rep").asInt(),
              rep.path("judged").asBoolean(),
              rep.path("onTarget").asBoolean(),
              of));
    }
    return new SetCounts(
        node.path("reps").asInt(),
        node.has("hit")
            ? Optional.of(
                new SetCounts.Verdicts(
                    node.path("hit").asInt(), node.path("near").asInt(), node.path("miss").asInt()))
            : Optional.empty(),
        node.path("unclear").asInt(),
        node.path("cleanReps").asInt(),
        flags,
        reps);
  }

  private static Optional<String> text(JsonNode node, String name) {
    return Optional.ofNullable(node.get(name)).map(JsonNode::asText);
  }

  private static Optional<Double> number(JsonNode node, String name) {
    return Optional.ofNullable(node.get(name)).map(JsonNode::asDouble);
  }
}
