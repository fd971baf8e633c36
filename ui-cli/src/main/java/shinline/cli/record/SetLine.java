package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.Pain;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.SetSource;

/**
 * A set to be written: the one way in, for sets counted by eye and for measured clips.
 * docs/record.md tells which field of a result goes where.
 *
 * @param label of the set in the session
 */
public record SetLine(
    AthleteName athlete,
    SetEntry set,
    Optional<String> label,
    Optional<String> note,
    SetSource source,
    MeasuredSet measured) {

  /** The line to write. */
  public Entry entry() {
    ObjectNode fields = Json.object();
    fields.put("date", set.date().toString());
    fields.put("leg", set.leg() == Side.LEFT ? "left" : "right");
    fields.put("step", set.step());
    label.ifPresent(l -> fields.put("set", l));
    fields.put("purpose", set.purpose().word());
    fields.set("asked", asked(set.asked()));
    if (set.load().isPresent()) {
      fields.set("load", load(set.load().get()));
    } else {
      fields.putNull("load");
    }
    if (set.pain() == Pain.NOT_ASKED) {
      fields.putNull("pain");
    } else {
      fields.put("pain", set.pain() == Pain.YES);
    }
    note.ifPresent(n -> fields.put("note", n));
    fields.put("source", source.word());
    fields.set("result", result());
    return new Entry(Entry.SET, Optional.of(athlete), fields);
  }

  static ObjectNode asked(Asked asked) {
    ObjectNode node = Json.object();
    asked.sets().ifPresent(s -> node.put("sets", s));
    node.put("reps", asked.reps());
    node.put("target", asked.target());
    asked.tempo().ifPresent(t -> node.put("tempo", t));
    asked.depth().ifPresent(d -> node.put("depth", d));
    return node;
  }

  static ObjectNode load(TrainingLoad load) {
    ObjectNode node = Json.object();
    node.put("value", load.mass().value());
    node.put("unit", load.mass().unit().word());
    node.put("kind", load.kind().word());
    load.vest().ifPresent(v -> node.put("vest", v.in(load.mass().unit()).value()));
    return node;
  }

  private ObjectNode result() {
    SetCounts counts = set.counts();
    ObjectNode node = Json.object();
    measured.sha256().ifPresent(d -> node.put("sha256", d));
    measured.version().ifPresent(v -> node.put("version", v));
    node.put("reps", counts.reps());
    verdict(node, "hit", counts.verdicts().map(SetCounts.Verdicts::hit));
    verdict(node, "near", counts.verdicts().map(SetCounts.Verdicts::near));
    verdict(node, "miss", counts.verdicts().map(SetCounts.Verdicts::miss));
    node.put("unclear", counts.unclear());
    node.put("cleanReps", counts.cleanReps());
    ObjectNode flags = node.putObject("flags");
    new TreeMap<>(counts.flags()).forEach(flags::put);
    if (!counts.perRep().isEmpty()) {
      ArrayNode reps = node.putArray("perRep");
      counts.perRep().forEach(r -> rep(reps.addObject(), r));
    }
    if (!measured.atBottom().isEmpty()) {
      ObjectNode bottom = node.putObject("atBottom");
      new TreeMap<>(measured.atBottom()).forEach((name, m) -> mean(bottom.putObject(name), m));
    }
    for (Map.Entry<String, Optional<Double>> number :
        Map.of(
                "loweringS", measured.loweringS(),
                "holdS", measured.holdS(),
                "driveSpeedMps", measured.driveSpeedMps(),
                "barSpeedMps", measured.barSpeedMps())
            .entrySet()
            .stream()
            .sorted(Map.Entry.comparingByKey())
            .toList()) {
      number.getValue().ifPresent(v -> node.put(number.getKey(), v));
    }
    if (!measured.plusMinus().isEmpty()) {
      ObjectNode plusMinus = node.putObject("plusMinus");
      new TreeMap<>(measured.plusMinus()).forEach(plusMinus::put);
    }
    return node;
  }

  private static void verdict(ObjectNode node, String name, Optional<Integer> count) {
    if (count.isPresent()) {
      node.put(name, count.get());
    } else {
      node.putNull(name);
    }
  }

  private void rep(ObjectNode node, SetCounts.RepNote rep) {
    node.put("rep", rep.rep());
    node.put("judged", rep.judged());
    node.put("onTarget", rep.onTarget());
    ArrayNode flags = node.putArray("flags");
    rep.flags().forEach(flags::add);
    Map<String, Double> shown = measured.reps().getOrDefault(rep.rep(), Map.of());
    if (!shown.isEmpty()) {
      ObjectNode numbers = node.putObject("measured");
      new TreeMap<>(shown).forEach(numbers::put);
    }
  }

  private static void mean(ObjectNode node, MeasuredSet.BottomMean mean) {
    node.put("mean", mean.mean());
    mean.plusMinus().ifPresent(v -> node.put("plusMinus", v));
    mean.plusMinusWithin().ifPresent(v -> node.put("plusMinusWithin", v));
  }
}
