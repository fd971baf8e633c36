package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.junit.jupiter.api.Test;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;

class KeptPicturesTest {
  private static final int WIDTH = 960;
  private static final int HEIGHT = 540;

  /** Grey levels, mean over the part and its colours. */
  private static final double LOSS = 2;

  /** Of the athlete below: 120 px of trunk, 0.288 of stature. */
  private static final double STATURE_PX = 417;

  @Test
  void whatIsKeptIsThePartOfTheFrameAroundTheAthlete() {
    KeptPictures kept = new KeptPictures();
    try (Mat frame = room()) {
      kept.look(40, frame, athlete(400, 300));
      KeptPicture part = kept.of(40).orElseThrow();
      assertThat(part.leftPx()).isPositive().isLessThan((int) (400 - 0.24 * STATURE_PX));
      assertThat(part.leftPx() + part.widthPx())
          .isLessThan(WIDTH)
          .isGreaterThan((int) (500 + 0.24 * STATURE_PX));
      assertThat(part.topPx()).isLessThan((int) (160 - 0.16 * STATURE_PX));
      assertThat(part.topPx() + part.heightPx()).isGreaterThan((int) (455 + 0.07 * STATURE_PX));
      assertThat(part.bytes()).isLessThan(part.widthPx() * part.heightPx());
      try (Rect box = new Rect(part.leftPx(), part.topPx(), part.widthPx(), part.heightPx());
          Mat there = new Mat(frame, box);
          Mat picture = part.picture();
          Mat differences = new Mat()) {
        opencv_core.absdiff(there, picture, differences);
        try (Scalar mean = opencv_core.mean(differences)) {
          for (int colour = 0; colour < 3; colour++) {
            assertThat(mean.get(colour)).isLessThan(LOSS);
          }
        }
      }
    }
  }

  @Test
  void thePartEndsWhereTheFrameDoes() {
    KeptPictures kept = new KeptPictures();
    try (Mat frame = room()) {
      kept.look(0, frame, athlete(30, 300));
      KeptPicture part = kept.of(0).orElseThrow();
      assertThat(part.leftPx()).isZero();
      assertThat(part.topPx() + part.heightPx()).isLessThanOrEqualTo(HEIGHT);
    }
  }

  @Test
  void nothingIsKeptOfAnEmptyRoom() {
    KeptPictures kept = new KeptPictures();
    try (Mat frame = room()) {
      kept.look(
          1,
          frame,
          PeopleInView.alone(new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED)));
    }
    assertThat(kept.of(1)).isEmpty();
  }

  @Test
  void someoneWhoStandsMakesRoomForTheLowerPartOfReps() {
    try (Mat frame = room()) {
      KeptPictures one = new KeptPictures();
      one.look(0, frame, athlete(400, 245));
      KeptPictures kept = new KeptPictures(one.of(0).orElseThrow().bytes() * 5L / 2);
      kept.look(0, frame, athlete(400, 245));
      kept.look(1, frame, athlete(400, 300));
      assertThat(kept.of(0)).isPresent();
      assertThat(kept.of(1)).isPresent();
      kept.look(2, frame, athlete(400, 300));
      kept.look(3, frame, athlete(400, 245));
      assertThat(kept.of(0)).as("let go").isEmpty();
      assertThat(kept.of(1)).isPresent();
      assertThat(kept.of(2)).isPresent();
      assertThat(kept.of(3)).as("kept no more").isEmpty();
    }
  }

  @Test
  void whatDoesNotFitIsNotKeptNorAnythingAfterIt() {
    try (Mat frame = room();
        Mat plain = new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3, new Scalar(90, 90, 90, 0))) {
      KeptPictures one = new KeptPictures();
      one.look(0, frame, athlete(400, 300));
      KeptPictures kept = new KeptPictures(one.of(0).orElseThrow().bytes() * 5L / 2);
      for (int look = 0; look < 4; look++) {
        kept.look(look, frame, athlete(400, 300));
      }
      kept.look(4, plain, athlete(400, 300));
      assertThat(kept.of(0)).isPresent();
      assertThat(kept.of(1)).isPresent();
      assertThat(kept.of(2)).isEmpty();
      assertThat(kept.of(3)).isEmpty();
      assertThat(kept.of(4)).as("would fit, but a stretch with a gap is of no use").isEmpty();
    }
  }

  /** Coloured blotches with edges a film could have. */
  private static Mat room() {
    byte[] levels = new byte[3 * (WIDTH / 20) * (HEIGHT / 20)];
    new Random(7).nextBytes(levels);
    Mat picture = new Mat();
    try (Mat coarse = new Mat(HEIGHT / 20, WIDTH / 20, opencv_core.CV_8UC3);
        BytePointer data = coarse.data();
        Size size = new Size(WIDTH, HEIGHT)) {
      data.put(levels);
      opencv_imgproc.resize(coarse, picture, size, 0, 0, opencv_imgproc.INTER_LINEAR);
    }
    return picture;
  }

  /** Ears at 160, feet at 455, the trunk 120 px long whatever the hips' row. */
  private static PeopleInView athlete(double leftPx, double hipRow) {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      double row =
          switch (landmark) {
            case LEFT_HIP, RIGHT_HIP -> hipRow;
            case LEFT_KNEE, RIGHT_KNEE -> (hipRow + 455) / 2;
            case LEFT_ANKLE, RIGHT_ANKLE, LEFT_HEEL, RIGHT_HEEL -> 450;
            case LEFT_FOOT_INDEX, RIGHT_FOOT_INDEX -> 455;
            case LEFT_SHOULDER, RIGHT_SHOULDER -> hipRow - 120;
            default -> 160;
          };
      double x =
          switch (landmark) {
            case LEFT_FOOT_INDEX -> leftPx + 100;
            case RIGHT_FOOT_INDEX -> leftPx;
            default -> leftPx + 50;
          };
      points.put(landmark, new Keypoint(x, row, 0, 1, 1));
    }
    return PeopleInView.alone(
        new PoseSighting.Found(points, 1, new RegionOfInterest(300, 300, 500, 0)));
  }
}
