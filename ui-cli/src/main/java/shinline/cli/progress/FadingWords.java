package shinline.cli.progress;

import java.util.ArrayList;
import java.util.List;
import shinline.cli.report.Figure;
import shinline.cli.words.Words;
import shinline.metrics.progress.Fading;
import shinline.metrics.progress.Followed;

/** What fades from the first reps of sets to their last, in words. */
final class FadingWords {
  private FadingWords() {}

  static List<String> of(Fading day) {
    List<String> said = new ArrayList<>();
    if (day.firstHalf().judged() + day.lastHalf().judged() > 0) {
      said.add(Words.say("progress.fading.clean", half(day.firstHalf()), half(day.lastHalf())));
    }
    day.speedLossPct().ifPresent(l -> said.add(Words.say("progress.fading.speed", l)));
    for (Followed followed : List.of(Followed.SHIN, Followed.DEPTH, Followed.TRUNK)) {
      Double by = day.drift().get(followed);
      if (by != null) {
        said.add(
            Words.say(
                "progress.fading.drift",
                Words.of(followed, "name"),
                (by > 0 ? "+" : "") + Figure.number(by, 1)));
      }
    }
    return said;
  }

  static String half(Fading.Half half) {
    return Words.say("progress.fading.half", half.clean(), half.judged());
  }
}
