package shinline.cli.ladder;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.ladder.AtHand;
import shinline.metrics.ladder.BarAndDiscs;
import shinline.metrics.ladder.DumbbellRack;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** The loads at hand of a ladder file. */
final class AtHandReader {
  private static final int MOST_DUMBBELLS = 500;

  private AtHandReader() {}

  /**
   * @param shipped what counts for a unit, or a kind of load, the file leaves out
   */
  static Optional<AtHand> read(Field field, Optional<AtHand> shipped) {
    Map<MassUnit, AtHand.Racks> racks = new EnumMap<>(MassUnit.class);
    shipped.ifPresent(s -> racks.putAll(s.racks()));
    for (Field part : field.fields(List.of("kg", "lb")).orElse(List.of())) {
      MassUnit unit = MassUnit.of(part.name()).orElseThrow();
      unit(part, unit, Optional.ofNullable(racks.get(unit))).ifPresent(r -> racks.put(unit, r));
    }
    return racks.size() == MassUnit.values().length
        ? Optional.of(new AtHand(racks))
        : Optional.empty();
  }

  private static Optional<AtHand.Racks> unit(
      Field field, MassUnit unit, Optional<AtHand.Racks> shipped) {
    Optional<DumbbellRack> dumbbells = shipped.map(AtHand.Racks::dumbbells);
    Optional<Mass> bar = shipped.map(s -> s.bar().bar());
    Optional<Mass> guided = Optional.empty();
    Optional<List<Mass>> discs = shipped.map(s -> s.bar().discs());
    for (Field part :
        field.fields(List.of("dumbbells", "bar", "guided-bar", "discs")).orElse(List.of())) {
      switch (part.name()) {
        case "dumbbells" -> dumbbells = dumbbells(part, unit);
        case "bar" -> bar = Numbers.mass(part, unit);
        case "guided-bar" -> guided = Numbers.mass(part, unit);
        default -> discs = discs(part, unit);
      }
    }
    if (dumbbells.isEmpty() || bar.isEmpty() || discs.isEmpty()) {
      return Optional.empty();
    }
    BarAndDiscs free = new BarAndDiscs(bar.get(), discs.get());
    BarAndDiscs rails = new BarAndDiscs(guided.orElse(bar.get()), discs.get());
    return Optional.of(new AtHand.Racks(dumbbells.get(), free, rails));
  }

  private static Optional<List<Mass>> discs(Field field, MassUnit unit) {
    List<Mass> discs = masses(field, unit);
    if (discs.stream().anyMatch(d -> d.value().scale() > BarAndDiscs.DECIMALS)) {
      return field.wrong(Words.say("ladder-file.discs"), Words.say("ladder-file.discs.do"));
    }
    return discs.isEmpty() ? Optional.empty() : Optional.of(discs);
  }

  private static List<Mass> masses(Field field, MassUnit unit) {
    return Texts.list(field, Words.say("ladder-file.masses.do")).stream()
        .flatMap(f -> Numbers.mass(f, unit).stream())
        .toList();
  }

  private static Optional<DumbbellRack> dumbbells(Field field, MassUnit unit) {
    if (field.isMapping()) {
      return series(field, unit);
    }
    List<Mass> sizes = masses(field, unit);
    return sizes.isEmpty() ? Optional.empty() : Optional.of(new DumbbellRack(sizes));
  }

  private static Optional<DumbbellRack> series(Field field, MassUnit unit) {
    List<Field> parts = field.fields(List.of("from", "to", "by")).orElse(List.of());
    Map<String, BigDecimal> given = new HashMap<>();
    parts.forEach(p -> Numbers.mass(p, unit).ifPresent(m -> given.put(p.name(), m.value())));
    BigDecimal from = given.get("from");
    BigDecimal to = given.get("to");
    BigDecimal by = given.get("by");
    if (from == null || to == null || by == null) {
      return parts.size() < 3
          ? field.wrong(Words.say("ladder-file.dumbbells"), Words.say("ladder-file.dumbbells.do"))
          : Optional.empty();
    }
    List<Mass> sizes = new ArrayList<>();
    Stream.iterate(from, m -> m.compareTo(to) <= 0, m -> m.add(by))
        .limit(MOST_DUMBBELLS)
        .forEach(m -> sizes.add(new Mass(m, unit)));
    return sizes.isEmpty()
        ? field.wrong(
            Words.say("ladder-file.dumbbells.turned"), Words.say("ladder-file.dumbbells.do"))
        : Optional.of(new DumbbellRack(sizes));
  }
}
