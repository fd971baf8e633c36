package shinline.cli.report;

import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shinline.cli.picture.RepPicture;
import shinline.cli.picture.RepPictures;
import shinline.cli.text.FlagWords;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.WorkOn;

/** The frames that show a fault, or, in a clean set, the bottom of its first and last rep. */
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

  /** A flag with the rep it belongs to. */
  private record Shown(int rep, Flag flag) {}

  void write(SetResult set) {
    List<FlagKind> first = WorkOn.of(set.reps()).stream().map(WorkOn::kind).toList();
    List<Shown> flags =
        set.reps().stream()
            .flatMap(r -> r.flags().stream().map(f -> new Shown(r.rep(), f)))
            .sorted(Comparator.comparingInt(s -> place(first, s.flag().kind())))
            .toList();
    page.open("section", "aria-labelledby", "frames");
    if (flags.isEmpty()) {
      bottoms(set.reps());
    } else {
      page.leaf("h2", Words.say("report.pictures"), "id", "frames");
      // One frame of each fault tells the story; the same fault again is one tap away.
      List<Shown> again = new ArrayList<>(flags);
      List<Shown> story = new ArrayList<>();
      for (Shown shown : flags) {
        if (story.stream().noneMatch(s -> s.flag().kind() == shown.flag().kind())) {
          story.add(surest(shown.flag().kind(), flags));
        }
      }
      again.removeAll(story);
      page.open("div", "class", "figures");
      story.forEach(shown -> flagged(shown, Cue.sentence(shown.flag())));
      page.close();
      if (!again.isEmpty()) {
        page.open("details");
        page.leaf("summary", Words.say("report.pictures.again", again.size()));
        page.open("div", "class", "figures");
        again.forEach(shown -> flagged(shown, ""));
        page.close().close();
      }
    }
    page.end();
  }

  /** The two things to work on come first, in their order; the rest as it happened. */
  private static int place(List<FlagKind> first, FlagKind kind) {
    int at = first.indexOf(kind);
    return at < 0 ? first.size() : at;
  }

  private static Shown surest(FlagKind kind, List<Shown> flags) {
    return flags.stream()
        .filter(s -> s.flag().kind() == kind)
        .max(Comparator.comparingDouble(s -> s.flag().confidence()))
        .orElseThrow();
  }

  private void flagged(Shown shown, String cue) {
    Flag flag = shown.flag();
    page.open("figure");
    image(
        pictures
            .flag(shown.rep(), flag.kind())
            .or(
                () ->
                    pictures
                        .bottom(shown.rep())
                        .filter(p -> flag.kind().picture().isSeenAtBottom())));
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
            : java.util.stream.Stream.of(reps.get(0), reps.get(reps.size() - 1))
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
    page.empty(
        "img",
        "src",
        "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(picture.jpeg()),
        "width",
        Integer.toString(picture.widthPx()),
        "height",
        Integer.toString(picture.heightPx()),
        "alt",
        picture.altText());
  }
}
