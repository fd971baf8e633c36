package shinline.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.SetUp;
import shinline.metrics.target.Target;
import shinline.metrics.track.Side;

/** What the texts on a set and on a posture have in common. */
final class TextParts {
  /** What may as well be a true side view is not spoken of. */
  private static final double LEAST_YAW_SAID_DEG = 8;

  private final Layout layout;

  TextParts(Layout layout) {
    this.layout = layout;
  }

  /** What was asked for, as a sentence. */
  String target(Target target) {
    List<String> parts = new ArrayList<>();
    if (target.shin().isEmpty()) {
      parts.add(Words.say("text.target.no-shin"));
    }
    Asked.of(target).stream()
        .flatMap(asked -> asked.fold(w -> Optional.of(limit(w.limit())), this::range).stream())
        .forEach(parts::add);
    return Words.say("text.list", String.join(", ", parts));
  }

  private String limit(Limit limit) {
    String range = range(limit.min(), limit.max(), limit.unit());
    return limit
        .band()
        .map(
            name ->
                Words.say(
                    "text.target.shin",
                    name,
                    limit.aspect() == Aspect.SHIN
                        ? Words.say("text.band.angle", range)
                        : Words.say("text.band.distance", range)))
        .orElseGet(() -> Words.say("text.target.limit", Words.of(limit.aspect(), "noun"), range));
  }

  /** The full range is told by the thigh that goes with it. */
  private Optional<String> range(Asked.OfRange asked) {
    return asked.range() == Finding.Range.SHORT
        ? Optional.of(Words.say("target.short-range"))
        : Optional.empty();
  }

  private String range(double min, double max, MeasureUnit unit) {
    if (Double.isInfinite(max)) {
      return Words.say("range.at-least", quantity(min, unit));
    }
    if (Double.isInfinite(min)) {
      return Words.say("range.at-most", quantity(max, unit));
    }
    return Words.say("range.between", quantity(min, unit), quantity(max, unit));
  }

  /** How it was filmed, as a sentence. */
  String setUp(SetUp setUp) {
    SetUp.Camera camera = setUp.camera();
    List<String> parts = new ArrayList<>();
    parts.add(Words.say("seen.facing", word(setUp.facing())));
    parts.add(
        setUp.frontLegNearCamera()
            ? Words.say("seen.near-leg", word(setUp.frontLeg()))
            : Words.say("seen.far-leg", word(setUp.frontLeg())));
    parts.add(Words.say("seen.rear-foot", Words.of(setUp.rearFoot(), "name")));
    parts.add(
        switch (camera.rollSource()) {
          case GIVEN -> Words.say("seen.roll-given", signedDegrees(camera.rollDeg()));
          case BACKGROUND -> Words.say("seen.roll-background", signedDegrees(camera.rollDeg()));
          case NONE -> Words.say("seen.roll-none");
        });
    parts.add(
        switch (camera.pitchSource()) {
          case GIVEN -> Words.say("seen.pitch-given", looking(camera.pitchDeg()));
          case BACKGROUND -> Words.say("seen.pitch-background", looking(camera.pitchDeg()));
          case NONE -> Words.say("seen.pitch-none", looking(camera.pitchDeg()));
        });
    camera
        .yawDeg()
        .filter(y -> Math.abs(y) >= LEAST_YAW_SAID_DEG)
        .ifPresent(
            y ->
                parts.add(
                    Words.say(
                        y > 0 ? "seen.yaw-ahead" : "seen.yaw-behind",
                        Math.abs(y),
                        layout.signs().degree())));
    parts.add(Words.of(setUp.scaleSource(), "seen"));
    return Words.say("text.list", String.join("; ", parts));
  }

  /** A value with its ± for a table. */
  TextTable.Cell cell(Reading reading, MeasureUnit unit) {
    String format = unit == MeasureUnit.SECONDS ? "%.2f %s%.2f" : "%.1f %s%.1f";
    return TextTable.Cell.of(
        reading.fold(
            m ->
                String.format(
                    Locale.ROOT,
                    format,
                    tidy(shown(m.value(), unit)),
                    layout.signs().plusMinus(),
                    shown(m.plusMinus(), unit)),
            gap -> layout.signs().dash()));
  }

  /** A value as text with its unit, for running text. */
  String quantity(double value, MeasureUnit unit) {
    String symbol =
        switch (unit) {
          case DEGREES -> layout.signs().degree();
          case CENTIMETRES -> " " + layout.units().lengthSymbol();
          default -> " " + Words.of(unit, "symbol");
        };
    int places = unit == MeasureUnit.METRES_PER_SECOND ? 2 : 1;
    return String.format(Locale.ROOT, "%." + places + "f", tidy(shown(value, unit))) + symbol;
  }

  private double shown(double value, MeasureUnit unit) {
    return unit == MeasureUnit.CENTIMETRES ? layout.units().fromCm(value) : value;
  }

  /** Keeps "-0.0" off the page. */
  private static double tidy(double value) {
    return Math.abs(value) < 0.05 && value < 0 ? 0 : value;
  }

  private String signedDegrees(double degrees) {
    double tidy = Math.abs(degrees) < 0.05 ? 0 : degrees;
    return String.format(Locale.ROOT, tidy == 0 ? "%.1f" : "%+.1f", tidy) + layout.signs().degree();
  }

  private String looking(double pitchDeg) {
    return Words.say(
        pitchDeg <= -0.05 ? "camera.looking.up" : "camera.looking.down",
        String.format(Locale.ROOT, "%.1f", Math.abs(pitchDeg)) + layout.signs().degree());
  }

  private static String word(Side side) {
    return Words.of(side, "name");
  }

  /** A reason as a sentence: capital first letter, full stop. */
  static String sentence(String text) {
    String start = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }
}
