package shinline.cli.advice;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import shinline.cli.record.LineText;
import shinline.cli.text.Cautions;
import shinline.cli.words.Words;
import shinline.metrics.advice.Advice;
import shinline.metrics.advice.Missing;
import shinline.metrics.advice.ThreeRepMaximum;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;

/** The words of an advice. */
public final class AdviceWords {
  private AdviceWords() {}

  /** What is missing, for example "left leg: one more good set of 8". */
  public static String missing(Missing missing) {
    if (missing instanceof Missing.Clearance m) {
      return Words.say("missing.clearance", m.pain());
    } else if (missing instanceof Missing.WorkSet) {
      return Words.say("missing.work-set");
    } else if (missing instanceof Missing.Leg m) {
      return Words.say("missing.leg", leg(m.leg()), m.session());
    } else if (missing instanceof Missing.GoodSets m) {
      return Words.say("missing.good-sets", leg(m.leg()), number(m.sets()), m.sets(), m.reps());
    } else if (missing instanceof Missing.FilmAgain m) {
      return Words.say("missing.film-again", leg(m.leg()), number(m.sets()), m.sets());
    } else if (missing instanceof Missing.PainNotAsked) {
      return Words.say("missing.pain-not-asked");
    } else if (missing instanceof Missing.PainlessSessions m) {
      return Words.say("missing.painless-sessions", number(m.sessions()), m.sessions());
    } else if (missing instanceof Missing.WeekSinceRaise m) {
      return Words.say("missing.week-since-raise", m.raise(), m.earliest());
    } else if (missing instanceof Missing.NoLoadAtHand m) {
      return m.next()
          .map(next -> Words.say("missing.no-load-at-hand", mass(m.load()), mass(next)))
          .orElseGet(() -> Words.say("missing.no-load-above", mass(m.load())));
    } else if (missing instanceof Missing.LoadUnknown) {
      return Words.say("missing.load-unknown");
    } else if (missing instanceof Missing.StepUnknown m) {
      return Words.say("missing.step-unknown", m.step());
    } else if (missing instanceof Missing.TargetUnknown m) {
      return Words.say("missing.target-unknown", m.step(), m.target());
    } else if (missing instanceof Missing.Gate m) {
      return Words.say("missing.gate", m.gate(), m.step());
    } else if (missing instanceof Missing.Release m) {
      return Words.say("missing.release", m.step());
    } else if (missing instanceof Missing.AdultsOnly m) {
      return Words.say("missing.adults-only", m.step());
    } else if (missing instanceof Missing.ThreeRepMaximum m) {
      return Words.say("missing.three-rep-maximum", m.days());
    }
    return Words.say("missing.top-of-ladder");
  }

  public static List<String> missing(Advice advice) {
    return advice.missing().stream().map(AdviceWords::missing).toList();
  }

  /** Section "cautions" of every prescription. */
  public static List<String> cautions() {
    return Stream.concat(Words.lines("advice.cautions").stream(), Cautions.safety().stream())
        .toList();
  }

  public static String load(TrainingLoad load) {
    String held =
        load.kind() == LoadKind.EACH_HAND
            ? Words.say("advice.load.each-hand", mass(load.mass()))
            : load.kind() == LoadKind.BAR
                ? Words.say("advice.load.bar", mass(load.mass()))
                : Words.say("advice.load.guided-bar", mass(load.mass()));
    return load.vest().map(v -> Words.say("advice.load.vest", held, mass(v))).orElse(held);
  }

  static String maximum(ThreeRepMaximum maximum) {
    return Words.say(
        "advice.maximum",
        maximum.mass().value().doubleValue(),
        maximum.mass().unit().word(),
        maximum.formula().word().substring(0, 1).toUpperCase(Locale.ROOT)
            + maximum.formula().word().substring(1),
        maximum.set().entry().counts().cleanReps(),
        maximum.set().entry().load().map(l -> mass(l.mass())).orElse(""),
        leg(maximum.set().entry().leg()),
        maximum.set().date(),
        LineText.shortId(maximum.set().id()));
  }

  private static String mass(Mass mass) {
    return mass.toString();
  }

  public static String leg(Side leg) {
    return Words.say(leg == Side.LEFT ? "advice.leg.left" : "advice.leg.right");
  }

  private static String number(int count) {
    return count == 1 ? Words.say("advice.one") : String.valueOf(count);
  }
}
