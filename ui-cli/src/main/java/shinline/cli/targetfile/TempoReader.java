package shinline.cli.targetfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.target.TempoTarget.Phase;

/**
 * Tempo as a coach writes it: the trade's four figures (lowering, hold, drive, top), or a phase at
 * a time.
 */
final class TempoReader {
  private static final List<String> PHASES = List.of("lowering", "hold", "drive", "top");
  private static final Pattern RUN_TOGETHER = Pattern.compile("[0-9xX]{4}");
  private static final String NOTATION = Words.say("target-file.tempo.do");

  private Optional<Phase> lowering = Optional.empty();
  private Optional<Phase> hold = Optional.empty();
  private Optional<Phase> drive = Optional.empty();
  private Optional<Phase> top = Optional.empty();

  TempoTarget read(Field field) {
    if (field.isMapping()) {
      List<Field> phases = field.fields(PHASES).orElse(List.of());
      phases.forEach(f -> take(f.name(), phase(f)));
      if (phases.isEmpty()) {
        field.wrong(
            Words.say("target-file.tempo.idle"),
            Words.say("target-file.one-of.do", String.join(", ", PHASES)));
      }
    } else {
      notation(field);
    }
    return new TempoTarget(lowering, hold, drive, top);
  }

  private void take(String name, Optional<Phase> phase) {
    switch (name) {
      case "lowering" -> lowering = phase;
      case "hold" -> hold = phase;
      case "drive" -> drive = phase;
      default -> top = phase;
    }
  }

  /** The four figures; the last may be left out. */
  private void notation(Field field) {
    String text = field.word().orElse("");
    List<String> parts =
        RUN_TOGETHER.matcher(text).matches()
            ? Arrays.asList(text.split(""))
            : Arrays.stream(text.split("-", -1)).map(String::strip).toList();
    if (parts.size() < 3 || parts.size() > 4) {
      field.wrong(Words.say("target-file.tempo.kind", field.shown()), NOTATION);
      return;
    }
    for (int i = 0; i < parts.size(); i++) {
      String name = PHASES.get(i);
      if (isFast(parts.get(i))) {
        fast(field, name);
      } else {
        take(name, seconds(field, name, parts.get(i)));
      }
    }
  }

  private static Optional<Phase> seconds(Field field, String name, String text) {
    Optional<Double> seconds = Quantity.TIME.plausible(text);
    return seconds.isPresent()
        ? Optional.of(around(seconds.get(), TempoTarget.DEFAULT_TOLERANCE_S))
        : field.wrong(Words.say("target-file.tempo.range", name, shortened(text)), NOTATION);
  }

  private static String shortened(String text) {
    return text.length() > 12 ? text.substring(0, 12) + "..." : text;
  }

  private Optional<Phase> phase(Field field) {
    if (field.isMapping()) {
      return secondsAndTolerance(field);
    } else if (field.isList()) {
      return Band.read(field, Quantity.TIME).map(b -> new Phase(Math.max(0, b.min()), b.max()));
    } else if (isFast(field.word().orElse(""))) {
      fast(field, field.name());
      return Optional.empty();
    }
    return Quantity.TIME.read(field).map(s -> around(s, TempoTarget.DEFAULT_TOLERANCE_S));
  }

  private static Optional<Phase> secondsAndTolerance(Field field) {
    Optional<Double> seconds = Optional.empty();
    Optional<Double> tolerance = Optional.of(TempoTarget.DEFAULT_TOLERANCE_S);
    boolean given = false;
    for (Field part : field.fields(List.of("seconds", "tolerance")).orElse(List.of())) {
      if (part.name().equals("seconds")) {
        given = true;
        seconds = Quantity.TIME.read(part);
      } else {
        tolerance = Quantity.TIME_MARGIN.read(part);
      }
    }
    if (!given) {
      return field.wrong(
          Words.say("target-file.tempo.no-seconds"), Words.say("target-file.tempo.no-seconds.do"));
    }
    if (seconds.isEmpty() || tolerance.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(around(seconds.get(), tolerance.get()));
  }

  private static Phase around(double seconds, double tolerance) {
    return new Phase(Math.max(0, seconds - tolerance), seconds + tolerance);
  }

  private static boolean isFast(String text) {
    return text.equalsIgnoreCase("X");
  }

  /**
   * X asks for all the speed that technique allows. No number of seconds says that for every load,
   * so the phase is left unjudged; the drive's speed is measured in any case.
   */
  private static void fast(Field field, String name) {
    if (!name.equals("drive")) {
      field.wrong(Words.say("target-file.tempo.fast", name), NOTATION);
    }
  }
}
