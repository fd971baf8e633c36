package shinline.cli.accuracy;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The accuracy of a run as a page of Markdown and as a few lines for the terminal. Every figure is
 * computed but those of other people's studies, which carry their source.
 *
 * @param command the command that makes this page
 * @param model the pose model that looked
 * @param unscored clips that could not be scored, and why
 * @param leftOut the section on clips that nothing was fitted on, empty when there are too few
 */
record AccuracyReport(
    Accuracy all, String command, String model, List<String> unscored, List<String> leftOut) {
  private static final double OFF_SIDE_DEG = 5;
  private static final double FEW_FPS = 27;
  private static final double MANY_FPS = 40;

  /** The short table for the terminal. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%-17s %4s %8s %8s %8s %8s %7s",
            "measure",
            "reps",
            "bias",
            "mean",
            "95 %",
            "+-",
            "inside"));
    for (Scored scored : Scored.values()) {
      all.spread(scored)
          .ifPresent(
              s ->
                  lines.add(
                      String.format(
                          Locale.ROOT,
                          "%-17s %4d %8s %8s %8s %8s %7s",
                          scored.words(),
                          s.n(),
                          signed(scored, s.bias()),
                          plain(scored, s.meanAbsolute()),
                          plain(scored, s.p95()),
                          plain(scored, s.medianPlusMinus()),
                          Markdown.percent(s.coverage()))));
    }
    lines.add(reps());
    lines.add(flags());
    lines.add(new VerdictTable(all).line());
    lines.addAll(leftOut);
    return lines;
  }

  void write(Writer out) throws IOException {
    for (String line : page()) {
      out.write(line + "\n");
    }
  }

  private List<String> page() {
    List<String> page = new ArrayList<>();
    page.add("# Accuracy");
    page.add("");
    page.add(
        "Made by `"
            + command
            + "` with the "
            + model
            + " pose model, over "
            + count(all.clips().size(), "clip")
            + " with "
            + count(all.trueReps(), "rep")
            + " whose truth is known. No figure of ours on this page is typed by hand. The truth"
            + " of a clip is its series of joint positions; phases and bottom values follow from"
            + " it by the definitions of [measures.md](measures.md).");
    page.add("");
    page.add(reps() + " " + flags() + " " + new VerdictTable(all).line());
    page.add("");
    page.add(
        "The offsets of the joint centres, the ± and the limits of the flags were fitted on this"
            + " project's own development clips, whose names begin with gym or plain. On those the"
            + " figures flatter; only clips that nothing was fitted on tell what to expect.");
    measures(page);
    clips(page);
    page.addAll(new VerdictTable(all).section());
    faults(page);
    worse(page);
    outside(page);
    page.addAll(leftOut);
    published(page);
    return page;
  }

  private void measures(List<String> page) {
    page.add("");
    page.add("## Measures");
    page.add("");
    page.add(
        "Error is told less true. 95 %: absolute error that 95 of 100 reps stay within (nearest"
            + " rank). Inside: share of reps whose true value lies inside the told ±; it should be"
            + " about 95 %.");
    page.add("");
    page.add(
        Markdown.row(
            "measure",
            "unit",
            "reps",
            "bias",
            "mean absolute error",
            "goal",
            "95 %",
            "median ±",
            "inside"));
    page.add(Markdown.rule(2, 7));
    for (Scored scored : Scored.values()) {
      all.spread(scored)
          .ifPresentOrElse(
              s ->
                  page.add(
                      Markdown.row(
                          scored.words(),
                          scored.unit(),
                          String.valueOf(s.n()),
                          signed(scored, s.bias()),
                          plain(scored, s.meanAbsolute()),
                          goal(scored),
                          plain(scored, s.p95()),
                          plain(scored, s.medianPlusMinus()),
                          Markdown.percent(s.coverage()))),
              () ->
                  page.add(
                      Markdown.row(
                          scored.words(),
                          scored.unit(),
                          "0",
                          Markdown.NONE,
                          Markdown.NONE,
                          goal(scored),
                          Markdown.NONE,
                          Markdown.NONE,
                          Markdown.NONE)));
    }
  }

  private void clips(List<String> page) {
    page.add("");
    page.add("## Clips");
    page.add("");
    page.add("Mean absolute error / absolute error that 95 of 100 reps stay within.");
    page.add("");
    page.add(
        Markdown.row(
            Stream.concat(
                    Stream.of("clip", "reps found"),
                    Stream.concat(
                        Stream.of(Scored.values()).map(s -> s.words() + ", " + s.unit()),
                        Stream.of("inside ±", "notes")))
                .toArray(String[]::new)));
    page.add(Markdown.rule(1, Scored.values().length + 2) + " --- |");
    for (ClipScore clip : all.clips()) {
      Accuracy one = new Accuracy(List.of(clip));
      List<String> cells = new ArrayList<>();
      cells.add(clip.truth().clip());
      cells.add(clip.matched() + " of " + clip.trueReps());
      for (Scored scored : Scored.values()) {
        cells.add(
            one.spread(scored)
                .map(s -> plain(scored, s.meanAbsolute()) + " / " + plain(scored, s.p95()))
                .orElse(Markdown.NONE));
      }
      cells.add(one.coverage().map(Markdown::percent).orElse(Markdown.NONE));
      List<String> notes = new ArrayList<>(clip.notes());
      if (!clip.missing().isEmpty()) {
        notes.add("not measured: " + String.join(", ", clip.missing()));
      }
      if (clip.falseReps() > 0) {
        notes.add(count(clip.falseReps(), "rep") + " told that are none");
      }
      cells.add(notes.isEmpty() ? "" : String.join("; ", notes));
      page.add(Markdown.row(cells.toArray(String[]::new)));
    }
    if (!unscored.isEmpty()) {
      page.add("");
      page.add("Not scored: " + String.join("; ", unscored) + ".");
    }
  }

  private void faults(List<String> page) {
    page.add("");
    page.add("## Flags");
    page.add("");
    page.add(
        "Faults put into the motion, and those told of the same rep. A flag on a rep into which no"
            + " fault was put is false.");
    page.add("");
    Map<String, int[]> kinds = new java.util.TreeMap<>();
    List<String> wrong = new ArrayList<>();
    for (ClipScore clip : all.clips()) {
      for (ClipScore.FlagScore rep : clip.flags()) {
        String where = clip.truth().clip() + ", rep " + rep.rep() + ": ";
        for (String kind : rep.wanted()) {
          int column = rep.said().contains(kind) ? 0 : 1;
          kinds.computeIfAbsent(kind, k -> new int[3])[column]++;
        }
        for (String kind : rep.falseOnClean()) {
          kinds.computeIfAbsent(kind, k -> new int[3])[2]++;
          wrong.add(where + kind + " is false");
        }
        rep.missed().forEach(kind -> wrong.add(where + kind + " was missed"));
      }
    }
    page.add(Markdown.row("kind", "found", "missed", "false"));
    page.add(Markdown.rule(1, 3));
    kinds.forEach(
        (kind, n) ->
            page.add(
                Markdown.row(
                    kind, String.valueOf(n[0]), String.valueOf(n[1]), String.valueOf(n[2]))));
    if (!wrong.isEmpty()) {
      page.add("");
      wrong.forEach(w -> page.add("- " + w));
    }
  }

  private static final Scored[] COMPARED = {
    Scored.SHIN,
    Scored.TRUNK_LEAN,
    Scored.THIGH,
    Scored.KNEE_FLEXION,
    Scored.KNEE_PAST_TOE,
    Scored.DRIVE
  };

  private void worse(List<String> page) {
    page.add("");
    page.add("## What makes it worse");
    page.add("");
    page.add(
        "Mean absolute errors of clips that share a fact. The groups overlap and are small: read"
            + " them as hints.");
    page.add("");
    page.add(
        Markdown.row(
            Stream.concat(
                    Stream.of("fact", "clips", "reps"),
                    Stream.concat(
                        Stream.of(COMPARED).map(s -> s.words() + ", " + s.unit()),
                        Stream.of("inside ±")))
                .toArray(String[]::new)));
    page.add(Markdown.rule(1, COMPARED.length + 3));
    Map<String, Predicate<Truth>> facts = new LinkedHashMap<>();
    facts.put("camera within 5° of the side", t -> t.yawDeg() <= OFF_SIDE_DEG);
    facts.put("camera farther off the side", t -> t.yawDeg() > OFF_SIDE_DEG);
    facts.put("front leg near the camera", Truth::frontLegNear);
    facts.put("front leg the far one", t -> !t.frontLegNear());
    facts.put("rear foot on the floor", t -> !t.onBench());
    facts.put("rear foot on a bench", Truth::onBench);
    facts.put("fewer than 27 frames a second", t -> t.fps() < FEW_FPS);
    facts.put("27 to 40 frames a second", t -> t.fps() >= FEW_FPS && t.fps() <= MANY_FPS);
    facts.put("more than 40 frames a second", t -> t.fps() > MANY_FPS);
    facts.put("camera held in the hand", Truth::shaken);
    facts.forEach(
        (name, fact) -> {
          Accuracy group = all.where(fact);
          if (!group.clips().isEmpty()) {
            List<String> cells = new ArrayList<>();
            cells.add(name);
            cells.add(String.valueOf(group.clips().size()));
            cells.add(String.valueOf(group.trueReps()));
            for (Scored scored : COMPARED) {
              cells.add(
                  group
                      .spread(scored)
                      .map(s -> plain(scored, s.meanAbsolute()))
                      .orElse(Markdown.NONE));
            }
            cells.add(group.coverage().map(Markdown::percent).orElse(Markdown.NONE));
            page.add(Markdown.row(cells.toArray(String[]::new)));
          }
        });
  }

  private void outside(List<String> page) {
    page.add("");
    page.add("## Clips outside a goal");
    page.add("");
    int before = page.size();
    for (ClipScore clip : all.clips()) {
      Accuracy one = new Accuracy(List.of(clip));
      List<String> beyond = new ArrayList<>();
      for (Scored scored : Scored.values()) {
        Optional<Spread> spread = one.spread(scored);
        if (spread.isPresent()
            && scored.goal().isPresent()
            && spread.get().meanAbsolute() > scored.goal().get()) {
          Spread s = spread.get();
          beyond.add(
              String.format(
                  Locale.ROOT,
                  "%s %s%s (goal %s, bias %s, %s inside ±)",
                  scored.words(),
                  plain(scored, s.meanAbsolute()),
                  scored.unit().equals("°") ? "°" : " " + scored.unit(),
                  goal(scored),
                  signed(scored, s.bias()),
                  Markdown.percent(s.coverage())));
        }
      }
      if (!beyond.isEmpty()) {
        page.add(
            "- "
                + clip.truth().clip()
                + " ("
                + facts(clip.truth())
                + "): "
                + String.join("; ", beyond)
                + ".");
      }
    }
    if (page.size() == before) {
      page.add("None.");
    } else {
      page.add("");
      page.add(
          "A bias as large as the error itself is the body's or the view's, the same in every rep"
              + " of the clip: what compares reps of one clip does not suffer from it.");
    }
  }

  private static String facts(Truth truth) {
    return Stream.of(
            truth.frontLegNear() ? "front leg near" : "front leg far",
            truth.onBench() ? "bench" : "floor",
            String.format(Locale.ROOT, "%.0f frames a second", truth.fps()),
            String.format(Locale.ROOT, "%.0f° off the side", truth.yawDeg()),
            truth.shaken() ? "camera in the hand" : "")
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private void published(List<String> page) {
    page.add("");
    page.add("## Beside published accuracies");
    page.add("");
    page.add(
        "Other people's figures are of real people against marker systems or instruments; ours"
            + " above are of the clips named above, and are no better a promise than those clips"
            + " are like yours.");
    page.add("");
    page.add(Markdown.row("what", "published", "here", "source"));
    page.add("| --- | --- | --- | --- |");
    page.add(
        Markdown.row(
            "knee angle in gait, two-dimensional pose model",
            "mean absolute error 5.6°",
            "knee flexion at the bottom "
                + told(
                    Scored.KNEE_FLEXION, s -> plain(Scored.KNEE_FLEXION, s.meanAbsolute()) + "°"),
            "Stenum 2021, PLoS Comput Biol 17:e1008935"));
    page.add(
        Markdown.row(
            "ankle and hip angle in gait, two-dimensional pose model",
            "mean absolute error 7.4° and 4.0°",
            "shin "
                + told(Scored.SHIN, s -> plain(Scored.SHIN, s.meanAbsolute()) + "°")
                + ", thigh "
                + told(Scored.THIGH, s -> plain(Scored.THIGH, s.meanAbsolute()) + "°")
                + " (segments, not joints)",
            "Stenum 2021"));
    page.add(
        Markdown.row(
            "knee angle in squats, side view",
            "−2.3 ± 6.4°; tight clothing 1.6 ± 3.5°",
            told(
                Scored.KNEE_FLEXION,
                s ->
                    signed(Scored.KNEE_FLEXION, s.bias())
                        + " ± "
                        + plain(Scored.KNEE_FLEXION, s.sd())
                        + "°"),
            "Cosoli et al. 2026"));
    page.add(
        Markdown.row(
            "shin against the vertical by inclinometer, lunge test",
            "standard error 1.3–1.4°, smallest real change 3.7–3.8°",
            "standard deviation of the error "
                + told(
                    Scored.SHIN,
                    s ->
                        plain(Scored.SHIN, s.sd())
                            + "°, smallest real change "
                            // MDC95 = 1.96·√2·SEM
                            + plain(Scored.SHIN, 1.96 * Math.sqrt(2) * s.sd())
                            + "°"),
            "Konor 2012, IJSPT 7:279–287"));
    page.add(
        Markdown.row(
            "distance by tape, lunge test",
            "standard error 0.4–0.6 cm, smallest real change 1.1–1.5 cm",
            "knee past toe, standard deviation of the error "
                + told(
                    Scored.KNEE_PAST_TOE,
                    s ->
                        plain(Scored.KNEE_PAST_TOE, s.sd())
                            + " cm, smallest real change "
                            + plain(Scored.KNEE_PAST_TOE, 1.96 * Math.sqrt(2) * s.sd())
                            + " cm"),
            "Konor 2012"));
  }

  private String told(Scored scored, Function<Spread, String> words) {
    return all.spread(scored).map(words).orElse("not measured");
  }

  private String reps() {
    return "Reps: "
        + all.matchedReps()
        + " of "
        + all.trueReps()
        + " found, "
        + all.falseReps()
        + " false.";
  }

  private String flags() {
    return "Flags: "
        + all.flagsFound()
        + " found, "
        + all.flagsMissed()
        + " missed, "
        + all.flagsFalse()
        + " false on "
        + count((int) all.cleanReps(), "clean rep")
        + ".";
  }

  private static String count(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }

  private static String goal(Scored scored) {
    return scored.goal().map(g -> "≤ " + plain(scored, g)).orElse(Markdown.NONE);
  }

  private static String plain(Scored scored, double value) {
    return String.format(Locale.ROOT, "%." + scored.places() + "f", value);
  }

  private static String signed(Scored scored, double value) {
    return String.format(Locale.ROOT, "%+." + scored.places() + "f", value);
  }
}
