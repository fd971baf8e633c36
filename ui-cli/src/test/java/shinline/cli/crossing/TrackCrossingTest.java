package shinline.cli.crossing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

class TrackCrossingTest {
  private static RawTrack track() {
    return track(CameraPath.still());
  }

  private static RawTrack track(CameraPath camera) {
    Map<BodyLandmark, Keypoint> keypoints = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      keypoints.put(landmark, new Keypoint(landmark.ordinal(), 0, 0, 0.5, 0.5));
    }
    keypoints.put(BodyLandmark.LEFT_FOOT_INDEX, new Keypoint(10, 99, 0, 0.8, 0.5));
    TrackCrossing crossing = new TrackCrossing(200, 100);
    crossing.add(
        3, 0.1, new PoseSighting.Found(keypoints, 0.9, new RegionOfInterest(100, 50, 200, 0)));
    crossing.add(4, 0.2, new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED));
    return crossing.track(camera);
  }

  @Test
  void theBottomRowOfThePictureIsZeroAndTheTopRowIsHeightLessOne() {
    RawPose pose = track().poses().get(0);
    assertThat(pose.at(RawPoint.LEFT_TOE)).contains(new RawSighting(10, 0, 0.4));
    assertThat(pose.at(RawPoint.NOSE)).contains(new RawSighting(0, 99, 0.25));
  }

  @Test
  void sidesStayTheModelsOwn() {
    RawPose pose = track().poses().get(0);
    assertThat(pose.at(RawPoint.RIGHT_KNEE).orElseThrow().x())
        .isEqualTo(BodyLandmark.RIGHT_KNEE.ordinal());
    assertThat(pose.at(RawPoint.RIGHT_TOE).orElseThrow().x())
        .isEqualTo(BodyLandmark.RIGHT_FOOT_INDEX.ordinal());
    assertThat(pose.points()).containsOnlyKeys(RawPoint.values());
  }

  @Test
  void aFrameWithNobodyIsKept() {
    RawPose pose = track().poses().get(1);
    assertThat(pose.nobody()).isTrue();
    assertThat(pose.frame()).isEqualTo(4);
    assertThat(pose.timeS()).isEqualTo(0.2);
  }

  @Test
  void pointsOfAHandHeldClipGoToTheStillViewAndComeBack() {
    Similarity move = new Similarity(0.99, 0.05, 7, -3);
    CameraPath camera = CameraPath.of(List.of(0.1, 0.2), List.of(move, Similarity.IDENTITY));
    RawSighting toe = track(camera).poses().get(0).at(RawPoint.LEFT_TOE).orElseThrow();
    assertThat(toe.x()).isCloseTo(move.x(10, 99), within(1e-9));
    assertThat(99 - toe.y()).isCloseTo(move.y(10, 99), within(1e-9));
    assertThat(toe.confidence()).isEqualTo(0.4);
    Point2D back = camera.inFrame(0.1, toe.x(), 99 - toe.y());
    assertThat(back.getX()).isCloseTo(10, within(1e-9));
    assertThat(back.getY()).isCloseTo(99, within(1e-9));
  }

  @Test
  void betweenTwoLooksTheCameraIsHalfWay() {
    CameraPath camera =
        CameraPath.of(List.of(1.0, 2.0), List.of(Similarity.IDENTITY, new Similarity(1, 0, 8, 4)));
    assertThat(camera.inFrame(1.5, 50, 50)).isEqualTo(new Point2D.Double(46, 48));
    assertThat(camera.inFrame(0, 50, 50)).isEqualTo(new Point2D.Double(50, 50));
    assertThat(camera.inFrame(9, 50, 50)).isEqualTo(new Point2D.Double(42, 46));
  }
}
