package shinline.cli.demo;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.track.Side;
import shinline.metrics.training.Pain;

/** The folder of the last day: the clips of that evening, and the coach's sheet. */
final class LastDay {
  private static final LocalTime FIRST_CLIP = LocalTime.of(17, 40);
  private static final int MINUTES_BETWEEN = 6;

  private final Path folder;
  private final LocalDate day;
  private final ZoneId zone;

  LastDay(Path folder, LocalDate day, ZoneId zone) {
    this.folder = folder;
    this.day = day;
    this.zone = zone;
  }

  Path folder() {
    return folder;
  }

  Path sheet() {
    return folder.resolve("sheet.csv");
  }

  /** Writes the clips and the sheet with its athletes. */
  void write() {
    try {
      Files.createDirectories(folder);
      List<String> rows = new ArrayList<>();
      rows.add(
          "clip,athlete,leg,load,load_kind,done_reps,clean_reps,pain,step,set,asked_sets,"
              + "asked_reps,target,tempo,date,note");
      int clips = 0;
      for (Story story : Squad.all()) {
        if (story.came()) {
          clips += rows(story, rows, clips);
        }
      }
      csv(sheet(), rows);
      List<String> athletes = new ArrayList<>(List.of("athlete,height"));
      Squad.all().forEach(s -> athletes.add(s.name() + "," + s.heightCm() + "cm"));
      csv(folder.resolve("sheet-athletes.csv"), athletes);
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("demo.unwritable", folder, String.valueOf(e.getMessage())));
    }
  }

  /** How many clips went into the folder. */
  private int rows(Story story, List<String> rows, int clipsBefore) {
    Optional<String> clip = story.clip().map(c -> story.shortName() + "-right.mp4");
    Instant filmed =
        day.atTime(FIRST_CLIP)
            .plusMinutes((long) MINUTES_BETWEEN * clipsBefore)
            .atZone(zone)
            .toInstant();
    story.clip().ifPresent(c -> c.copy(folder, clip.orElseThrow(), filmed));
    for (Side leg : Side.values()) {
      for (int set = 1; set <= Story.SETS; set++) {
        boolean filmedSet = leg == Side.RIGHT && set == 1 && clip.isPresent();
        rows.add(row(story, leg, set, filmedSet ? clip : Optional.empty()));
      }
    }
    return clip.isPresent() ? 1 : 0;
  }

  private String row(Story story, Side side, int set, Optional<String> clip) {
    Story.Leg leg = story.of(side);
    int load = leg.loadKg().get(Story.WEEKS - 1);
    int notClean = set == Story.SETS ? leg.notClean().get(Story.WEEKS - 1) : 0;
    boolean byEye = clip.isEmpty();
    return String.join(
        ",",
        clip.orElse(""),
        story.name(),
        side.name().toLowerCase(Locale.ROOT),
        load == 0 ? "" : String.valueOf(load),
        story.kind() == LoadKind.NONE ? "" : story.kind().word(),
        byEye ? String.valueOf(story.reps()) : "",
        byEye ? String.valueOf(story.reps() - notClean) : "",
        story.pain() == Pain.YES ? "yes" : "no",
        story.step(),
        String.valueOf(set),
        String.valueOf(Story.SETS),
        String.valueOf(story.reps()),
        story.target(),
        story.tempo(),
        day.toString(),
        Words.say("demo.note"));
  }

  private static void csv(Path file, List<String> rows) throws IOException {
    try (Writer writer = Files.newBufferedWriter(file)) {
      for (String row : rows) {
        writer.write(row + "\r\n");
      }
    }
  }
}
