package shinline.cli.ladder;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.ladder.Leaving;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** One step of a ladder file. One reader reads one step. */
final class StepReader {
  private static final List<String> FIELDS =
      List.of(
          "id",
          "what",
          "targets",
          "sets",
          "tempo",
          "load",
          "weekly",
          "start",
          "three-rep-maximum",
          "leave",
          "notes");
  private static final String BODY_MASS = "body-mass-pct";
  private static final String BOTH_HANDS = "both-hands-pct";

  private final Field step;
  private Optional<String> id = Optional.empty();
  private String what = "";
  private List<String> targets;
  private List<Scheme> schemes = List.of();
  private Optional<String> tempo = Optional.empty();
  private LoadKind kind = LoadKind.NONE;
  private Optional<Map<MassUnit, Mass>> weekly = Optional.empty();
  private Optional<StepLoad.FirstLoad> start = Optional.empty();
  private Optional<StepLoad.OfThreeRepMaximum> shares = Optional.empty();
  private Optional<Leaving> leaving = Optional.of(new Leaving.AtOnce());
  private List<String> notes = List.of();

  StepReader(Field step, List<String> targets) {
    this.step = step;
    this.targets = targets;
  }

  /** The step, or problems noted. */
  Optional<Step> read() {
    List<Field> fields = step.fields(FIELDS).orElse(List.of());
    // The kind of load comes first: the three-rep maximum takes it.
    fields.stream().filter(f -> f.name().equals("load")).forEach(f -> kind = kind(f));
    fields.forEach(this::one);
    if (schemes.isEmpty()) {
      schemes = shares.map(s -> List.of(s.shares().get(0).scheme())).orElse(List.of());
    }
    require("id", id.isPresent(), fields);
    require("tempo", tempo.isPresent(), fields);
    if (shares.isEmpty()) {
      require("sets", !schemes.isEmpty(), fields);
    }
    Optional<StepLoad> load = load(fields);
    return id.isPresent()
            && tempo.isPresent()
            && !schemes.isEmpty()
            && !targets.isEmpty()
            && load.isPresent()
            && leaving.isPresent()
        ? Optional.of(
            new Step(
                id.get(), what, targets, schemes, tempo.get(), load.get(), leaving.get(), notes))
        : Optional.empty();
  }

  private void require(String name, boolean there, List<Field> fields) {
    // A field that is there but wrong has been told of already.
    if (!there && fields.stream().noneMatch(f -> f.name().equals(name))) {
      step.wrong(Words.say("ladder-file.lacks", name), Words.say("ladder-file.lacks.do", name));
    }
  }

  private void one(Field field) {
    switch (field.name()) {
      case "id" -> id = Texts.name(field);
      case "what" -> what = Texts.sentence(field).orElse("");
      case "targets" -> targets = Texts.names(field);
      case "sets" -> schemes = Texts.schemes(field);
      case "tempo" -> tempo = Texts.tempo(field);
      case "weekly" -> weekly = eachUnit(field);
      case "start" -> start = start(field);
      case "three-rep-maximum" -> shares = shares(field);
      case "leave" -> leaving = leaving(field);
      case "notes" -> notes = Texts.sentences(field);
      default -> {} // load, read before
    }
  }

  private static LoadKind kind(Field field) {
    return field
        .word()
        .flatMap(LoadKind::of)
        .or(
            () ->
                field.wrong(
                    Words.say("ladder-file.load", field.shown()), Words.say("ladder-file.load.do")))
        .orElse(LoadKind.NONE);
  }

  private Optional<StepLoad> load(List<Field> fields) {
    boolean loading =
        fields.stream()
            .anyMatch(f -> List.of("weekly", "start", "three-rep-maximum").contains(f.name()));
    if (kind == LoadKind.NONE) {
      return loading
          ? step.wrong(Words.say("ladder-file.load.none"), Words.say("ladder-file.load.do"))
          : Optional.of(new StepLoad.Unloaded());
    } else if (shares.isPresent()) {
      return Optional.of(shares.get());
    }
    boolean told = fields.stream().anyMatch(f -> f.name().equals("three-rep-maximum"));
    if (!told) {
      require("weekly", weekly.isPresent(), fields);
      require("start", start.isPresent(), fields);
    }
    return weekly.isPresent() && start.isPresent()
        ? Optional.of(new StepLoad.Weekly(kind, weekly.get(), start.get()))
        : Optional.empty();
  }

  /** A mass in each unit. */
  private static Optional<Map<MassUnit, Mass>> eachUnit(Field field) {
    return eachUnit(field, field.fields(List.of("kg", "lb")).orElse(List.of()));
  }

  private static Optional<Map<MassUnit, Mass>> eachUnit(Field field, List<Field> parts) {
    Map<MassUnit, Mass> masses = new EnumMap<>(MassUnit.class);
    int given = 0;
    for (Field part : parts) {
      Optional<MassUnit> unit = MassUnit.of(part.name());
      if (unit.isPresent()) {
        given++;
        Numbers.mass(part, unit.get()).ifPresent(m -> masses.put(m.unit(), m));
      }
    }
    if (given < MassUnit.values().length) {
      return field.wrong(Words.say("ladder-file.units"), Words.say("ladder-file.units.do"));
    }
    return masses.size() == given ? Optional.of(masses) : Optional.empty();
  }

  private static Optional<StepLoad.FirstLoad> start(Field field) {
    List<Field> parts = field.fields(List.of(BODY_MASS, BOTH_HANDS)).orElse(List.of());
    if (parts.size() != 1) {
      return field.wrong(Words.say("ladder-file.start"), Words.say("ladder-file.start.do"));
    }
    Field part = parts.get(0);
    return Numbers.percent(part)
        .map(
            pct ->
                part.name().equals(BODY_MASS)
                    ? new StepLoad.FirstLoad.OfBodyMass(pct)
                    : new StepLoad.FirstLoad.OfBothHands(pct));
  }

  private Optional<StepLoad.OfThreeRepMaximum> shares(Field field) {
    List<Field> parts =
        field
            .fields(List.of("release", "days", "from-pct", "weekly-pct", "shares"))
            .orElse(List.of());
    Optional<String> release = Optional.empty();
    OptionalInt days = OptionalInt.empty();
    Optional<BigDecimal> from = Optional.empty();
    Optional<BigDecimal> raise = Optional.empty();
    List<StepLoad.Share> steps = List.of();
    for (Field part : parts) {
      switch (part.name()) {
        case "release" -> release = Texts.name(part);
        case "days" -> days = Numbers.whole(part, 1, 365);
        case "from-pct" -> from = Numbers.percent(part);
        case "weekly-pct" -> raise = Numbers.percent(part);
        default -> steps = shareList(part);
      }
    }
    if (parts.size() < 5) {
      return field.wrong(
          Words.say("ladder-file.maximum.parts"), Words.say("ladder-file.maximum.parts.do"));
    }
    return kind != LoadKind.NONE
            && release.isPresent()
            && days.isPresent()
            && from.isPresent()
            && raise.isPresent()
            && !steps.isEmpty()
        ? Optional.of(
            new StepLoad.OfThreeRepMaximum(
                kind, release.get(), days.getAsInt(), from.get(), raise.get(), steps))
        : Optional.empty();
  }

  private static List<StepLoad.Share> shareList(Field field) {
    List<StepLoad.Share> shares = new ArrayList<>();
    for (Field item : Texts.list(field, Words.say("ladder-file.shares.do"))) {
      Optional<Scheme> scheme = Optional.empty();
      Optional<BigDecimal> pct = Optional.empty();
      for (Field part : item.fields(List.of("sets", "up-to-pct")).orElse(List.of())) {
        if (part.name().equals("sets")) {
          scheme = Texts.scheme(part);
        } else {
          pct = Numbers.percent(part);
        }
      }
      if (scheme.isEmpty() || pct.isEmpty()) {
        item.wrong(Words.say("ladder-file.shares"), Words.say("ladder-file.shares.do"));
      } else if (!shares.isEmpty()
          && shares.get(shares.size() - 1).upToPct().compareTo(pct.get()) >= 0) {
        item.wrong(Words.say("ladder-file.shares.order"), Words.say("ladder-file.shares.order.do"));
      } else {
        shares.add(new StepLoad.Share(scheme.get(), pct.get()));
      }
    }
    return shares;
  }

  private static Optional<Leaving> leaving(Field field) {
    if (!field.isMapping()) {
      return switch (field.word().orElse("")) {
        case "at-once" -> Optional.of(new Leaving.AtOnce());
        case "never" -> Optional.of(new Leaving.Never());
        default ->
            field.wrong(
                Words.say("ladder-file.leave", field.shown()), Words.say("ladder-file.leave.do"));
      };
    }
    List<Field> parts =
        field.fields(List.of("gate", "weeks", "kg", "lb", BODY_MASS)).orElse(List.of());
    boolean alone = parts.size() == 1;
    if (alone && parts.get(0).name().equals("gate")) {
      return Texts.name(parts.get(0)).map(Leaving.GateOnRecord::new);
    } else if (alone && parts.get(0).name().equals("weeks")) {
      OptionalInt weeks = Numbers.whole(parts.get(0), 1, 200);
      return weeks.isPresent()
          ? Optional.of(new Leaving.WeeksTrained(weeks.getAsInt()))
          : Optional.empty();
    } else if (parts.stream().anyMatch(p -> List.of("gate", "weeks").contains(p.name()))) {
      return field.wrong(Words.say("ladder-file.leave.one"), Words.say("ladder-file.leave.do"));
    }
    Optional<BigDecimal> bodyMass =
        parts.stream()
            .filter(p -> p.name().equals(BODY_MASS))
            .findFirst()
            .flatMap(Numbers::percent);
    return eachUnit(field, parts).map(load -> new Leaving.LoadReached(load, bodyMass));
  }
}
