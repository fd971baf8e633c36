package shinline.cli.targetfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.cli.yaml.Problems;
import shinline.cli.yaml.YamlReading;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

/** The tree of a target file to a target. One reader reads one file. */
final class TargetReader {
  private static final String OWN = "own";
  private static final int LONGEST_NAME = 40;
  private static final List<String> FIELDS =
      List.of("shin", "depth", "tempo", "trunk-deg", "margin");
  private static final String PRESETS =
      Arrays.stream(ShinPreset.values()).map(ShinPreset::word).collect(Collectors.joining(", "));

  private final Problems problems = new Problems();

  private Optional<ShinTarget> shin = Optional.empty();
  private DepthTarget depth = DepthTarget.any();
  private TempoTarget tempo = TempoTarget.any();
  private Optional<Target.TrunkBand> trunk = Optional.empty();
  private Target.Margin margin = Target.Margin.standard();

  YamlReading<Target> read(String text) {
    return YamlReading.of(
        text,
        problems,
        new YamlReading.EmptyText(
            Words.say("target-file.empty"), Words.say("target-file.empty.do")),
        this::all,
        () -> new Target(shin, depth, tempo, trunk, margin));
  }

  private void all(Field file) {
    List<Field> fields = file.fields(FIELDS).orElse(List.of());
    fields.forEach(this::one);
    if (problems.isEmpty() && fields.stream().allMatch(f -> f.name().equals("margin"))) {
      file.wrong(Words.say("target-file.idle"), Words.say("target-file.idle.do"));
    }
  }

  private void one(Field field) {
    switch (field.name()) {
      case "shin" -> shin = shin(field);
      case "depth" -> depth = depth(field).orElse(depth);
      case "tempo" -> tempo = new TempoReader().read(field);
      case "trunk-deg" ->
          trunk = Band.read(field, Quantity.ANGLE).map(b -> new Target.TrunkBand(b.min(), b.max()));
      default -> margin = margin(field);
    }
  }

  private static Optional<ShinTarget> shin(Field field) {
    if (!field.isMapping()) {
      Optional<ShinTarget> preset = field.word().flatMap(ShinPreset::of).map(ShinPreset::target);
      return preset.isPresent()
          ? preset
          : field.wrong(
              Words.say("target-file.shin.unknown", field.shown()),
              Words.say("target-file.shin.unknown.do", PRESETS));
    }
    Optional<String> name = Optional.of(OWN);
    Optional<Field> degrees = Optional.empty();
    Optional<Field> centimetres = Optional.empty();
    for (Field part :
        field.fields(List.of("name", "degrees", "knee-past-toe-cm")).orElse(List.of())) {
      switch (part.name()) {
        case "name" -> name = bandName(part);
        case "degrees" -> degrees = Optional.of(part);
        default -> centimetres = Optional.of(part);
      }
    }
    if (degrees.isPresent() == centimetres.isPresent()) {
      return field.wrong(
          degrees.isPresent()
              ? Words.say("target-file.shin.both")
              : Words.say("target-file.shin.neither"),
          Words.say("target-file.shin.one.do"));
    }
    String called = name.orElse(OWN);
    return degrees.isPresent()
        ? Band.read(degrees.get(), Quantity.ANGLE)
            .map(b -> new ShinTarget.AngleBand(called, b.min(), b.max()))
        : Band.read(centimetres.get(), Quantity.DISTANCE)
            .map(b -> new ShinTarget.KneePastToeBand(called, b.min(), b.max()));
  }

  private static Optional<String> bandName(Field field) {
    Optional<String> name =
        field
            .word()
            .filter(w -> !w.isEmpty() && w.length() <= LONGEST_NAME)
            .filter(w -> w.chars().noneMatch(Character::isISOControl));
    return name.isPresent()
        ? name
        : field.wrong(
            Words.say("target-file.name", field.shown()),
            Words.say("target-file.name.do", LONGEST_NAME));
  }

  private Optional<DepthTarget> depth(Field field) {
    if (!field.isMapping()) {
      Optional<DepthTarget> named = field.word().flatMap(TargetReader::depthCalled);
      return named.isPresent()
          ? named
          : field.wrong(
              Words.say("target-file.depth.unknown", field.shown()),
              Words.say("target-file.depth.unknown.do"));
    }
    Optional<Double> thigh = Optional.empty();
    Optional<Double> rearKnee = Optional.empty();
    Optional<Double> travel = Optional.empty();
    List<String> known = List.of("thigh-max-deg", "rear-knee-max-cm", "hip-travel-min-cm");
    List<Field> parts = field.fields(known).orElse(List.of());
    for (Field part : parts) {
      switch (part.name()) {
        case "thigh-max-deg" -> thigh = Quantity.ANGLE.read(part);
        case "rear-knee-max-cm" -> rearKnee = Quantity.HEIGHT.read(part);
        default -> travel = Quantity.HEIGHT.read(part);
      }
    }
    if (parts.isEmpty()) {
      return field.wrong(
          Words.say("target-file.depth.idle"),
          Words.say("target-file.one-of.do", String.join(", ", known)));
    }
    return Optional.of(new DepthTarget(OWN, thigh, rearKnee, travel, false));
  }

  private static Optional<DepthTarget> depthCalled(String word) {
    return switch (word) {
      case "full" -> Optional.of(DepthTarget.full());
      case "short-range" -> Optional.of(DepthTarget.quarterRange());
      case "any" -> Optional.of(DepthTarget.any());
      default -> Optional.empty();
    };
  }

  private Target.Margin margin(Field field) {
    double deg = margin.deg();
    double cm = margin.cm();
    double s = margin.s();
    for (Field part : field.fields(List.of("deg", "cm", "s")).orElse(List.of())) {
      switch (part.name()) {
        case "deg" -> deg = Quantity.ANGLE_MARGIN.read(part).orElse(deg);
        case "cm" -> cm = Quantity.DISTANCE_MARGIN.read(part).orElse(cm);
        default -> s = Quantity.TIME_MARGIN.read(part).orElse(s);
      }
    }
    return new Target.Margin(deg, cm, s);
  }
}
