package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import shinline.cli.outcome.ClipReport.Footage;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.correction.OffsetFit;

/**
 * How good the offsets of the joint centres are on clips they were not fitted on: they are fitted
 * again without some of the clips, and those are measured with them.
 */
final class CrossValidation {
  private static final Scored[] SHOWN = {
    Scored.SHIN, Scored.TRUNK_LEAN, Scored.THIGH, Scored.KNEE_FLEXION, Scored.KNEE_PAST_TOE
  };

  private record Item(
      ClipScore shipped, Footage footage, CleanTrack landmarks, CleanTrack centres) {
    Truth truth() {
      return shipped.truth();
    }
  }

  private final List<Item> items = new ArrayList<>();

  /**
   * Takes a clip in, if its truth tells where the joint centres are in the picture.
   *
   * @param shipped its score with the offsets as they are shipped
   */
  void add(ClipScore shipped, Footage footage) {
    Truth truth = shipped.truth();
    Optional<SetAnalysis.Landmarks> found =
        SetAnalysis.landmarks(footage.track(), footage.request(), footage.seen());
    if (found.isEmpty()) {
      return;
    }
    SetAnalysis.Landmarks landmarks = found.get();
    TrueTrack.of(truth, footage.track(), landmarks.track())
        .ifPresent(
            centres ->
                items.add(
                    new Item(
                        shipped,
                        footage,
                        landmarks.track().toSagittalPlane(landmarks.view()),
                        centres.toSagittalPlane(landmarks.view()))));
  }

  /** The part of the page; nothing when too few clips tell their joint centres. */
  List<String> section() {
    if (items.size() < 3) {
      return List.of();
    }
    List<String> page = new ArrayList<>();
    page.add("");
    page.add("## Offsets of the joint centres on clips they were not fitted on");
    page.add("");
    page.add(
        "The offsets are fitted again without some of these clips, which are then measured with"
            + " them. Mean absolute error at the bottom, and the share of true values inside the"
            + " ±. Athletes count as the same by their height, pictures as of one kind when their"
            + " names begin alike.");
    page.add("");
    List<String> head = new ArrayList<>(List.of("left out of the fit", "fits"));
    for (Scored scored : SHOWN) {
      head.add(scored.words() + ", " + scored.unit());
    }
    head.add("inside ±");
    page.add(Markdown.row(head.toArray(String[]::new)));
    page.add(Markdown.rule(1, SHOWN.length + 2));
    page.add(
        row("nothing: as shipped", 0, new Accuracy(items.stream().map(Item::shipped).toList())));
    leaveOut(page, "one clip", t -> t.clip());
    leaveOut(page, "one athlete", t -> String.format(Locale.ROOT, "%.3f", t.athleteHeightM()));
    leaveOut(page, "one kind of picture", t -> t.clip().replaceAll("[^A-Za-z].*", ""));
    offsets(page);
    return page;
  }

  private void leaveOut(List<String> page, String what, Function<Truth, String> group) {
    List<String> groups = items.stream().map(i -> group.apply(i.truth())).distinct().toList();
    if (groups.size() < 2) {
      return;
    }
    List<Optional<CorrectionTable>> fits = new ArrayList<>();
    for (String out : groups) {
      fits.add(fit(items.stream().filter(i -> !group.apply(i.truth()).equals(out)).toList()));
    }
    page.add(
        row(
            what,
            groups.size(),
            measured(item -> fits.get(groups.indexOf(group.apply(item.truth()))))));
  }

  private static Optional<CorrectionTable> fit(List<Item> of) {
    if (of.isEmpty()) {
      return Optional.empty();
    }
    OffsetFit fit = new OffsetFit();
    of.forEach(i -> fit.add(i.landmarks(), i.centres()));
    return Optional.of(fit.table());
  }

  private Accuracy measured(Function<Item, Optional<CorrectionTable>> offsets) {
    List<ClipScore> scores = new ArrayList<>();
    for (Item item : items) {
      offsets
          .apply(item)
          .map(
              table ->
                  SetAnalysis.of(
                          item.footage().track(),
                          item.footage().request(),
                          item.footage().seen(),
                          table)
                      .fold(
                          measured -> ClipScore.of(item.truth(), measured.set()),
                          not -> ClipScore.nothing(item.truth(), not.reason())))
          .ifPresent(scores::add);
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
    return Markdown.row(cells.toArray(String[]::new));
  }

  private void offsets(List<String> page) {
    Optional<CorrectionTable> here = fit(items);
    if (here.isEmpty()) {
      return;
    }
    page.add("");
    page.add(
        "The offsets as shipped, and as fitted on all of these clips: hundredths of trunk, thigh"
            + " and shank together, along the segment / ahead of it.");
    page.add("");
    page.add(Markdown.row("point", "shipped", "fitted here"));
    page.add(Markdown.rule(1, 2));
    pair(page, "mid-hip", here.get(), CorrectionTable::hip);
    pair(page, "mid-shoulder", here.get(), CorrectionTable::shoulder);
    pair(page, "front hip", here.get(), CorrectionTable::frontHip);
    pair(page, "front hip, for each radian of bend", here.get(), CorrectionTable::frontHipBend);
    pair(page, "front knee", here.get(), CorrectionTable::frontKnee);
    pair(page, "front ankle", here.get(), CorrectionTable::frontAnkle);
    pair(page, "front toe", here.get(), CorrectionTable::frontToe);
    pair(page, "front heel", here.get(), CorrectionTable::frontHeel);
    pair(page, "rear knee", here.get(), CorrectionTable::rearKnee);
  }

  private static void pair(
      List<String> page, String point, CorrectionTable here, Function<CorrectionTable, Offset> of) {
    page.add(Markdown.row(point, words(of.apply(CorrectionTable.DEFAULT)), words(of.apply(here))));
  }

  private static String words(Offset offset) {
    return String.format(Locale.ROOT, "%+.3f / %+.3f", 100 * offset.along(), 100 * offset.ahead());
  }
}
