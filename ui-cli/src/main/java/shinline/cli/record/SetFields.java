package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import shinline.metrics.load.Mass;

/** Fields of a set line that were given one by one; a field given as nothing is left out. */
public final class SetFields {
  private static final List<String> GROUPS = List.of("asked", "load", "result");

  private final ObjectNode fields = Json.object();

  public SetFields text(String name, @Nullable String value) {
    if (value != null) {
      fields.put(name, value);
    }
    return this;
  }

  public SetFields asked(String name, @Nullable Object value) {
    return put("asked", name, value);
  }

  public SetFields result(String name, @Nullable Object value) {
    return put("result", name, value);
  }

  public SetFields load(String name, @Nullable String value) {
    return put("load", name, value);
  }

  public SetFields load(Mass mass) {
    ObjectNode load = fields.withObject("/load");
    load.put("value", mass.value());
    load.put("unit", mass.unit().word());
    return this;
  }

  /** Takes effect in the unit of the load, where there is one. */
  public SetFields vest(Mass vest) {
    ObjectNode load = fields.withObject("/load");
    load.put("vest", vest.value());
    load.put("vestUnit", vest.unit().word());
    return this;
  }

  public SetFields noLoad() {
    fields.putNull("load");
    return this;
  }

  /**
   * @param asked false when nobody asked
   */
  public SetFields pain(boolean felt, boolean asked) {
    if (asked) {
      fields.put("pain", felt);
    } else {
      fields.putNull("pain");
    }
    return this;
  }

  public SetFields flags(Map<String, Integer> counts) {
    ObjectNode flags = fields.withObject("/result").putObject("flags");
    new TreeMap<>(counts).forEach(flags::put);
    return this;
  }

  /** Mean, and then its ± and the ± within the athlete, as far as given. */
  public SetFields atBottom(Map<String, List<Double>> numbers) {
    ObjectNode bottom = fields.withObject("/result").putObject("atBottom");
    List<String> names = List.of("mean", "plusMinus", "plusMinusWithin");
    numbers.forEach(
        (measure, values) -> {
          ObjectNode node = bottom.putObject(measure);
          for (int i = 0; i < values.size(); i++) {
            node.put(names.get(i), values.get(i));
          }
        });
    return this;
  }

  /** These fields; a group takes what is not given from the line that is corrected. */
  ObjectNode over(ObjectNode line) {
    ObjectNode whole = fields.deepCopy();
    for (String group : GROUPS) {
      JsonNode given = whole.get(group);
      JsonNode old = line.get(group);
      if (given instanceof ObjectNode some && old instanceof ObjectNode before) {
        ObjectNode merged = before.deepCopy();
        for (Iterator<Map.Entry<String, JsonNode>> i = some.fields(); i.hasNext(); ) {
          Map.Entry<String, JsonNode> field = i.next();
          merged.set(field.getKey(), field.getValue());
        }
        whole.set(group, merged);
      }
    }
    if (whole.get("load") instanceof ObjectNode load) {
      settleVest(load);
    }
    return whole;
  }

  /** A vest is written in the unit of the load. */
  private static void settleVest(ObjectNode load) {
    LineFields fields = new LineFields(load);
    fields
        .word("vestUnit", shinline.metrics.load.MassUnit::of)
        .ifPresent(
            given ->
                fields
                    .word("unit", shinline.metrics.load.MassUnit::of)
                    .ifPresent(
                        unit ->
                            load.put(
                                "vest",
                                new Mass(fields.decimal("vest").orElseThrow(), given)
                                    .in(unit)
                                    .value())));
    load.remove("vestUnit");
  }

  private SetFields put(String group, String name, @Nullable Object value) {
    if (value instanceof String text) {
      fields.withObject("/" + group).put(name, text);
    } else if (value instanceof Integer number) {
      fields.withObject("/" + group).put(name, number);
    } else if (value instanceof Double number) {
      fields.withObject("/" + group).put(name, number);
    }
    return this;
  }
}
