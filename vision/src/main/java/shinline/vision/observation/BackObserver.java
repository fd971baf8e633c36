package shinline.vision.observation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PersonCut;
import shinline.vision.pose.PersonSegmenter;
import shinline.vision.pose.PoseSighting;

/**
 * Takes the trunk's outline where it matters, in standing and at the bottoms. A mask is dear, so
 * looks of the last moments are kept, small, until the hips turn; then the few at the turn get one.
 * No frame is decoded twice, and what is kept does not grow with the clip.
 */
public final class BackObserver {
  /** Far enough back to reach standing when the lowering is slow. */
  private static final double KEPT_S = 2;

  private static final double BETWEEN_KEPT_S = 0.1;

  /** One bad mask among three does not matter. */
  private static final int LOOKS_AT_BOTTOM = 3;

  /** Standing is the same before every rep: once this many looks are there, one a rep will do. */
  private static final int LOOKS_AT_STANDING = 3;

  /** A look that may get a mask. */
  private record Kept(
      int frame, double timeS, PoseSighting.Found found, double hipRowPx, PersonCut cut) {}

  private final PersonSegmenter segmenter;
  private final TrunkEdges edges;
  private HipTurns turns = new HipTurns();
  private final Deque<Kept> kept = new ArrayDeque<>();
  private final List<TrunkSilhouette> silhouettes = new ArrayList<>();
  private int looksAtStanding;
  private int person;

  /**
   * @param segmenter stays the caller's to close
   * @param edges reads the trunk's edges off a mask
   */
  public BackObserver(PersonSegmenter segmenter, TrunkEdges edges) {
    this.segmenter = segmenter;
    this.edges = edges;
  }

  /** Told of every look; what was kept of somebody else before is dropped. */
  public void look(int frame, double timeS, Mat bgrUpright, PeopleInView people) {
    if (people.mover() != person) {
      person = people.mover();
      kept.clear();
      turns = new HipTurns();
      silhouettes.clear();
      looksAtStanding = 0;
    }
    look(frame, timeS, bgrUpright, people.ofMover());
  }

  private void look(int frame, double timeS, Mat bgrUpright, PoseSighting sighting) {
    if (sighting instanceof PoseSighting.Found found) {
      double hipRowPx = PoseShape.hipRowPx(found);
      if (kept.isEmpty() || timeS - kept.getLast().timeS() >= BETWEEN_KEPT_S) {
        kept.addLast(
            new Kept(frame, timeS, found, hipRowPx, segmenter.cut(bgrUpright, found.region())));
      }
      while (timeS - kept.getFirst().timeS() > KEPT_S) {
        kept.removeFirst();
      }
      turns.add(hipRowPx, found.region().sizePx()).ifPresent(this::turned);
    }
  }

  private void turned(HipTurns.Turn turn) {
    Comparator<Kept> byRow = Comparator.comparingDouble(Kept::hipRowPx);
    Comparator<Kept> wantedFirst = byRow.reversed();
    int looks = LOOKS_AT_BOTTOM;
    if (turn == HipTurns.Turn.TOP) {
      wantedFirst = byRow;
      looks = Math.max(1, LOOKS_AT_STANDING - looksAtStanding);
      looksAtStanding += looks;
    }
    kept.stream()
        .sorted(wantedFirst)
        .limit(looks)
        .map(k -> edges.silhouette(k.frame(), k.timeS(), k.found(), segmenter.mask(k.cut())))
        .forEach(silhouettes::add);
    kept.clear();
  }

  /** What was taken so far. */
  public List<TrunkSilhouette> silhouettes() {
    return List.copyOf(silhouettes);
  }
}
