package shinline.cli.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.SideThread.Errand;
import shinline.cli.crossing.BarCrossing;
import shinline.cli.crossing.OutlineCrossing;
import shinline.cli.crossing.PeopleCrossing;
import shinline.cli.crossing.PictureAxis;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.cli.text.ClipWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.ClipObservations.Disc;
import shinline.metrics.analysis.ClipObservations.DoubtfulSpan;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipEnding;
import shinline.vision.clip.ClipInfo;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.DoubtfulPictures;
import shinline.vision.clip.FileDigest;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameSampling;
import shinline.vision.clip.FrameTimes;
import shinline.vision.clip.PicturePool;
import shinline.vision.library.Cores;
import shinline.vision.library.VideoLibraries;
import shinline.vision.observation.BackObserver;
import shinline.vision.observation.BarObserver;
import shinline.vision.observation.CameraObserver;
import shinline.vision.observation.DiscConsensus;
import shinline.vision.observation.KeptPictures;
import shinline.vision.observation.OddPictures;
import shinline.vision.observation.RoomObserver;
import shinline.vision.observation.SparseLooks;
import shinline.vision.observation.SparseLooks.Taken;
import shinline.vision.observation.StandingCheck;
import shinline.vision.observation.TrunkEdges;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.CameraPath;

/**
 * Opens a clip, follows the athlete through every frame, and measures the set. The pose model works
 * here; the reader decodes ahead on its own thread, and on others the models are loaded while the
 * clip is opened, the file's digest is taken, and what else a look needs is done beside the pose
 * model's next one. Frames that nobody looks at never become pictures, and those that are kept to
 * be drawn on are bounded: memory does not grow with the clip's length but for the points of each
 * frame.
 */
public final class ClipCheck implements ClipChecker {
  /** Below this, a quick drive lies between too few frames to time it (common practice). */
  private static final double LEAST_FPS = 24;

  private final ClipReader reader;

  public ClipCheck() {
    this(ClipReader.standard());
  }

  ClipCheck(ClipReader reader) {
    this.reader = reader;
  }

  @Override
  public ClipReport check(Path clip, CheckOptions options, Progress progress) {
    Optional<ClipOpening.Refused> refusal = reader.glance(clip);
    if (refusal.isPresent()) {
      return unreadable(clip, refusal.get());
    }
    // So early that nobody wonders whether anything happens.
    progress.opening();
    ClipOptions how =
        new ClipOptions(options.captureFps(), decodeThreads(options.model()))
            .within(options.limits());
    try (SideThread side = new SideThread("beside-opening")) {
      return check(new Asked(clip, options, progress, side), how);
    }
  }

  private static int decodeThreads(PoseModel model) {
    return switch (model) {
      case FULL -> Cores.here().forDecodingBesideQuickLooks();
      case HEAVY -> Cores.here().forDecoding();
    };
  }

  /** What was asked for, and the thread for what needs no frame. */
  private record Asked(Path clip, CheckOptions options, Progress progress, SideThread side) {
    Calibration calibration() {
      return CalibrationFile.shipped(options.model());
    }

    String name() {
      return String.valueOf(clip.getFileName());
    }
  }

  private ClipReport check(Asked asked, ClipOptions how) {
    OptionalInt missingTurns;
    try (ModelLoading loading = ModelLoading.begin(asked.side(), asked.options().model())) {
      // Before the first use of any of them here; the models are loading meanwhile.
      VideoLibraries.load();
      FrameSampling sampling =
          new FrameSampling(
              asked.calibration().value(CalibrationKey.SAMPLING_LOOKS), asked.options().part());
      ClipOpening opening = reader.open(asked.clip(), how, sampling);
      if (opening instanceof ClipOpening.Refused refused) {
        return unreadable(asked.clip(), refused);
      }
      try (Clip open = ((ClipOpening.Opened) opening).clip()) {
        asked.progress().frames(0, open.info().expectedFrames());
        Reading reading = new Reading(open, asked, how);
        missingTurns = reading.look(loading.models());
        if (missingTurns.isEmpty()) {
          return reading.report();
        }
      }
    }
    return check(asked, how.turnedMore(missingTurns.getAsInt()));
  }

  private static ClipReport unreadable(Path clip, ClipOpening.Refused refused) {
    return new ClipReport.Unreadable(
        String.valueOf(clip.getFileName()),
        ClipWords.reason(refused.why()),
        ClipWords.advice(refused.why()));
  }

  /** One way through a clip. */
  private static final class Reading {
    private final Clip clip;
    private final Asked asked;
    private final ClipOptions how;
    private final ClipInfo info;
    private final PeopleCrossing crossing;
    private final Optional<KeptPictures> kept;

    private final List<String> warnings = new ArrayList<>();
    private ClipObservations seen;
    private CameraPath camera = CameraPath.still();
    private List<DoubtfulPictures> unlike = List.of();

    private Optional<Errand<Optional<FileDigest>>> digest = Optional.empty();

    Reading(Clip clip, Asked asked, ClipOptions how) {
      this.clip = clip;
      this.asked = asked;
      this.how = how;
      info = clip.info();
      seen = ClipObservations.none();
      crossing = new PeopleCrossing(info.widthPx(), info.heightPx());
      kept = asked.options().pictures() ? Optional.of(new KeptPictures()) : Optional.empty();
    }

    /** Follows the athlete to the end; a number when the picture has to be turned first. */
    OptionalInt look(Models models) {
      StandingCheck standing = new StandingCheck();
      OddPictures odd = new OddPictures();
      boolean mayTurn = how.quarterTurnsMore() == 0;
      BackObserver back =
          new BackObserver(
              models.segmenter(),
              new TrunkEdges(OutlineCrossing.places(), info.widthPx(), info.heightPx()));
      RoomObserver room = new RoomObserver(info.expectedFrames(), asked.side());
      try (CameraObserver watch = new CameraObserver();
          DiscConsensus discs = new DiscConsensus(asked.options().disc(), info.expectedFrames());
          BarObserver bar = new BarObserver(asked.options().barDiscM());
          PicturePool pictures = new PicturePool();
          WatchThread beside = new WatchThread()) {
        SparseLooks looks =
            new SparseLooks(
                models.pose(),
                SparseLooks.apartS(
                    asked.calibration().value(CalibrationKey.SAMPLING_EVERY),
                    asked.calibration().value(CalibrationKey.SAMPLING_LOOKS)),
                asked.calibration().value(CalibrationKey.SAMPLING_PACE));
        boolean more = true;
        while (more) {
          Optional<Frame> next = clip.nextInto(pictures.take());
          more = next.isPresent();
          for (Taken taken : next.map(looks::next).orElseGet(looks::finish)) {
            Frame frame = taken.frame();
            if (taken.people().isEmpty()) {
              beside.watch(
                  () -> {
                    bar.between(frame.index(), frame.timeS(), frame.image());
                    pictures.give(frame.image());
                  });
              continue;
            }
            PeopleInView people = taken.people().get();
            PoseSighting sighting = people.ofMover();
            crossing.add(frame.index(), frame.timeS(), people);
            beside.watch(
                () -> {
                  odd.look(frame.timeS(), frame.image());
                  room.look(frame.index(), frame.image(), sighting);
                  back.look(frame.index(), frame.timeS(), frame.image(), people);
                  watch.look(frame.timeS(), frame.image(), people);
                  discs.look(frame.index(), frame.image(), sighting);
                  bar.look(frame.index(), frame.timeS(), frame.image(), people);
                  kept.ifPresent(k -> k.look(frame.index(), frame.image(), people));
                  pictures.give(frame.image());
                });
            OptionalInt turns = standing.look(sighting);
            if (mayTurn && turns.orElse(0) != 0) {
              return turns;
            }
            if (turns.isPresent()) {
              digest();
              models.pose().pictureIsUpright();
            }
            asked.progress().frames(frame.index() + 1, info.expectedFrames());
          }
        }
        beside.finish();
        unlike = odd.found();
        companyNote(crossing.company()).ifPresent(warnings::add);
        CameraObserver.Told told = watch.told();
        camera = told.path();
        seen =
            seen.withHold(hold(told.hold()))
                .withRoom(room.uprights(told.moves()).map(RoomTold::of))
                .withDisc(
                    discs
                        .disc(told.moves())
                        .map(d -> new Disc(d.diameterM(), d.diameterPx(), d.share())))
                .withOutlines(
                    OutlineCrossing.outlines(
                        back.silhouettes(), camera, new PictureAxis(info.heightPx())))
                .withBar(
                    BarCrossing.track(
                        bar.sightings(),
                        asked.options().barDiscM(),
                        camera,
                        new PictureAxis(info.heightPx())));
        discs
            .whyNot()
            .map(why -> DiscNotes.of(why, asked.options().request().scale()))
            .ifPresent(warnings::add);
      }
      return OptionalInt.empty();
    }

    private static Optional<String> companyNote(PeopleInView.Company company) {
      return switch (company) {
        case NOBODY -> Optional.empty();
        case STANDING_BY -> Optional.of(Words.say("clip.note.company"));
        case MOVING_TOO -> Optional.of(Words.say("clip.note.company-moves"));
      };
    }

    private static List<DoubtfulSpan> told(List<DoubtfulPictures> pictures) {
      return pictures.stream().map(d -> new DoubtfulSpan(d.fromS(), d.toS())).toList();
    }

    private static String spans(List<DoubtfulSpan> spans) {
      return spans.stream()
          .map(span -> Words.say("clip.note.doubtful.span", span.fromS(), span.toS()))
          .collect(Collectors.joining(", "));
    }

    private static CameraHold hold(CameraObserver.Hold told) {
      return switch (told) {
        case STILL -> CameraHold.STILL;
        case FOLLOWED -> CameraHold.STEADIED;
        case NOT_FOLLOWED -> CameraHold.NOT_FOLLOWED;
      };
    }

    /** Of the file, begun once it is sure that this reading is the last. */
    private Errand<Optional<FileDigest>> digest() {
      if (digest.isEmpty()) {
        digest = Optional.of(asked.side().begin(() -> digest(asked.clip())));
      }
      return digest.get();
    }

    private static Optional<FileDigest> digest(Path file) {
      try {
        return Optional.of(FileDigest.ofFilm(file));
      } catch (IOException e) {
        return Optional.empty();
      }
    }

    ClipReport report() {
      String name = asked.name();
      CheckOptions options = asked.options();
      if (how.quarterTurnsMore() != 0) {
        warnings.add(
            Words.say(
                how.quarterTurnsMore() == 2 ? "clip.note.upside-down" : "clip.note.lying",
                90 * how.quarterTurnsMore()));
      }
      ClipEnding ending = clip.ending();
      if (ending instanceof ClipEnding.Stopped stopped) {
        return new ClipReport.Unreadable(
            name, Words.of(stopped.cause(), "reason"), Words.of(stopped.cause(), "advice"));
      }
      // Of all frames, those included that nobody looked at.
      FrameTimes times = clip.times();
      if (times.count() == 0) {
        return new ClipReport.Unreadable(
            name, Words.say("clip.blank.reason"), Words.say("clip.blank.advice"));
      }
      if (seen.hold() == CameraHold.STEADIED) {
        warnings.add(Words.say("clip.note.hand-held"));
      }
      damage(ending).ifPresent(w -> warnings.add(0, w));
      List<DoubtfulSpan> patched = told(clip.doubtful());
      List<DoubtfulSpan> odd = told(unlike);
      seen = seen.withDoubtful(Stream.concat(patched.stream(), odd.stream()).toList());
      if (!patched.isEmpty()) {
        warnings.add(Words.say("clip.note.doubtful", spans(patched)));
      }
      if (!odd.isEmpty()) {
        warnings.add(Words.say("clip.note.odd", spans(odd)));
      }
      if (times.count() > 1 && times.medianFps() < LEAST_FPS) {
        warnings.add(Words.say("clip.note.few-frames", times.medianFps()));
      }
      info.slowMotionHint().ifPresent(fps -> warnings.add(Words.say("clip.note.slow-motion", fps)));
      Optional<FileDigest> known = digest().result();
      if (known.isEmpty()) {
        return new ClipReport.Unreadable(
            name, Words.say("clip.gone.reason"), Words.say("clip.gone.advice"));
      }
      ClipFacts facts =
          new ClipFacts(
              name,
              known.get().sha256(),
              info.widthPx(),
              info.heightPx(),
              info.rotationDeg(),
              times.count(),
              times.durationS(),
              times.medianFps(),
              times.variable(),
              options.model());
      if (options.part().fromS() > times.durationS()) {
        return new ClipReport.NotMeasured(
            facts,
            options.request().target(),
            new SetRefusal.PartBehind(options.part().fromS(), times.durationS()),
            warnings);
      }
      ClipReport.Footage footage =
          new ClipReport.Footage(crossing.ofMover(camera), options.request(), options.part(), seen);
      return new SetAnalysis(asked.calibration())
          .measure(footage.track(), footage.request(), footage.seen())
          .fold(
              measured -> {
                ToldNotes.of(measured.set().setUp()).forEach(warnings::add);
                return new ClipReport.Measured(
                    facts, measured.set(), warnings, camera, Optional.of(footage), kept);
              },
              not ->
                  new ClipReport.NotMeasured(
                      facts, options.request().target(), not.why(), warnings));
    }
  }

  private static Optional<String> damage(ClipEnding ending) {
    return ending.fold(
        complete -> Optional.empty(),
        early ->
            Optional.of(
                Words.say("clip.note.ends-early", early.secondsRead(), early.secondsExpected())),
        damaged ->
            Optional.of(
                Words.say(
                    "clip.note.damaged",
                    Math.max(0, damaged.framesExpected() - damaged.framesRead()),
                    damaged.framesExpected())),
        stopped -> Optional.of(Words.of(stopped.cause(), "reason")));
  }
}
