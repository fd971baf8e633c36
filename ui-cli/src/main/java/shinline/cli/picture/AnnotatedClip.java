package shinline.cli.picture;

import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.Progress;
import shinline.cli.picture.Ink.Hang;
import shinline.cli.text.Cautions;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipEnding;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.ClipWriteException;
import shinline.vision.clip.ClipWriter;
import shinline.vision.clip.FilmNotes;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameChoice;
import shinline.vision.clip.WriterOpening;

/**
 * The whole clip again, upright and at its own times, with lines and live numbers drawn on. One
 * frame at a time: memory does not grow with the clip's length.
 */
public final class AnnotatedClip {
  /** What a phone's screen shows and a messenger sends without cutting it down. */
  private static final int LONGEST_SIDE_PX = 1280;

  /** A main line's width against the athlete's height. */
  private static final double LINE_OF_STATURE = 0.011;

  private static final double THINNEST_PX = 1.8;

  /** The plate at the top has to be read whatever the athlete's size; share of the mean side. */
  private static final double PLATE_UNIT = 0.006;

  private static final double PLATE_SIZE = 6;
  private static final double FAULT_SIZE = 5.4;

  /** A fault's words stay this long: time to read them, and seldom into the next rep. */
  private static final double WORDS_BEFORE_S = 0.4;

  private static final double WORDS_AFTER_S = 1.2;

  /** For the bit rate of a clip that has a single frame. */
  private static final double USUAL_FPS = 30;

  private final SetScene scene;
  private final Units units;
  private final Optional<HeadBlur> blur;
  private final Crop whole;

  /** Words hang from the edge of the picture that is farther from the athlete. */
  private final Hang free;

  private AnnotatedClip(ClipReport.Measured report, Units units, Face face) {
    this.units = units;
    int w = report.clip().widthPx();
    int h = report.clip().heightPx();
    scene = new SetScene(report);
    blur = face == Face.BLURRED ? Optional.of(new HeadBlur(scene)) : Optional.empty();
    whole = new Crop(new Rectangle(w, h), Math.min(1, LONGEST_SIDE_PX / (double) Math.max(w, h)));
    free =
        report.set().reps().stream()
            .flatMap(rep -> scene.pose(rep.bottomS()).midHip().stream())
            .findFirst()
            .filter(hip -> hip.getX() < w / 2.0)
            .map(hip -> Hang.LEFT)
            .orElse(Hang.RIGHT);
  }

  /**
   * Writes the annotated clip.
   *
   * @param target an mp4 file; replaced when whole
   * @param captureFps as the clip was measured with
   * @throws CoachException when the clip cannot be read again, or the file not be written
   */
  public static void write(
      WholeFile target,
      Path clip,
      ClipReport.Measured report,
      OptionalDouble captureFps,
      Units units,
      Face face,
      Progress progress) {
    try (Clip open =
        SecondReading.at(ClipReader.standard(), clip, captureFps, report.clip(), FrameChoice.ALL)
            .orElseThrow(() -> failed(target.path(), Words.say("picture.clip-gone")))) {
      AnnotatedClip film = new AnnotatedClip(report, units, face);
      target.replace(
          (file, how) -> {
            try {
              film.write(file, target.path(), open, report, progress);
            } catch (ClipWriteException e) {
              throw failed(target.path(), Words.say("picture.film.write-failed"));
            }
          });
    }
  }

  private static CoachException failed(Path target, String why) {
    return CoachException.usage(Words.say("picture.film.unwritable", target, why));
  }

  /** The cautions go with the film, which is often sent on alone. */
  private static FilmNotes notes(ClipReport.Measured report) {
    return new FilmNotes(
        Words.say("film.title", report.clip().fileName()), String.join(" ", Cautions.all()));
  }

  /**
   * @param file where it grows
   * @param target the name it will have, for complaints
   */
  private void write(
      Path file, Path target, Clip clip, ClipReport.Measured report, Progress progress)
      throws IOException {
    int w = even(whole.widthPx());
    int h = even(whole.heightPx());
    // Drawn at the film's own times: a slow-motion clip stays one.
    double stretch = clip.info().slowMotionFactor();
    double fps = report.clip().medianFps() / stretch;
    WriterOpening opening = ClipWriter.open(file, w, h, fps > 0 ? fps : USUAL_FPS, notes(report));
    if (opening instanceof WriterOpening.Refused refused) {
      throw CoachException.usage(
          Words.say(
              "picture.film.refused",
              target,
              Words.of(refused.why(), "reason", w, h),
              Words.of(refused.why(), "advice")));
    }
    try (ClipWriter writer = opening.fold(WriterOpening.Ready::writer, r -> unreachable());
        Mat out = new Mat(h, w, CV_8UC3)) {
      BufferedImage upright = FrameImage.none();
      BufferedImage drawn = new BufferedImage(w, h, BufferedImage.TYPE_3BYTE_BGR);
      int done = 0;
      for (Optional<Frame> next = clip.next(); next.isPresent(); next = clip.next()) {
        double timeS = next.get().timeS();
        upright = FrameImage.copy(next.get().image(), upright);
        draw(upright, drawn, timeS);
        FrameImage.copy(drawn, out);
        writer.write(out, timeS * stretch);
        done++;
        progress.frames(done, report.clip().frames());
      }
    }
    if (clip.ending() instanceof ClipEnding.Stopped stopped) {
      throw failed(target, Words.of(stopped.cause(), "reason"));
    }
  }

  private static ClipWriter unreachable() {
    throw new IllegalStateException("refusals were dealt with");
  }

  private static int even(int px) {
    return Math.max(2, px - px % 2);
  }

  private void draw(BufferedImage upright, BufferedImage drawn, double timeS) {
    blur.ifPresent(b -> b.cover(upright, timeS));
    Graphics2D g = drawn.createGraphics();
    try {
      whole.paint(g, upright, 0);
      Rectangle all = new Rectangle(drawn.getWidth(), drawn.getHeight());
      double stature = scene.staturePx().orElse(scene.heightPx() / 2.0) * whole.scale();
      Ink ink = new Ink(g, Math.max(THINNEST_PX, LINE_OF_STATURE * stature), all);
      AffineTransform toPicture = whole.transform(0);
      toPicture.concatenate(scene.toFrame(timeS));
      FrameArtist artist = new FrameArtist(scene, units, toPicture);
      artist.lines(ink, timeS);
      Ink plate = new Ink(g, PLATE_UNIT * (all.width + all.height) / 2, all);
      plates(plate, all, timeS, artist.liveWords(timeS));
    } finally {
      g.dispose();
    }
  }

  private void plates(Ink ink, Rectangle all, double timeS, Map<String, Color> numbers) {
    Optional<RepResult> rep = scene.repAt(timeS);
    String place =
        rep.map(r -> Words.say("picture.plate.rep", r.rep(), scene.reps().size()))
            .orElseGet(() -> Words.say("picture.plate.before"));
    String words = Words.say("picture.plate", place, Words.of(scene.phaseAt(timeS), "name"), timeS);
    double line = PLATE_SIZE * 1.9 * ink.unit();
    double edge = free == Hang.RIGHT ? 0 : all.width;
    ink.tag(words, new Point2D.Double(edge, 0.6 * line), free, Color.WHITE, PLATE_SIZE);
    double row = 0.6 * line;
    for (Map.Entry<String, Color> number : numbers.entrySet()) {
      row += line;
      Point2D at = new Point2D.Double(edge, row);
      ink.tag(number.getKey(), at, free, number.getValue(), PLATE_SIZE);
    }
    double y = all.height - 0.6 * line;
    for (RepResult r : scene.reps()) {
      for (Flag flag : r.flags()) {
        if (timeS >= flag.atS() - WORDS_BEFORE_S && timeS <= flag.atS() + WORDS_AFTER_S) {
          FlagCaption caption = FlagCaption.of(flag, units);
          ink.tag(caption.title(), new Point2D.Double(edge, y), free, Ink.FAULT, FAULT_SIZE);
          y -= line;
        }
      }
    }
  }
}
