package shinline.cli.ladder;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.cli.yaml.Problems;
import shinline.cli.yaml.YamlReading;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.ladder.AtHand;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;

/** The tree of a ladder file to a ladder. One reader reads one file. */
final class LadderReader {
  private static final String SCHEMA = "shinline-ladder/1";
  private static final List<String> FIELDS =
      List.of("ladder", "unit", "maximum", "targets", "steps", "at-hand", "rules");

  private final Problems problems = new Problems();
  private final Optional<Ladder> shipped;

  private Optional<MassUnit> unit;
  private Optional<OneRepMax> maximum;
  private List<String> targets;
  private List<Step> steps;
  private Optional<AtHand> atHand;
  private Optional<AdviceLimits> limits;

  /**
   * @param shipped what counts where the file is silent; the shipped file itself leaves out nothing
   */
  LadderReader(Optional<Ladder> shipped) {
    this.shipped = shipped;
    unit = shipped.map(Ladder::unit);
    maximum = shipped.map(Ladder::maximum);
    targets = shipped.map(l -> l.first().targets()).orElse(List.of());
    steps = shipped.map(Ladder::steps).orElse(List.of());
    atHand = shipped.map(Ladder::atHand);
    limits = shipped.map(Ladder::limits);
  }

  YamlReading<Ladder> read(String text) {
    return YamlReading.of(
        text,
        problems,
        new YamlReading.EmptyText(
            Words.say("ladder-file.empty"), Words.say("ladder-file.empty.do")),
        this::all,
        () ->
            new Ladder(
                steps,
                unit.orElseThrow(),
                maximum.orElseThrow(),
                atHand.orElseThrow(),
                limits.orElseThrow()));
  }

  private void all(Field file) {
    List<Field> fields = file.fields(FIELDS).orElse(List.of());
    // Steps without targets of their own take the file's, wherever those stand.
    fields.stream().filter(f -> f.name().equals("targets")).forEach(f -> targets = Texts.names(f));
    fields.forEach(this::one);
    if (fields.stream().noneMatch(f -> f.name().equals("ladder")) && problems.isEmpty()) {
      file.wrong(Words.say("ladder-file.no-schema"), Words.say("ladder-file.schema.do", SCHEMA));
    }
  }

  private void one(Field field) {
    switch (field.name()) {
      case "ladder" -> schema(field);
      case "unit" -> unit = unit(field);
      case "maximum" -> maximum = maximum(field);
      case "steps" -> steps = steps(field);
      case "at-hand" -> atHand = AtHandReader.read(field, shipped.map(Ladder::atHand));
      case "rules" -> limits = LimitsReader.read(field, shipped.map(Ladder::limits));
      default -> {} // targets, read before
    }
  }

  private static void schema(Field field) {
    if (field.word().filter(SCHEMA::equals).isEmpty()) {
      field.wrong(
          Words.say("ladder-file.schema", field.shown()),
          Words.say("ladder-file.schema.do", SCHEMA));
    }
  }

  private static Optional<MassUnit> unit(Field field) {
    return field
        .word()
        .flatMap(MassUnit::of)
        .or(
            () ->
                field.wrong(
                    Words.say("ladder-file.unit", field.shown()),
                    Words.say("ladder-file.unit.do")));
  }

  private static Optional<OneRepMax> maximum(Field field) {
    return field
        .word()
        .flatMap(OneRepMax::of)
        .or(
            () ->
                field.wrong(
                    Words.say("ladder-file.formula", field.shown()),
                    Words.say("ladder-file.formula.do")));
  }

  private List<Step> steps(Field field) {
    List<Step> read = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Field item : Texts.list(field, Words.say("ladder-file.steps.do"))) {
      Optional<Step> step = new StepReader(item, targets).read();
      if (step.isPresent() && !ids.add(step.get().id())) {
        item.wrong(
            Words.say("ladder-file.twice", step.get().id()), Words.say("ladder-file.twice.do"));
      } else {
        step.ifPresent(read::add);
      }
    }
    return read;
  }
}
