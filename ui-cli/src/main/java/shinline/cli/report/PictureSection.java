package shinline.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.picture.Bottoms;
import shinline.cli.picture.Moment;
import shinline.cli.picture.RepPicture;
import shinline.cli.picture.RepPictures;
import shinline.cli.picture.Story;
import shinline.cli.text.FlagWords;
import shinline.cli.text.VerdictWords;
import shinline.cli.words.Words;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/**
 * The moments that show a fault, each with what was before and after; the best rep beside the one
 * to mend; in a clean set, the bottom of its first and last rep.
 */
final class PictureSection {
  /** Keeps the page below 1.5 MB: a picture takes a third more as text. */
  private static final int PICTURE_BYTES = 800_000;

  private final Markup page;
  private final RepPictures pictures;
  private int bytesLeft = PICTURE_BYTES;

  PictureSection(Markup page, RepPictures pictures) {
    this.page = page;
    this.pictures = pictures;
  }

  void write(SetResult set) {
    Story story = Story.of(set);
    page.open("section", "aria-labelledby", "frames");
    Bottoms bottoms = Bottoms.of(set.reps(), pictures);
    if (story.told().isEmpty() && bottoms.worst().isEmpty()) {
      bottoms(set.reps());
      page.end();
      return;
    }
    page.leaf(
        "h2",
        Words.say(story.told().isEmpty() ? "report.pictures.pair" : "report.pictures"),
        "id",
        "frames");
    page.open("div", "class", "figures story");
    story.told().forEach(shown -> flagged(shown, Cue.sentence(shown.flag())));
    page.close();
    pair(set, bottoms, story);
    again(story.again());
    page.end();
  }

  /** The best rep and the one to mend, so that the athlete sees what to aim at. */
  private void pair(SetResult set, Bottoms bottoms, Story story) {
    if (bottoms.best().isEmpty() || bottoms.worst().isEmpty()) {
      return;
    }
    if (!story.told().isEmpty()) {
      page.leaf("h3", Words.say("report.pictures.pair"), "class", "pair");
    }
    page.open("div", "class", "figures pair");
    atBottom(set, bottoms.best().get(), "report.picture.best");
    atBottom(set, bottoms.worst().get(), "report.picture.mend");
    page.close();
  }

  private void atBottom(SetResult set, RepPicture picture, String heading) {
    RepResult rep = set.reps().get(picture.rep() - 1);
    page.open("figure");
    image(Optional.of(picture));
    page.open("figcaption");
    page.leaf("b", Words.say(heading, rep.rep()), "class", "what");
    page.leaf("span", standing(rep), "class", "numbers");
    page.close().end();
  }

  /** The verdict, and the faults it has. */
  private static String standing(RepResult rep) {
    return Stream.concat(
            VerdictWords.of(rep).stream(),
            rep.flags().stream().map(f -> FlagWords.of(f.kind())).distinct())
        .collect(
            Collectors.collectingAndThen(
                Collectors.joining(", "),
                words -> words.isEmpty() ? Words.say("report.picture.no-fault") : words));
  }

  private void again(List<Story.Shown> again) {
    if (again.isEmpty()) {
      return;
    }
    page.open("details");
    page.leaf("summary", Words.say("report.pictures.again", again.size()));
    page.open("div", "class", "figures");
    again.forEach(shown -> flagged(shown, ""));
    page.close().close();
  }

  private void flagged(Story.Shown shown, String cue) {
    Flag flag = shown.flag();
    page.open("figure");
    Optional<RepPicture> at =
        pictures
            .flag(shown.rep(), flag.kind())
            .or(
                () ->
                    pictures
                        .bottom(shown.rep())
                        .filter(p -> flag.kind().picture().isSeenAtBottom()));
    Optional<RepPicture> before = pictures.moment(shown.rep(), flag.kind(), Moment.When.BEFORE);
    Optional<RepPicture> after = pictures.moment(shown.rep(), flag.kind(), Moment.When.AFTER);
    if (!cue.isEmpty() && before.isPresent() && after.isPresent()) {
      page.open("div", "class", "moment");
      image(before);
      image(at);
      image(after);
      page.close();
    } else {
      image(at);
    }
    page.open("figcaption");
    page.leaf(
        "b",
        Words.say("report.picture.fault", shown.rep(), FlagWords.of(flag.kind())),
        "class",
        "what");
    page.open("span", "class", "numbers");
    VerdictSection.against(page, flag);
    page.close();
    if (!cue.isEmpty()) {
      page.leaf("span", cue, "class", "cue");
    }
    page.leaf(
        "span",
        Words.say("report.picture.when", Figure.number(flag.atS(), 1), flag.frame()),
        "class",
        "when");
    page.close().end();
  }

  private void bottoms(List<RepResult> reps) {
    List<RepPicture> shown =
        reps.isEmpty()
            ? List.of()
            : Stream.of(reps.get(0), reps.get(reps.size() - 1))
                .map(RepResult::rep)
                .distinct()
                .flatMap(r -> pictures.bottom(r).stream())
                .toList();
    if (shown.isEmpty()) {
      page.leaf("h2", Words.say("report.pictures.none"), "id", "frames");
      return;
    }
    page.leaf("h2", Words.say("report.pictures.bottoms"), "id", "frames");
    page.open("div", "class", "figures");
    for (RepPicture picture : shown) {
      page.open("figure");
      image(Optional.of(picture));
      page.open("figcaption")
          .leaf("b", Words.say("report.rep", picture.rep()), "class", "what")
          .close();
      page.end();
    }
    page.close();
  }

  private void image(Optional<RepPicture> found) {
    if (found.isEmpty() || found.get().jpeg().length > bytesLeft) {
      return;
    }
    RepPicture picture = found.get();
    bytesLeft -= picture.jpeg().length;
    page.picture(
        picture.jpeg(),
        picture.altText(),
        "width",
        Integer.toString(picture.widthPx()),
        "height",
        Integer.toString(picture.heightPx()));
  }
}
