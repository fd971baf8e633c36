package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import shinline.vision.clip.Frame;
import shinline.vision.clip.PicturePool;
import shinline.vision.pose.ImageFlip;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;

/** The pose model is made up: what it is asked, and when, is what counts. */
final class SparseLooksTest {
  private static final double FRAME_S = 1 / 15.0;
  private static final double FAR = 0.02;

  private final Asked pose = new Asked();
  private final PicturePool pictures = new PicturePool();

  /** Writes down what it is asked. */
  private static final class Asked implements PoseEstimator {
    private static final PeopleInView SEEN =
        PeopleInView.alone(new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED));

    private final List<Double> looksS = new ArrayList<>();
    private final List<Double> shares = new ArrayList<>();
    private boolean moves;

    @Override
    public PeopleInView look(Mat bgrUpright, double timeS) {
      looksS.add(timeS);
      return SEEN;
    }

    @Override
    public Optional<PeopleInView> between(Mat bgrUpright, double share, double farOfStature) {
      assertThat(farOfStature).isEqualTo(FAR);
      shares.add(share);
      return moves ? Optional.of(SEEN) : Optional.empty();
    }

    @Override
    public void pictureIsUpright() {}

    @Override
    public PoseSighting.Found at(Mat bgr, RegionOfInterest region, ImageFlip handedness) {
      throw new AssertionError("not asked for");
    }

    @Override
    public void beginAnew() {}

    @Override
    public void close() {}
  }

  /** Indexes of the frames that were looked at, in the order in which they came out. */
  private List<Integer> goThrough(int frames, int every) {
    SparseLooks looks = new SparseLooks(pose, SparseLooks.apartS(every, 15), FAR);
    List<SparseLooks.Taken> seen = new ArrayList<>();
    for (int i = 0; i < frames; i++) {
      seen.addAll(looks.next(new Frame(i, i * FRAME_S, pictures.take())));
    }
    seen.addAll(looks.finish());
    return seen.stream()
        .filter(taken -> taken.people().isPresent())
        .map(taken -> taken.frame().index())
        .toList();
  }

  @Test
  void whoStandsStillIsLookedAtInEverySecondFrameAndTheLast() {
    assertThat(goThrough(10, 2)).containsExactly(0, 2, 4, 6, 8, 9);
    assertThat(pose.looksS).hasSize(6);
  }

  @Test
  void whoMovesIsLookedAtInAllInTheOrderOfTime() {
    pose.moves = true;
    assertThat(goThrough(11, 3)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
    assertThat(pose.looksS).as("led from one to the next").hasSize(5);
    assertThat(pose.shares.get(0)).isCloseTo(1 / 3.0, within(1e-9));
    assertThat(pose.shares.get(1)).isCloseTo(2 / 3.0, within(1e-9));
  }

  @Test
  void everyFrameCanBeAskedFor() {
    assertThat(goThrough(5, 1)).containsExactly(0, 1, 2, 3, 4);
    assertThat(pose.shares).isEmpty();
  }

  @Test
  void framesPassedOverAreHandedOnInTheirOrder() {
    SparseLooks looks = new SparseLooks(pose, SparseLooks.apartS(3, 15), FAR);
    List<SparseLooks.Taken> taken = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      taken.addAll(looks.next(new Frame(i, i * FRAME_S, pictures.take())));
    }
    assertThat(taken).extracting(t -> t.frame().index()).containsExactly(0, 1, 2, 3);
    assertThat(taken)
        .extracting(t -> t.people().isPresent())
        .containsExactly(true, false, false, true);
    pictures.close();
  }

  @Test
  void aClipOfFewFramesIsLookedAtInAllOfThem() {
    SparseLooks looks = new SparseLooks(pose, SparseLooks.apartS(2, 15), FAR);
    for (int i = 0; i < 10; i++) {
      assertThat(looks.next(new Frame(i, i / 10.0, pictures.take()))).hasSize(1);
    }
    pictures.close();
  }
}
