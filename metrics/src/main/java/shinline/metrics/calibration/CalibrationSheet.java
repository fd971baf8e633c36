package shinline.metrics.calibration;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A calibration as it is written down: plain parts that any format can carry. Values name their
 * source, and a source is told once.
 */
public record CalibrationSheet(
    String schema, String model, List<Source> sources, List<Value> values) {
  public static final String SCHEMA = "shinline-calibration/1";

  /** A {@link Provenance}, written down. */
  public record Source(String id, String kind, String how, List<String> clips, String when) {}

  /** A {@link CalibratedValue}, written down. */
  public record Value(String key, BigDecimal value, String unit, String source, String what) {}

  /** Keys in their own order, sources in the order in which values first name them. */
  public static CalibrationSheet of(Calibration calibration) {
    Map<String, Source> sources = new LinkedHashMap<>();
    List<Value> values = new ArrayList<>();
    for (CalibrationKey key : CalibrationKey.values()) {
      CalibratedValue told = calibration.told(key);
      Provenance from = told.provenance();
      sources.putIfAbsent(
          from.id(),
          new Source(
              from.id(), from.kind().word(), from.how(), from.clips(), from.when().toString()));
      values.add(
          new Value(
              key.word(),
              BigDecimal.valueOf(told.value()).stripTrailingZeros(),
              key.unit().symbol(),
              from.id(),
              told.what()));
    }
    return new CalibrationSheet(
        SCHEMA, calibration.model(), List.copyOf(sources.values()), List.copyOf(values));
  }

  /**
   * The calibration that is written down.
   *
   * @throws IllegalArgumentException saying what is wrong with the sheet
   */
  public Calibration calibration() {
    require(SCHEMA.equals(schema), "schema is not " + SCHEMA);
    Map<String, Provenance> known = new LinkedHashMap<>();
    for (Source source : present(sources, "sources")) {
      require(
          known.put(present(source.id(), "a source's id"), provenance(source)) == null,
          "source " + source.id() + " is told twice");
    }
    Map<CalibrationKey, CalibratedValue> all = new EnumMap<>(CalibrationKey.class);
    for (Value value : present(values, "values")) {
      String word = present(value.key(), "a value's key");
      Optional<CalibrationKey> key = CalibrationKey.of(word);
      require(key.isPresent(), "no value is called " + word);
      require(
          key.get().unit().symbol().equals(value.unit()),
          word + " is in " + value.unit() + ", and must be in " + key.get().unit().symbol());
      Provenance from = known.get(present(value.source(), word + "'s source"));
      require(from != null, word + " names a source that is not told: " + value.source());
      CalibratedValue told =
          new CalibratedValue(
              present(value.value(), word + "'s value").doubleValue(),
              Objects.requireNonNull(from),
              present(value.what(), word + "'s what"));
      require(all.put(key.get(), told) == null, word + " is told twice");
    }
    return new Calibration(present(model, "model"), all);
  }

  private static Provenance provenance(Source source) {
    String where = "source " + source.id() + "'s ";
    String kind = present(source.kind(), where + "kind");
    Optional<Provenance.Kind> known =
        Arrays.stream(Provenance.Kind.values()).filter(k -> k.word().equals(kind)).findFirst();
    require(known.isPresent(), where + "kind is unknown: " + kind);
    return new Provenance(
        source.id(),
        known.get(),
        present(source.how(), where + "how"),
        present(source.clips(), where + "clips"),
        day(present(source.when(), where + "when"), where));
  }

  private static LocalDate day(String when, String where) {
    try {
      return LocalDate.parse(when);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(where + "when is no day like 2026-11-25: " + when, e);
    }
  }

  /** What a reader of files leaves out is null, whatever the type says. */
  private static <T> T present(T part, String name) {
    require(part != null, name + " is missing");
    return part;
  }

  private static void require(boolean good, String otherwise) {
    if (!good) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
