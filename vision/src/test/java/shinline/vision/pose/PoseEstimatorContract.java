package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every {@link PoseEstimator} owes its callers. */
abstract class PoseEstimatorContract {
  /** Pixels: the models' own error on joints this size (two hundred pixels a leg), with room. */
  private static final double JOINT_TOLERANCE_PX = 15;

  private static final double FRAME_S = 1 / 30.0;

  /** For all tests: loading takes longer than most of them. */
  static final PersonDetector DETECTOR = PersonDetector.open();

  private PoseEstimator estimator;

  abstract PoseEstimator open();

  @BeforeEach
  void openOne() {
    estimator = open();
  }

  @AfterEach
  void closeIt() {
    estimator.close();
  }

  private static PoseSighting.Found found(PoseSighting sighting) {
    return sighting.fold(
        pose -> pose,
        nobody -> {
          throw new AssertionError("Nobody found: " + nobody.reason());
        });
  }

  private static void assertJoints(PoseSighting.Found pose) {
    for (Map.Entry<BodyLandmark, double[]> joint : SplitSquatPicture.TRUTH.entrySet()) {
      Keypoint seen = pose.at(joint.getKey());
      assertThat(Math.hypot(seen.x() - joint.getValue()[0], seen.y() - joint.getValue()[1]))
          .as(joint.getKey().name())
          .isLessThan(JOINT_TOLERANCE_PX);
      assertThat(seen.visibility()).isBetween(0.5, 1.0);
    }
  }

  @Test
  void findsKneesAndAnklesWhereTheyAre() {
    PoseSighting.Found pose = found(estimator.track(SplitSquatPicture.read(), 0));
    assertJoints(pose);
    assertThat(pose.poseFlag()).isBetween(0.5, 1.0);
  }

  @Test
  void staysOnAStillPicture() {
    Mat picture = SplitSquatPicture.read();
    for (int frame = 0; frame < 4; frame++) {
      assertJoints(found(estimator.track(picture, frame * FRAME_S)));
    }
  }

  @Test
  void theSameFramesGiveTheSameBits() {
    Mat picture = SplitSquatPicture.read();
    PoseSighting first = estimator.track(picture, 0);
    PoseSighting second = estimator.track(picture, FRAME_S);
    try (PoseEstimator again = open()) {
      assertThat(again.track(picture, 0)).isEqualTo(first);
      assertThat(again.track(picture, FRAME_S)).isEqualTo(second);
    }
  }

  @Test
  void saysThatAnEmptyRoomIsEmpty() {
    Mat room = new Mat(240, 320, opencv_core.CV_8UC3, new Scalar(90, 90, 90, 0));
    PoseSighting.Reason reason =
        estimator.track(room, 0).fold(pose -> null, PoseSighting.NobodyFound::reason);
    assertThat(reason).isEqualTo(PoseSighting.Reason.NO_PERSON_DETECTED);
  }

  @Test
  void startsAgainAfterLosingThePerson() {
    Mat picture = SplitSquatPicture.read();
    Mat room = new Mat(picture.rows(), picture.cols(), opencv_core.CV_8UC3, new Scalar(90.0));
    found(estimator.track(picture, 0));
    assertThat(estimator.track(room, FRAME_S)).isInstanceOf(PoseSighting.NobodyFound.class);
    assertJoints(found(estimator.track(picture, 2 * FRAME_S)));
  }

  @Test
  void theMirroredPassAnswersInTheFramesOwnTerms() {
    Mat picture = SplitSquatPicture.read();
    RegionOfInterest region = found(estimator.track(picture, 0)).region();
    PoseSighting.Found mirrored = estimator.at(picture, region, ImageFlip.MIRRORED);
    assertThat(mirrored.region()).isEqualTo(region);
    assertThat(mirrored.at(BodyLandmark.NOSE).x())
        .isCloseTo(
            estimator.at(picture, region, ImageFlip.AS_FILMED).at(BodyLandmark.NOSE).x(),
            within(JOINT_TOLERANCE_PX));
  }
}
