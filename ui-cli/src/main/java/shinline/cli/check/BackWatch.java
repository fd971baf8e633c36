package shinline.cli.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.crossing.OutlineCrossing;
import shinline.cli.crossing.PoseShape;
import shinline.metrics.back.TrunkOutline;
import shinline.vision.pose.PersonCut;
import shinline.vision.pose.PersonSegmenter;
import shinline.vision.pose.PoseSighting;

/**
 * Takes the trunk's outline where it matters, in standing and at the bottoms. A mask is dear, so
 * looks of the last moments are kept, small, until the hips turn; then the few at the turn get one.
 * No frame is decoded twice, and what is kept does not grow with the clip.
 */
final class BackWatch {
  /** Far enough back to reach standing when the lowering is slow. */
  private static final double KEPT_S = 2;

  private static final double BETWEEN_KEPT_S = 0.1;

  /** One bad mask among three does not matter. */
  private static final int LOOKS_AT_BOTTOM = 3;

  /** Standing is the same before every rep: once this many looks are there, one a rep will do. */
  private static final int LOOKS_AT_STANDING = 3;

  /** A look that may get a mask. */
  private record Kept(
      int frame, double timeS, PoseSighting.Found found, double hipPx, PersonCut cut) {}

  private final PersonSegmenter segmenter;
  private final OutlineCrossing crossing;
  private final int heightPx;
  private final HipTurns turns = new HipTurns();
  private final Deque<Kept> kept = new ArrayDeque<>();
  private final List<TrunkOutline> outlines = new ArrayList<>();
  private int looksAtStanding;

  /**
   * @param segmenter stays the caller's to close
   * @param widthPx width of the upright picture
   * @param heightPx height of the upright picture
   */
  BackWatch(PersonSegmenter segmenter, int widthPx, int heightPx) {
    this.segmenter = segmenter;
    crossing = new OutlineCrossing(widthPx, heightPx);
    this.heightPx = heightPx;
  }

  void look(int frame, double timeS, Mat bgrUpright, PoseSighting sighting) {
    if (sighting instanceof PoseSighting.Found found) {
      double hipPx = PoseShape.hipHeightPx(found, heightPx);
      if (kept.isEmpty() || timeS - kept.getLast().timeS() >= BETWEEN_KEPT_S) {
        kept.addLast(
            new Kept(frame, timeS, found, hipPx, segmenter.cut(bgrUpright, found.region())));
      }
      while (timeS - kept.getFirst().timeS() > KEPT_S) {
        kept.removeFirst();
      }
      turns.add(hipPx, found.region().sizePx()).ifPresent(this::turned);
    }
  }

  private void turned(HipTurns.Turn turn) {
    Comparator<Kept> byHeight = Comparator.comparingDouble(Kept::hipPx);
    int looks = LOOKS_AT_BOTTOM;
    if (turn == HipTurns.Turn.TOP) {
      byHeight = byHeight.reversed();
      looks = Math.max(1, LOOKS_AT_STANDING - looksAtStanding);
      looksAtStanding += looks;
    }
    kept.stream()
        .sorted(byHeight)
        .limit(looks)
        .map(k -> crossing.outline(k.frame(), k.timeS(), k.found(), segmenter.mask(k.cut())))
        .forEach(outlines::add);
    kept.clear();
  }

  /** What was taken so far. */
  List<TrunkOutline> outlines() {
    return List.copyOf(outlines);
  }
}
