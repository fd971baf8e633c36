package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Reads what was measured in a set; a number that is none is left out, never guessed. */
final class MeasuredSetReader {
  private MeasuredSetReader() {}

  static MeasuredSet read(RecordLine line) {
    JsonNode result = line.json().path("result");
    Map<String, MeasuredSet.BottomMean> bottom = new HashMap<>();
    result
        .path("atBottom")
        .fields()
        .forEachRemaining(
            f ->
                number(f.getValue(), "mean")
                    .ifPresent(
                        mean ->
                            bottom.put(
                                f.getKey(),
                                new MeasuredSet.BottomMean(
                                    mean,
                                    width(f.getValue(), "plusMinus"),
                                    width(f.getValue(), "plusMinusWithin")))));
    Map<Integer, Map<String, Double>> reps = new HashMap<>();
    for (JsonNode rep : result.path("perRep")) {
      reps.put(rep.path("rep").asInt(), numbers(rep.path("measured")));
    }
    return new MeasuredSet(
        Json.text(result, "sha256"),
        Json.text(result, "version"),
        bottom,
        width(result, "loweringS"),
        width(result, "holdS"),
        width(result, "driveSpeedMps"),
        width(result, "barSpeedMps"),
        numbers(result.path("plusMinus")),
        reps);
  }

  private static Map<String, Double> numbers(JsonNode group) {
    Map<String, Double> numbers = new HashMap<>();
    group
        .fieldNames()
        .forEachRemaining(name -> number(group, name).ifPresent(n -> numbers.put(name, n)));
    return numbers;
  }

  private static Optional<Double> width(JsonNode node, String name) {
    return number(node, name).filter(n -> n >= 0);
  }

  private static Optional<Double> number(JsonNode node, String name) {
    return Optional.ofNullable(node.get(name))
        .filter(JsonNode::isNumber)
        .map(JsonNode::doubleValue)
        .filter(Double::isFinite);
  }
}
