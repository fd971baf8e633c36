package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.words.Words;

/**
 * Errors and coverage over a grid of cameras: how steeply the phone looks down, and how far it
 * stands off the side.
 */
final class CameraTable {
  private static final Scored[] SHOWN = {
    Scored.SHIN, Scored.KNEE_PAST_TOE, Scored.TRUNK_LEAN, Scored.THIGH, Scored.KNEE_FLEXION
  };

  /** Upper ends of the bands, degrees; the last one holds all above. */
  private static final double[] PITCHES = {4, 10, 16, 90};

  private static final double[] YAWS = {4, 12, 20, 90};

  private final Accuracy all;

  /**
   * @param all clips whose truth tells how the camera looked; others are left out
   */
  CameraTable(Accuracy all) {
    this.all = all.where(truth -> truth.pitchDeg().isPresent());
  }

  /** Nothing where no clip tells it. */
  List<String> section() {
    if (all.clips().isEmpty()) {
      return List.of();
    }
    List<String> page = new ArrayList<>();
    page.add("");
    page.add("## " + Words.say("accuracy.cameras"));
    page.add("");
    page.add(
        Words.say(
            "accuracy.cameras.how",
            all.clips().size(),
            all.clips().stream().map(c -> c.truth().athlete()).distinct().count()));
    page.add("");
    List<String> head = new ArrayList<>(Words.lines("accuracy.cameras.head"));
    for (Scored scored : SHOWN) {
      head.add(scored.words() + ", " + scored.unit());
    }
    page.add(Markdown.row(head.toArray(String[]::new)));
    page.add(Markdown.rule(1, head.size() - 1));
    double pitchFrom = 0;
    for (double pitch : PITCHES) {
      double yawFrom = 0;
      for (double yaw : YAWS) {
        row(pitchFrom, pitch, yawFrom, yaw).ifPresent(page::add);
        yawFrom = yaw;
      }
      pitchFrom = pitch;
    }
    page.add(row(Words.say("accuracy.cameras.all"), "", all));
    return page;
  }

  private Optional<String> row(double pitchFrom, double pitchTo, double yawFrom, double yawTo) {
    Accuracy cell =
        all.where(
            t ->
                within(t.pitchDeg().orElse(0), pitchFrom, pitchTo)
                    && within(t.yawDeg(), yawFrom, yawTo));
    return cell.clips().isEmpty()
        ? Optional.empty()
        : Optional.of(row(band(pitchFrom, pitchTo), band(yawFrom, yawTo), cell));
  }

  private static String row(String pitch, String yaw, Accuracy cell) {
    List<String> cells = new ArrayList<>(List.of(pitch, yaw));
    cells.add(cell.matchedReps() + " / " + cell.trueReps());
    for (Scored scored : SHOWN) {
      cells.add(
          cell.spread(scored)
              .map(s -> scored.told(s.meanAbsolute()) + " (" + Markdown.percent(s.coverage()) + ")")
              .orElse(Markdown.NONE));
    }
    return Markdown.row(cells.toArray(String[]::new));
  }

  /** Up or down, ahead or behind: the size counts. */
  private static boolean within(double deg, double from, double to) {
    return Math.abs(deg) >= from && Math.abs(deg) < to;
  }

  private static String band(double from, double to) {
    return to > 45
        ? Words.say("accuracy.cameras.from", from)
        : Words.say("accuracy.cameras.band", from, to);
  }
}
