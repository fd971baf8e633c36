package shinline.cli.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.crossing.LooksCrossing;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.text.PhotoWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.ClipObservations.Disc;
import shinline.metrics.analysis.PostureAnalysis;
import shinline.vision.clip.FileDigest;
import shinline.vision.library.VideoLibraries;
import shinline.vision.observation.DiscConsensus;
import shinline.vision.observation.PoseShape;
import shinline.vision.observation.RoomObserver;
import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.PoseTracker;
import shinline.vision.pose.StillLooks;
import shinline.vision.scene.Similarity;
import shinline.vision.still.Still;
import shinline.vision.still.StillReader;

/**
 * Opens a still picture, looks at the athlete in many ways and measures the posture. The models are
 * loaded for the first picture that can be opened, and kept for the next ones until closed.
 */
public final class PhotoCheck implements PhotoChecker, AutoCloseable {
  private Optional<LoadedModels> models = Optional.empty();

  /** The models of one size. */
  private record LoadedModels(PhotoOptions options, PersonDetector detector, PoseEstimator pose) {
    static LoadedModels load(PhotoOptions options) {
      PersonDetector detector = PersonDetector.open();
      try {
        return new LoadedModels(options, detector, PoseTracker.open(options.model(), detector));
      } catch (RuntimeException | Error e) {
        detector.close();
        throw e;
      }
    }

    void close() {
      pose.close();
      detector.close();
    }
  }

  @Override
  public PhotoReport check(Path photo, PhotoOptions options) {
    VideoLibraries.load();
    String name = String.valueOf(photo.getFileName());
    return new StillReader(options.mostPixels())
        .open(photo)
        .fold(
            opened -> check(opened.still(), photo, options),
            refused ->
                new PhotoReport.Unreadable(
                    name, PhotoWords.reason(refused.why()), PhotoWords.advice(refused.why())));
  }

  private PhotoReport check(Still opened, Path photo, PhotoOptions options) {
    Still still = opened;
    try {
      StillLooks looks = new StillLooks(models(options).pose());
      StillLooks.Seen seen = looks.at(still.image());
      List<String> warnings = new ArrayList<>();
      int turns = missingTurns(seen);
      if (turns != 0) {
        still = still.turnedMore(turns);
        seen = looks.at(still.image());
        warnings.add(
            Words.say(turns == 2 ? "photo.note.upside-down" : "photo.note.lying", 90 * turns));
      }
      if (seen.company() == StillLooks.Company.OTHERS) {
        warnings.add(Words.say("photo.note.company"));
      }
      return report(still, seen, photo, options, warnings);
    } catch (IOException e) {
      return new PhotoReport.Unreadable(
          String.valueOf(photo.getFileName()),
          Words.say("photo.gone.reason"),
          Words.say("clip.gone.advice"));
    } finally {
      still.close();
    }
  }

  private LoadedModels models(PhotoOptions options) {
    if (models.isPresent() && models.get().options().model() != options.model()) {
      close();
    }
    LoadedModels loaded = models.orElseGet(() -> LoadedModels.load(options));
    models = Optional.of(loaded);
    return loaded;
  }

  /** What most looks say: nobody trains lying or on the head. */
  private static int missingTurns(StillLooks.Seen seen) {
    int[] votes = new int[4];
    for (PoseSighting look : seen.looks()) {
      if (look instanceof PoseSighting.Found found) {
        votes[PoseShape.missingQuarterTurns(found)]++;
      }
    }
    for (int turns = 1; turns < votes.length; turns++) {
      if (4 * votes[turns] >= 3 * seen.looks().size() && votes[turns] > 0) {
        return turns;
      }
    }
    return 0;
  }

  private static PhotoReport report(
      Still still, StillLooks.Seen seen, Path photo, PhotoOptions options, List<String> warnings)
      throws IOException {
    ClipFacts facts =
        new ClipFacts(
            String.valueOf(photo.getFileName()),
            FileDigest.of(photo).sha256(),
            still.widthPx(),
            still.heightPx(),
            still.turnedDeg(),
            1,
            0,
            0,
            false,
            options.model());
    return new PostureAnalysis(CalibrationFile.shipped(options.model()))
        .measure(
            LooksCrossing.track(still.widthPx(), still.heightPx(), seen.looks()),
            options.request(),
            room(still, seen, options, warnings))
        .fold(
            measured -> {
              warnings.addAll(0, ToldNotes.of(measured.posture().setUp()));
              return new PhotoReport.Measured(
                  facts, measured.posture(), warnings, options.request().overrides());
            },
            not ->
                new PhotoReport.NotMeasured(
                    facts, options.request().target(), not.why(), warnings));
  }

  /** What else the picture tells: the room's lines, and a disc where one is to be looked for. */
  private static ClipObservations room(
      Still still, StillLooks.Seen seen, PhotoOptions options, List<String> warnings) {
    PoseSighting athlete =
        seen.looks().stream()
            .filter(look -> look instanceof PoseSighting.Found)
            .findFirst()
            .orElseGet(() -> new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED));
    List<Similarity> oneStill = List.of(Similarity.IDENTITY);
    RoomObserver room = new RoomObserver(1, Runnable::run);
    try (DiscConsensus discs = DiscConsensus.ofStill(options.disc())) {
      room.look(0, still.image(), athlete);
      discs.look(0, still.image(), athlete);
      ClipObservations observed =
          ClipObservations.none()
              .withRoom(room.uprights(oneStill).map(RoomTold::of))
              .withDisc(
                  discs
                      .disc(oneStill)
                      .map(d -> new Disc(d.diameterM(), d.diameterPx(), d.share())));
      discs
          .whyNot()
          .map(why -> DiscNotes.of(why, options.request().scale()))
          .ifPresent(warnings::add);
      return observed;
    }
  }

  /** Frees the models. */
  @Override
  public void close() {
    models.ifPresent(LoadedModels::close);
    models = Optional.empty();
  }
}
