package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;
import shinline.vision.scene.NoDisc;
import shinline.vision.scene.Similarity;

class DiscConsensusTest {
  private static final int FRAMES = 70;
  private static final double DISC_M = 0.45;

  /** What the finder itself promises of a drawn disc. */
  private static final double SIZE_SHARE = 0.01;

  /** A 1.75 m athlete of 400 px: a disc of 0.45 m is 103 px across. */
  private static final int RADIUS_PX = 51;

  /** A drawn circle covers its radius to either side of the pixel in its middle. */
  private static double diameter(int radius) {
    return 2 * radius + 1;
  }

  private static PoseSighting athlete() {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      double down = 100 + 370.0 * landmark.ordinal() / BodyLandmark.values().length;
      points.put(landmark, new Keypoint(300, down, 0, 1, 1));
    }
    return new PoseSighting.Found(points, 1, new RegionOfInterest(300, 300, 500, 0));
  }

  private static void draw(Mat picture, int x, int y, int radius) {
    opencv_imgproc.circle(
        picture,
        new Point(16 * x, 16 * y),
        16 * radius,
        new Scalar(40, 40, 40, 0),
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_AA,
        4);
  }

  private static Mat room() {
    return new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(180, 185, 190, 0));
  }

  private static DiscConsensus watch(Optional<DiscWanted.Place> at, Mat picture) {
    DiscConsensus watch = new DiscConsensus(Optional.of(new DiscWanted(DISC_M, at)), FRAMES);
    for (int i = 0; i < FRAMES; i++) {
      watch.look(i, picture, athlete());
    }
    return watch;
  }

  private static List<Similarity> still() {
    return Collections.nCopies(FRAMES, Similarity.IDENTITY);
  }

  @Test
  void aDiscBesideTheAthleteIsMeasuredInTheStillView() {
    Mat picture = room();
    draw(picture, 500, 400, RADIUS_PX);
    try (DiscConsensus watch = watch(Optional.empty(), picture)) {
      DiscConsensus.Disc disc = watch.disc(still()).orElseThrow();
      assertThat(disc.diameterM()).isEqualTo(DISC_M);
      assertThat(disc.diameterPx())
          .isCloseTo(diameter(RADIUS_PX), within(SIZE_SHARE * diameter(RADIUS_PX)));
      assertThat(disc.share()).isBetween(0.0005, 2 * SIZE_SHARE);
      assertThat(watch.whyNot()).isEmpty();
      List<Similarity> zoomed = Collections.nCopies(FRAMES, new Similarity(1.1, 0, 0, 0));
      assertThat(watch.disc(zoomed).orElseThrow().diameterPx())
          .isCloseTo(1.1 * disc.diameterPx(), within(1e-9));
    }
  }

  @Test
  void ofTwoDiscsTheOnePointedAtCounts() {
    Mat picture = room();
    draw(picture, 480, 400, RADIUS_PX);
    draw(picture, 640, 400, RADIUS_PX - 12);
    try (DiscConsensus either = watch(Optional.empty(), picture);
        DiscConsensus pointed = watch(Optional.of(new DiscWanted.Place(650, 405)), picture)) {
      assertThat(either.disc(still())).isEmpty();
      assertThat(either.whyNot()).containsInstanceOf(NoDisc.TwoSizes.class);
      double px = diameter(RADIUS_PX - 12);
      assertThat(pointed.disc(still()).orElseThrow().diameterPx())
          .isCloseTo(px, within(SIZE_SHARE * px));
    }
  }

  @Test
  void withoutADiscItSaysWhy() {
    try (DiscConsensus watch = watch(Optional.empty(), room())) {
      assertThat(watch.disc(still())).isEmpty();
      assertThat(watch.whyNot()).isPresent();
    }
  }

  @Test
  void nothingIsSoughtUnasked() {
    try (DiscConsensus watch = new DiscConsensus(Optional.empty(), FRAMES)) {
      watch.look(0, room(), athlete());
      assertThat(watch.disc(still())).isEmpty();
      assertThat(watch.whyNot()).isEmpty();
    }
  }
}
