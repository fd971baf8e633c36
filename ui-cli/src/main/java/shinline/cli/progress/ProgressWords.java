package shinline.cli.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.cli.report.Figure;
import shinline.cli.words.Words;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.progress.Asking;
import shinline.metrics.progress.AthleteProgress;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.LegProgress;
import shinline.metrics.progress.Sides;
import shinline.metrics.progress.Stretch;
import shinline.metrics.track.Side;

/** Changes and differences as sentences, for page and terminal. */
final class ProgressWords {
  private final MassUnit unit;

  ProgressWords(MassUnit unit) {
    this.unit = unit;
  }

  String name(Followed followed) {
    return Words.of(followed, "name");
  }

  String unit(Followed followed) {
    return switch (followed) {
      case SHIN, DEPTH, TRUNK -> "°";
      case LOWERING, HOLD -> " s";
      case DRIVE_SPEED, BAR_SPEED -> " m/s";
      case LOAD, MAXIMUM -> " " + unit.word();
    };
  }

  static int places(Followed followed) {
    return switch (followed) {
      case LOWERING, HOLD, DRIVE_SPEED, BAR_SPEED -> 2;
      default -> 1;
    };
  }

  /** Without its unit; a whole load without decimals. */
  static String number(Followed followed, double value) {
    boolean whole = followed == Followed.LOAD && value == Math.rint(value);
    return Figure.number(value, whole ? 0 : places(followed));
  }

  String quantity(Followed followed, double value) {
    return number(followed, value) + unit(followed);
  }

  private String signed(Followed followed, double value) {
    return (value > 0 ? "+" : "") + quantity(followed, value);
  }

  static String leg(Side leg) {
    return Words.say(leg == Side.LEFT ? "advice.leg.left" : "advice.leg.right");
  }

  static String asked(Asking asking) {
    return Words.say("progress.asked", asking.step(), asking.target());
  }

  static String formula(OneRepMax formula) {
    String word = formula.word();
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /** The change over the latest stretch, and what it means. */
  String change(LegProgress leg, Stretch stretch) {
    Followed followed = stretch.followed();
    OptionalDouble limit = stretch.realChange();
    String by = signed(followed, stretch.change());
    String what =
        switch (stretch.verdict()) {
          case ONE_SESSION -> Words.say("progress.change.one");
          case SAME -> Words.say("progress.change.same");
          case UNKNOWN ->
              followed == Followed.MAXIMUM
                  ? Words.say("progress.change.estimate", by)
                  : Words.say("progress.change.unknown", by);
          case REAL ->
              followed == Followed.LOAD
                  ? Words.say("progress.change.load", by)
                  : Words.say("progress.change.real", by, quantity(followed, limit.orElseThrow()));
          case WITHIN_ERROR ->
              Words.say("progress.change.within", by, quantity(followed, limit.orElseThrow()));
        };
    return Words.say(
        "progress.change",
        leg(leg.leg()),
        quantity(followed, stretch.last().value()),
        stretch.values().size(),
        asked(stretch.asking()),
        what);
  }

  /** Where the body's bias is still in the ± of a bottom angle. */
  static Optional<String> biasNote(AthleteProgress progress) {
    boolean whole =
        progress.legs().stream()
            .flatMap(
                l ->
                    List.of(Followed.SHIN, Followed.DEPTH, Followed.TRUNK).stream()
                        .flatMap(f -> l.latest(f).stream()))
            .anyMatch(s -> s.realChange().isPresent() && !s.withoutBodyBias());
    return whole ? Optional.of(Words.say("progress.bias.whole")) : Optional.empty();
  }

  /** How changes are told from error. */
  static List<String> method(AthleteProgress progress) {
    List<String> notes = new ArrayList<>();
    notes.add(Words.say("progress.method"));
    notes.add(Words.say("progress.bias"));
    biasNote(progress).ifPresent(notes::add);
    notes.add(Words.say("progress.method.stretch"));
    notes.add(
        Words.say(
            "progress.method.maximum",
            formula(progress.left().formula()),
            LegProgress.MOST_REPS_FOR_MAXIMUM));
    return notes;
  }

  String sides(Sides sides) {
    Followed followed = sides.followed();
    String left = quantity(followed, sides.left().value());
    String right = quantity(followed, sides.right().value());
    if (sides.weakerPct().isPresent()) {
      return Words.say(
          "progress.sides.strength",
          name(followed),
          left,
          right,
          sides.weakerPct().getAsDouble(),
          sides
              .weaker()
              .map(w -> Words.say("progress.sides.weaker", leg(w)))
              .orElseGet(() -> Words.say("progress.sides.equal")));
    }
    String apart = quantity(followed, Math.abs(sides.difference()));
    OptionalDouble limit = sides.realDifference();
    String means =
        limit.isEmpty()
            ? Words.say("progress.sides.unknown")
            : Words.say(
                Math.abs(sides.difference()) > limit.getAsDouble()
                    ? "progress.sides.real"
                    : "progress.sides.within",
                quantity(followed, limit.getAsDouble()));
    return Words.say("progress.sides.angle", name(followed), left, right, apart, means);
  }

  /** What is named of the comparison, and for what the published limits hold. */
  List<String> sidesNotes(AthleteProgress progress) {
    List<String> notes = new ArrayList<>();
    notes.add(Words.say("progress.sides.formula"));
    notes.add(Words.say("progress.sides.helme", Sides.FIVE_REP_LOW_PCT, Sides.FIVE_REP_HIGH_PCT));
    notes.add(
        progress
            .fiveRepTest()
            .map(
                t ->
                    Words.say(
                        t.beyondLimits()
                            ? "progress.sides.test.beyond"
                            : "progress.sides.test.inside",
                        t.left().date(),
                        t.right().date(),
                        t.leftOfRightPct(),
                        t.weakerPct()))
            .orElseGet(() -> Words.say("progress.sides.no-test")));
    return notes;
  }
}
