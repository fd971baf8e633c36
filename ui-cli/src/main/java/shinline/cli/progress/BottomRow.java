package shinline.cli.progress;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.report.Markup;
import shinline.cli.words.Words;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.FollowedSet;
import shinline.metrics.progress.LegProgress;
import shinline.metrics.training.RecordedSet;

/** Pictures of the bottom over the weeks, one a session, a row a leg. */
final class BottomRow {
  /** As many as stand side by side; of more the first, the last and some evenly between. */
  private static final int MOST = 8;

  private final Markup page;
  private final AthleteWeeks weeks;
  private final ProgressWords words;

  BottomRow(Markup page, AthleteWeeks weeks, ProgressWords words) {
    this.page = page;
    this.weeks = weeks;
    this.words = words;
  }

  void write() {
    page.open("section", "class", "bottoms", "aria-labelledby", "bottoms");
    page.leaf("h2", Words.say("progress.bottoms"), "id", "bottoms");
    boolean any = false;
    for (LegProgress leg : weeks.progress().legs()) {
      any |= row(leg);
    }
    if (!any) {
      page.leaf("p", Words.say("progress.bottoms.none"), "class", "note");
    }
    page.end();
  }

  private boolean row(LegProgress leg) {
    Map<LocalDate, FollowedSet> shown = new LinkedHashMap<>();
    for (FollowedSet set : leg.workSets()) {
      if (weeks.bottoms().containsKey(set.set().id())) {
        shown.putIfAbsent(set.set().date(), set);
      }
    }
    List<FollowedSet> chosen = spread(List.copyOf(shown.values()));
    if (chosen.isEmpty()) {
      return false;
    }
    page.leaf("h3", ProgressWords.leg(leg.leg()));
    page.open("div", "class", "weeks");
    boolean any = false;
    for (FollowedSet set : chosen) {
      any |= picture(leg, set);
    }
    page.close().line();
    return any;
  }

  static <T> List<T> spread(List<T> all) {
    return all.size() <= MOST
        ? all
        : java.util.stream.IntStream.range(0, MOST)
            .mapToObj(i -> all.get(Math.round(i * (all.size() - 1) / (MOST - 1f))))
            .toList();
  }

  private boolean picture(LegProgress leg, FollowedSet followed) {
    RecordedSet set = followed.set();
    Path file = weeks.bottoms().get(set.id());
    Optional<byte[]> jpeg = file == null ? Optional.empty() : SmallPicture.of(file);
    if (jpeg.isEmpty()) {
      return false;
    }
    page.open("figure");
    page.picture(
        jpeg.get(), Words.say("progress.bottoms.alt", set.date(), ProgressWords.leg(leg.leg())));
    page.open("figcaption");
    page.leaf("b", set.date().toString());
    set.entry().load().ifPresent(l -> page.leaf("span", l.mass().toString()));
    for (Followed measure : List.of(Followed.SHIN, Followed.DEPTH)) {
      Optional.ofNullable(followed.amounts().get(measure))
          .ifPresent(
              a ->
                  page.leaf(
                      "span",
                      Words.say(
                          "progress.bottoms.value",
                          Words.of(measure, "short"),
                          words.quantity(measure, a.value()))));
    }
    page.close().close();
    return true;
  }
}
