package shinline.cli.picture;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Units;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameChoice;
import shinline.vision.clip.FrameStamp;
import shinline.vision.clip.KnownFrames;

/**
 * The drawn-on frames of one measured clip. Frames of which the first reading kept enough are drawn
 * on as kept; the others are fetched in a second one that knows their times from the first and
 * leaps to them where the file has an index.
 */
public final class ClipPictures implements RepPictures {
  /** A longer set has bottoms of its notable reps only. */
  private static final int MOST_BOTTOMS = 12;

  private final List<RepPicture> pictures;
  private final List<Moment> moments;

  private ClipPictures(List<RepPicture> pictures, List<Moment> moments) {
    this.pictures = List.copyOf(pictures);
    this.moments = List.copyOf(moments);
  }

  /**
   * Draws the pictures of a clip that was measured.
   *
   * @param captureFps as the clip was measured with
   * @return fewer pictures, or none, when the clip has to be read again and cannot be
   */
  public static RepPictures of(
      Path clip, ClipReport.Measured report, OptionalDouble captureFps, Units units, Face face) {
    return of(ClipReader.standard(), clip, report, captureFps, units, face);
  }

  static RepPictures of(
      ClipReader reader,
      Path file,
      ClipReport.Measured report,
      OptionalDouble captureFps,
      Units units,
      Face face) {
    TreeMap<Integer, List<Wanted>> wanted = wanted(report.set());
    if (wanted.isEmpty()) {
      return RepPictures.none();
    }
    Drawing drawing = new Drawing(report, units, face, wanted);
    List<FrameStamp> notKept = drawing.drawKept(stamps(report.set(), wanted.keySet()));
    if (!notKept.isEmpty()) {
      FrameChoice choice = new KnownFrames(notKept, report.clip().frames());
      SecondReading.at(reader, file, captureFps, report.clip(), choice)
          .ifPresent(
              clip -> {
                try (clip) {
                  drawing.draw(clip);
                }
              });
    }
    return drawing.done();
  }

  @Override
  public List<RepPicture> all() {
    return pictures;
  }

  @Override
  public List<Moment> moments() {
    return moments;
  }

  /** A picture to be made: of a fault, of an instant beside one, or of a bottom. */
  private record Wanted(RepResult rep, Optional<Flag> flag, Optional<Moment.When> beside) {}

  private static TreeMap<Integer, List<Wanted>> wanted(SetResult set) {
    TreeMap<Integer, List<Wanted>> wanted = new TreeMap<>();
    Story story = Story.of(set);
    int bottoms = 0;
    for (RepResult rep : set.reps()) {
      if ((set.reps().size() <= MOST_BOTTOMS || SetScene.notable(rep)) && bottoms < MOST_BOTTOMS) {
        bottoms++;
        add(
            wanted,
            frameAt(set, rep.bottomS()),
            new Wanted(rep, Optional.empty(), Optional.empty()));
      }
      for (Flag flag : rep.flags()) {
        add(wanted, flag.frame(), new Wanted(rep, Optional.of(flag), Optional.empty()));
        if (story.tells(rep, flag)) {
          for (Moment.When when : Moment.When.values()) {
            add(
                wanted,
                frameAt(set, when.of(flag.atS())),
                new Wanted(rep, Optional.of(flag), Optional.of(when)));
          }
        }
      }
    }
    return wanted;
  }

  private static void add(TreeMap<Integer, List<Wanted>> wanted, int frame, Wanted one) {
    if (frame >= 0) {
      wanted.computeIfAbsent(frame, f -> new ArrayList<>()).add(one);
    }
  }

  /** When the wanted frames are shown, as the first look saw them. */
  private static List<FrameStamp> stamps(SetResult set, Set<Integer> wanted) {
    return IntStream.range(0, set.series().rows())
        .filter(row -> wanted.contains(set.series().frame(row)))
        .mapToObj(row -> new FrameStamp(set.series().frame(row), set.series().timeS(row)))
        .toList();
  }

  /** The frame that was looked at nearest to an instant; -1 when none was. */
  private static int frameAt(SetResult set, double timeS) {
    int best = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int row = 0; row < set.series().rows(); row++) {
      double away = Math.abs(set.series().timeS(row) - timeS);
      if (away < nearest) {
        nearest = away;
        best = set.series().frame(row);
      }
    }
    return best;
  }

  /** Draws one frame after the other, from wherever it comes. */
  private static final class Drawing {
    private final TreeMap<Integer, List<Wanted>> wanted;
    private final int repsInSet;
    private final StillPicture still;
    private final Optional<HeadBlur> blur;
    private final KeptFrames kept;
    private final List<RepPicture> pictures = new ArrayList<>();
    private final List<Moment> moments = new ArrayList<>();

    Drawing(
        ClipReport.Measured report, Units units, Face face, TreeMap<Integer, List<Wanted>> wanted) {
      SetScene scene = new SetScene(report);
      this.wanted = wanted;
      repsInSet = report.set().reps().size();
      still = new StillPicture(scene, units);
      blur = face == Face.BLURRED ? Optional.of(new HeadBlur(scene)) : Optional.empty();
      kept = new KeptFrames(report.kept(), scene, blur);
    }

    /** What was drawn on one frame. */
    private record Drawn(List<RepPicture> pictures, List<Moment> moments) {}

    /** Draws what the first reading kept, on all cores, and tells what it did not. */
    List<FrameStamp> drawKept(List<FrameStamp> stamps) {
      List<Optional<Drawn>> drawn =
          stamps.parallelStream()
              .map(
                  stamp ->
                      kept.picture(stamp.index(), stamp.timeS())
                          .map(image -> drawn(image, stamp.index(), stamp.timeS())))
              .toList();
      List<FrameStamp> others = new ArrayList<>();
      for (int i = 0; i < stamps.size(); i++) {
        drawn.get(i).ifPresent(this::take);
        if (drawn.get(i).isEmpty()) {
          others.add(stamps.get(i));
        }
      }
      return others;
    }

    private void take(Drawn drawn) {
      pictures.addAll(drawn.pictures());
      moments.addAll(drawn.moments());
    }

    void draw(Clip clip) {
      BufferedImage image = FrameImage.none();
      for (Optional<Frame> next = clip.next(); next.isPresent(); next = clip.next()) {
        Frame frame = next.get();
        image = FrameImage.copy(frame.image(), image);
        take(drawn(image, frame.index(), frame.timeS()));
      }
    }

    private Drawn drawn(BufferedImage image, int frame, double timeS) {
      List<RepPicture> made = new ArrayList<>();
      List<Moment> beside = new ArrayList<>();
      blur.ifPresent(b -> b.cover(image, timeS));
      for (Wanted one : wanted.getOrDefault(frame, List.of())) {
        if (one.flag().isPresent() && one.beside().isPresent()) {
          Flag flag = one.flag().get();
          Moment.When when = one.beside().get();
          beside.add(
              new Moment(
                  one.rep().rep(),
                  flag.kind(),
                  when,
                  still.beside(image, timeS, one.rep(), flag, when)));
          continue;
        }
        made.add(
            one.flag()
                .map(flag -> still.fault(image, timeS, one.rep(), flag))
                .orElseGet(() -> still.bottom(image, timeS, one.rep(), repsInSet)));
      }
      return new Drawn(made, beside);
    }

    /** In the order of the result, which that of the frames need not be. */
    ClipPictures done() {
      pictures.sort(
          Comparator.comparingInt(RepPicture::rep)
              .thenComparing(p -> p.flag().isPresent())
              .thenComparing(p -> p.flag().map(Enum::ordinal).orElse(-1)));
      moments.sort(
          Comparator.comparingInt(Moment::rep)
              .thenComparing(Moment::kind)
              .thenComparing(Moment::when));
      return new ClipPictures(pictures, moments);
    }
  }
}
