package shinline.cli.doctor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.doctor.Health.State;
import shinline.cli.outcome.CoachException;
import shinline.cli.place.LibraryPlace;
import shinline.cli.text.ModelWords;
import shinline.cli.text.Typography;
import shinline.cli.words.Words;
import shinline.vision.clip.FileDigest;
import shinline.vision.library.VideoLibraries;
import shinline.vision.pose.ModelFile;
import shinline.vision.pose.PoseModel;

/** Looks at the computer part by part. What needs a part that is missing is not tried. */
public final class Doctor {
  /** The clip whose time is told. */
  private static final double CLIP_S = 30;

  private static final double FPS = 30;
  private static final int SHORT_DIGEST = 16;

  private final Surroundings surroundings;
  private final Machine machine = Machine.here();

  /**
   * What of the computer is the program's to use.
   *
   * @param place of the unpacked libraries
   * @param signs that the terminal can show
   */
  public record Surroundings(Path temporary, LibraryPlace place, Path record, Typography signs) {}

  public Doctor(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** Every part, in the order of {@link Part}, but for those that could not be tried. */
  public List<Health> examine() {
    List<Health> found = new ArrayList<>();
    found.add(machine.java());
    found.add(machine.processor());
    found.add(machine.memory());
    found.add(new WritableFolder(Part.TEMPORARY_FOLDER, surroundings.temporary()).there());
    Optional<Health> unprepared = preparing();
    unprepared.ifPresent(found::add);
    if (unprepared.isEmpty()) {
      Health libraries = libraries();
      found.add(libraries);
      Health model = model();
      found.add(model);
      found.add(DrawnWords.look());
      if (libraries.state() != State.BAD && model.state() != State.BAD) {
        found.add(speed());
      }
    }
    found.add(new WritableFolder(Part.RECORD, surroundings.record()).orToBeMade());
    found.add(terminal());
    found.sort((a, b) -> a.part().compareTo(b.part()));
    return found;
  }

  private Optional<Health> preparing() {
    try {
      surroundings.place().prepare();
      return Optional.empty();
    } catch (CoachException e) {
      return Optional.of(Health.bad(Part.CACHE, String.valueOf(e.getMessage())));
    }
  }

  private static Health libraries() {
    try {
      VideoLibraries loaded = VideoLibraries.load();
      return Health.good(
          Part.LIBRARIES, Words.say("doctor.libraries", loaded.ffmpeg(), loaded.openCv()));
    } catch (LinkageError | RuntimeException e) {
      return Health.bad(
          Part.LIBRARIES, Words.say("doctor.libraries.none", String.valueOf(e.getMessage())));
    }
  }

  private static Health model() {
    Optional<FileDigest> digest = ModelFile.digest(PoseModel.HEAVY);
    return digest
        .map(
            d ->
                Health.good(
                    Part.MODEL,
                    Words.say(
                        "doctor.model",
                        ModelWords.of(PoseModel.HEAVY),
                        d.sha256().substring(0, SHORT_DIGEST))))
        .orElseGet(() -> Health.bad(Part.MODEL, Words.say("doctor.model.none")));
  }

  private static Health speed() {
    try {
      return SpeedTrial.run()
          .map(Doctor::speed)
          .orElseGet(() -> Health.bad(Part.SPEED, Words.say("doctor.speed.none")));
    } catch (IOException | LinkageError | RuntimeException e) {
      return Health.bad(Part.SPEED, Words.say("doctor.speed.none"));
    }
  }

  static Health speed(ClipTime time) {
    double seconds = time.seconds(CLIP_S, FPS);
    String words =
        Words.say("doctor.speed", CLIP_S, seconds, time.plusMinus(CLIP_S, FPS), time.lookS());
    return seconds > 2 * CLIP_S
        ? Health.poor(Part.SPEED, words + Words.say("doctor.speed.slow"))
        : Health.good(Part.SPEED, words);
  }

  private Health terminal() {
    return surroundings.signs() == Typography.RICH
        ? Health.good(Part.TERMINAL, Words.say("doctor.terminal"))
        : Health.poor(Part.TERMINAL, Words.say("doctor.terminal.plain"));
  }
}
