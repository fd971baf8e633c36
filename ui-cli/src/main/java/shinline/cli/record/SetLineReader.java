package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** Reads the set of a line; fields it does not know are left alone. */
final class SetLineReader {
  private SetLineReader() {}

  /**
   * @throws LineFields.Wrong naming the field
   */
  static SetEntry read(RecordLine line) {
    LineFields fields = new LineFields(line.json());
    LineFields result = fields.group("result");
    return new SetEntry(
        fields.need("date", fields.date("date")),
        fields.need("leg", fields.word("leg", SetLineReader::leg)),
        fields.need("step", fields.text("step")),
        fields.word("purpose", Purpose::of).orElse(Purpose.WORK),
        asked(fields.group("asked")),
        load(fields.group("load")),
        fields.yesOrNo("pain").map(p -> p ? Pain.YES : Pain.NO).orElse(Pain.NOT_ASKED),
        counts(result));
  }

  static Optional<Side> leg(String word) {
    return switch (word) {
      case "left" -> Optional.of(Side.LEFT);
      case "right" -> Optional.of(Side.RIGHT);
      default -> Optional.empty();
    };
  }

  private static Asked asked(LineFields asked) {
    int reps = asked.need("reps", asked.count("reps").filter(r -> r > 0));
    Optional<Integer> sets = asked.count("sets").filter(s -> s > 0);
    return new Asked(
        sets.isPresent() ? OptionalInt.of(sets.get()) : OptionalInt.empty(),
        reps,
        asked.need("target", asked.text("target")),
        asked.text("tempo"),
        asked.text("depth"));
  }

  /** No load when the kind is none, or nothing is carried. */
  static Optional<TrainingLoad> load(LineFields load) {
    Optional<BigDecimal> value = load.decimal("value").filter(v -> v.signum() > 0);
    Optional<LoadKind> kind = load.word("kind", LoadKind::of);
    if (value.isEmpty() || kind.filter(k -> k == LoadKind.NONE).isPresent()) {
      return Optional.empty();
    }
    MassUnit unit = load.need("unit", load.word("unit", MassUnit::of));
    return Optional.of(
        new TrainingLoad(
            new Mass(value.get(), unit),
            load.need("kind", kind),
            load.decimal("vest").map(v -> new Mass(v, unit))));
  }

  private static SetCounts counts(LineFields result) {
    int reps = result.need("reps", result.count("reps"));
    int clean = result.need("cleanReps", result.count("cleanReps"));
    int unclear = result.count("unclear").orElse(0);
    if (clean > reps || unclear > reps) {
      throw new LineFields.Wrong(Words.say("record.field.more-than-reps", reps));
    }
    return new SetCounts(reps, verdicts(result), unclear, clean, flags(result), perRep(result));
  }

  private static Optional<SetCounts.Verdicts> verdicts(LineFields result) {
    Optional<Integer> hit = result.count("hit");
    Optional<Integer> near = result.count("near");
    Optional<Integer> miss = result.count("miss");
    return hit.isPresent() || near.isPresent() || miss.isPresent()
        ? Optional.of(new SetCounts.Verdicts(hit.orElse(0), near.orElse(0), miss.orElse(0)))
        : Optional.empty();
  }

  private static Map<String, Integer> flags(LineFields result) {
    LineFields flags = result.group("flags");
    Map<String, Integer> counts = new HashMap<>();
    flags
        .raw()
        .fieldNames()
        .forEachRemaining(kind -> flags.count(kind).ifPresent(n -> counts.put(kind, n)));
    return counts;
  }

  private static List<SetCounts.RepNote> perRep(LineFields result) {
    List<SetCounts.RepNote> reps = new ArrayList<>();
    for (JsonNode rep : result.raw().path("perRep")) {
      List<String> flags = new ArrayList<>();
      rep.path("flags").forEach(f -> flags.add(f.asText()));
      reps.add(
          new SetCounts.RepNote(
              rep.path("rep").asInt(),
              rep.path("judged").asBoolean(),
              rep.path("onTarget").asBoolean(),
              flags));
    }
    return reps;
  }
}
