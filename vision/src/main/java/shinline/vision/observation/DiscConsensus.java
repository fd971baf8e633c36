package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.bytedeco.opencv.opencv_core.Mat;
import org.hipparchus.stat.descriptive.rank.Median;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.DiscFinder;
import shinline.vision.scene.DiscFinderParameters;
import shinline.vision.scene.DiscFinding;
import shinline.vision.scene.DiscSearch;
import shinline.vision.scene.NoDisc;
import shinline.vision.scene.NoDiscReason;
import shinline.vision.scene.PersonBox;
import shinline.vision.scene.Similarity;

/**
 * Looks for a disc of known size in a few frames spread over the clip, those in which the athlete
 * stands tallest: a disc on a bar is still then. The middle of what they show counts.
 */
public final class DiscConsensus implements AutoCloseable {
  private static final int LOOKS = 7;

  /** Between kept frames when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 45;

  /** Frames of a clip that must show a disc of one size. */
  private static final int FEWEST = 2;

  /** Discs this much apart in size are not one disc. */
  private static final double SAME_SIZE = 0.05;

  private static final double USUAL_STATURE_M = 1.75;

  /**
   * The athlete's box against the standing height: nose to heel or toe in a split stance, about
   * 0.9, and the box's margin of an eighth on both sides.
   */
  private static final double BOX_OF_STATURE = 1.1;

  /** Shorter and taller athletes, a disc nearer or farther, a box not quite as high as the body. */
  private static final double LEAST_OF_EXPECTED = 0.65;

  private static final double MOST_OF_EXPECTED = 1.6;

  /** A place pointed at lies on the disc; its centre within this many diameters. */
  private static final double POINTED_REACH = 0.6;

  private final Optional<DiscWanted> wanted;
  private final int every;
  private final int fewest;
  private final List<Kept> kept = new ArrayList<>();
  private Optional<NoDisc> whyNot = Optional.empty();
  private int looks;

  /** The best frame of a stretch of the clip. */
  private record Kept(int look, int stretch, Mat picture, PersonBox athlete) {}

  /**
   * @param wanted empty to look for none
   * @param expectedFrames frames the clip promises; 0 when it does not say
   */
  public DiscConsensus(Optional<DiscWanted> wanted, int expectedFrames) {
    this(wanted, expectedFrames, FEWEST);
  }

  private DiscConsensus(Optional<DiscWanted> wanted, int expectedFrames, int fewest) {
    this.wanted = wanted;
    this.fewest = fewest;
    every = expectedFrames > 0 ? Math.max(1, expectedFrames / LOOKS) : FRAMES_BETWEEN;
  }

  /** In one still picture, which has to do. */
  public static DiscConsensus ofStill(Optional<DiscWanted> wanted) {
    return new DiscConsensus(wanted, 1, 1);
  }

  /** Told of every look; keeps a copy of the picture in which the athlete stands tallest so far. */
  public void look(int index, Mat bgrUpright, PoseSighting sighting) {
    int look = looks++;
    int stretch = index / every;
    Optional<PersonBox> box = PoseShape.box(sighting);
    if (wanted.isEmpty() || box.isEmpty() || stretch > LOOKS) {
      return;
    }
    if (kept.isEmpty() || kept.get(kept.size() - 1).stretch() != stretch) {
      kept.add(new Kept(look, stretch, bgrUpright.clone(), box.get()));
      return;
    }
    Kept last = kept.get(kept.size() - 1);
    if (box.get().height() > 1.01 * last.athlete().height()) {
      bgrUpright.copyTo(last.picture());
      kept.set(kept.size() - 1, new Kept(look, stretch, last.picture(), box.get()));
    }
  }

  /**
   * The disc as the frames show it; empty when none was wanted or found.
   *
   * @param moves one a look: brings a point of its frame to the still view
   */
  public Optional<Disc> disc(List<Similarity> moves) {
    return wanted.flatMap(disc -> find(disc, moves));
  }

  /** Why a wanted disc was not found; empty when none was wanted, or it was found. */
  public Optional<NoDisc> whyNot() {
    return whyNot;
  }

  /**
   * A disc as the frames agree on it.
   *
   * @param diameterM its true diameter, metres
   * @param diameterPx its diameter in the still view, pixels
   * @param share standard deviation of that, share of it
   */
  public record Disc(double diameterM, double diameterPx, double share) {}

  private Optional<Disc> find(DiscWanted disc, List<Similarity> moves) {
    if (kept.isEmpty()) {
      whyNot = Optional.of(NoDiscReason.NOBODY);
      return Optional.empty();
    }
    double standingPx =
        kept.stream().mapToDouble(k -> k.athlete().height()).max().orElseThrow() / BOX_OF_STATURE;
    DiscFinder finder = new DiscFinder(DiscFinderParameters.defaults());
    List<Seen> seen = new ArrayList<>();
    List<NoDisc> reasons = new ArrayList<>();
    for (Kept frame : kept) {
      double zoom = moves.get(frame.look()).scale();
      DiscFinding finding = finder.find(frame.picture(), search(disc, frame, standingPx));
      if (finding instanceof DiscFinding.Found found) {
        seen.add(new Seen(found.diameterPx() * zoom, found.plusMinusPx() * zoom));
      } else {
        reasons.add(((DiscFinding.NotFound) finding).reason());
      }
    }
    Optional<Disc> middle = middle(disc, seen);
    if (middle.isEmpty()) {
      whyNot =
          Optional.of(
              seen.size() >= fewest
                  ? NoDiscReason.FRAMES_DISAGREE
                  : reasons.stream().findFirst().orElse(NoDiscReason.ONE_FRAME));
    }
    return middle;
  }

  /** A disc as one frame shows it, pixels. */
  private record Seen(double diameterPx, double plusMinusPx) {}

  private Optional<Disc> middle(DiscWanted disc, List<Seen> seen) {
    if (seen.size() < fewest) {
      return Optional.empty();
    }
    double middle = median(seen, Seen::diameterPx);
    List<Seen> agree =
        seen.stream().filter(s -> Math.abs(s.diameterPx() / middle - 1) < SAME_SIZE).toList();
    if (agree.size() < fewest || 2 * agree.size() <= seen.size()) {
      return Optional.empty();
    }
    double diameter = median(agree, Seen::diameterPx);
    double spread =
        Math.sqrt(
            agree.stream()
                .mapToDouble(s -> (s.diameterPx() - diameter) * (s.diameterPx() - diameter))
                .average()
                .orElse(0));
    // What one frame cannot see of its rim the next does not see either: no gain from their number.
    double own = median(agree, Seen::plusMinusPx) / 1.96;
    return Optional.of(new Disc(disc.diameterM(), diameter, Math.hypot(own, spread) / diameter));
  }

  private static double median(List<Seen> seen, ToDoubleFunction<Seen> of) {
    return new Median().evaluate(seen.stream().mapToDouble(of).toArray());
  }

  private static DiscSearch search(DiscWanted disc, Kept frame, double standingPx) {
    double expected = disc.diameterM() / USUAL_STATURE_M * standingPx;
    double least = Math.max(12, LEAST_OF_EXPECTED * expected);
    double most = Math.max(24, MOST_OF_EXPECTED * expected);
    return disc.at()
        .map(place -> new DiscSearch(place.x(), place.y(), POINTED_REACH * most, least, most))
        .orElseGet(
            () -> {
              DiscSearch about = DiscSearch.about(frame.athlete(), standingPx);
              return new DiscSearch(about.nearX(), about.nearY(), about.reachPx(), least, most);
            });
  }

  @Override
  public void close() {
    kept.forEach(k -> k.picture().close());
  }
}
