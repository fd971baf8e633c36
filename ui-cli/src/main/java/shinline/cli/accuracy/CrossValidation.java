package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import shinline.cli.words.Words;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * How good a calibration is on clips it was not fitted on: offsets, parts of the ± and limits of
 * the flags are fitted again without some of the clips, and those are measured with them.
 */
final class CrossValidation {
  private static final Scored[] SHOWN = {
    Scored.SHIN, Scored.TRUNK_LEAN, Scored.THIGH, Scored.KNEE_FLEXION, Scored.KNEE_PAST_TOE
  };

  /** With fewer, what is left does not fit anything. */
  private static final int FEWEST = 3;

  /** What is left out at a time. */
  private enum Left {
    CLIP(Truth::clip),
    ATHLETE(Truth::athlete),
    PICTURE(t -> t.clip().replaceAll("[^A-Za-z].*", ""));

    private final Function<Truth, String> group;

    Left(Function<Truth, String> group) {
      this.group = group;
    }

    String of(KnownClip clip) {
      return group.apply(clip.truth());
    }
  }

  private final List<KnownClip> clips;
  private final Calibration shipped;

  /**
   * @param shipped what the clips were scored with
   */
  CrossValidation(List<KnownClip> clips, Calibration shipped) {
    this.clips = List.copyOf(clips);
    this.shipped = shipped;
  }

  /** The part of the page; nothing from too few clips. */
  List<String> section() {
    if (clips.size() < FEWEST) {
      return List.of();
    }
    CalibrationFit here = CalibrationFit.over(clips, shipped);
    List<String> page = new ArrayList<>();
    page.add("");
    page.add("## " + Words.say("left-out.title"));
    page.add("");
    page.add(Words.say("left-out.how"));
    page.add("");
    List<String> head =
        new ArrayList<>(List.of(Words.say("left-out.left-out"), Words.say("left-out.fits")));
    for (Scored scored : SHOWN) {
      head.add(Words.say("accuracy.measure-unit", scored.words(), scored.unit()));
    }
    head.add(Words.say("left-out.inside"));
    head.add(Words.say("left-out.flags"));
    page.add(Markdown.row(head.toArray(String[]::new)));
    page.add(Markdown.rule(1, SHOWN.length + 3));
    page.add(
        row(
            Words.say("left-out.shipped"),
            0,
            new Accuracy(clips.stream().map(KnownClip::shipped).toList())));
    page.add(row(Words.say("left-out.none"), 1, measured(here.tried())));
    Map<Left, Accuracy> without = new EnumMap<>(Left.class);
    for (Left left : Left.values()) {
      Map<String, CalibrationFit> fits = fits(left);
      if (fits.size() > 1) {
        Accuracy of = measured(left, fits);
        without.put(left, of);
        page.add(row(Words.of(left, "name"), fits.size(), of));
      }
    }
    limits(page, here, without);
    changes(page, here);
    return page;
  }

  /** By the group that was left out of the fit. */
  private Map<String, CalibrationFit> fits(Left left) {
    Map<String, CalibrationFit> fits = new LinkedHashMap<>();
    for (KnownClip clip : clips) {
      fits.computeIfAbsent(
          left.of(clip),
          group ->
              CalibrationFit.over(
                  clips.stream().filter(c -> !left.of(c).equals(group)).toList(), shipped));
    }
    return fits;
  }

  private Accuracy measured(Calibration calibration) {
    return new Accuracy(clips.stream().map(c -> c.measured(calibration)).toList());
  }

  private Accuracy measured(Left left, Map<String, CalibrationFit> fits) {
    List<ClipScore> scores = new ArrayList<>();
    for (KnownClip clip : clips) {
      Optional.ofNullable(fits.get(left.of(clip)))
          .ifPresent(fit -> scores.add(clip.measured(fit.tried())));
    }
    return new Accuracy(scores);
  }

  private static String row(String what, int fits, Accuracy accuracy) {
    List<String> cells = new ArrayList<>();
    cells.add(what);
    cells.add(fits == 0 ? Markdown.NONE : String.valueOf(fits));
    for (Scored scored : SHOWN) {
      cells.add(
          accuracy
              .spread(scored)
              .map(s -> String.format(Locale.ROOT, "%.2f", s.meanAbsolute()))
              .orElse(Markdown.NONE));
    }
    cells.add(accuracy.coverage().map(Markdown::percent).orElse(Markdown.NONE));
    cells.add(
        accuracy.flagsFound() + " / " + accuracy.flagsMissed() + " / " + accuracy.flagsFalse());
    return Markdown.row(cells.toArray(String[]::new));
  }

  /** Each limit between the clean and the faulty reps, and how the kind fares left out. */
  private void limits(List<String> page, CalibrationFit here, Map<Left, Accuracy> without) {
    if (here.limits().isEmpty()) {
      return;
    }
    page.add("");
    page.add(Words.say("left-out.limits-how"));
    page.add("");
    page.add(Markdown.row(Words.lines("left-out.limits-head").toArray(String[]::new)));
    page.add(Markdown.rule(2, 6));
    for (LimitFitting limit : here.limits()) {
      String kind = limit.kind().jsonName();
      page.add(
          Markdown.row(
              kind,
              limit.key().unit().symbol(),
              number(shipped.value(limit.key())),
              number(limit.nearestClean()) + " (" + limit.clean().size() + ")",
              number(limit.nearestFaulty()) + " (" + limit.faulty().size() + ")",
              number(limit.limit()),
              counts(without.get(Left.CLIP), kind),
              counts(without.get(Left.ATHLETE), kind)));
    }
  }

  private static String counts(@Nullable Accuracy accuracy, String kind) {
    if (accuracy == null) {
      return Markdown.NONE;
    }
    int found = 0;
    int missed = 0;
    int falsely = 0;
    for (ClipScore clip : accuracy.clips()) {
      for (ClipScore.FlagScore rep : clip.flags()) {
        found += rep.wanted().contains(kind) && rep.said().contains(kind) ? 1 : 0;
        missed += rep.missed().contains(kind) ? 1 : 0;
        falsely += rep.falseOnClean().contains(kind) ? 1 : 0;
      }
    }
    return found + " / " + missed + " / " + falsely;
  }

  private void changes(List<String> page, CalibrationFit here) {
    page.add("");
    page.add(Words.say("left-out.changes-how"));
    page.add("");
    page.add(Markdown.row(Words.lines("left-out.changes-head").toArray(String[]::new)));
    page.add(Markdown.rule(2, 2));
    Calibration fitted = here.tried();
    for (CalibrationKey key : CalibrationKey.values()) {
      if (here.offsets().containsKey(key) || here.intervals().containsKey(key)) {
        page.add(
            Markdown.row(
                key.word(),
                key.unit().symbol(),
                number(shipped.value(key)),
                number(fitted.value(key))));
      }
    }
    here.refused()
        .forEach(
            (key, value) ->
                page.addAll(
                    List.of(
                        "",
                        Words.say(
                            "left-out.refused",
                            key.word(),
                            number(value),
                            number(key.least()),
                            number(key.most())))));
  }

  /** Three digits that count, and no power of ten. */
  private static String number(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(3))
        .stripTrailingZeros()
        .toPlainString();
  }
}
