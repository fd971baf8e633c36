package shinline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.track.BodyPoint;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;
import shinline.vision.observation.KeptPictures;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;

/** The standing set, with frames of the film of noise kept as a first reading keeps them. */
final class KeptNoise {
  private KeptNoise() {}

  /**
   * @param looked which frames were looked at
   * @param offPx how far right of the athlete the pose model saw one
   */
  static ClipReport.Measured measured(Path film, IntPredicate looked, double offPx)
      throws IOException {
    KeptPictures kept = new KeptPictures();
    ClipOpening opening = ClipReader.standard().open(film, ClipOptions.defaults());
    try (Clip clip =
        opening.fold(
            ClipOpening.Opened::clip,
            refused -> {
              throw new IllegalStateException(refused.toString());
            })) {
      for (Optional<Frame> next = clip.next(); next.isPresent(); next = clip.next()) {
        Frame frame = next.get();
        if (looked.test(frame.index())) {
          kept.look(frame.index(), frame.image(), athlete(offPx));
        }
      }
    }
    ClipReport.Measured plain = StandingSet.measured();
    return new ClipReport.Measured(
        plain.clip(),
        plain.set(),
        plain.warnings(),
        plain.camera(),
        plain.footage(),
        Optional.of(kept));
  }

  private static PeopleInView athlete(double offPx) {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      double[] at = StandingSet.PLACES.get(place(landmark));
      points.put(landmark, new Keypoint(at[0] + offPx, at[1], 0, 1, 1));
    }
    return PeopleInView.alone(
        new PoseSighting.Found(points, 1, new RegionOfInterest(300, 250, 400, 0)));
  }

  private static BodyPoint place(BodyLandmark landmark) {
    return switch (landmark) {
      case LEFT_SHOULDER, RIGHT_SHOULDER -> BodyPoint.NEAR_SHOULDER;
      case LEFT_HIP, RIGHT_HIP -> BodyPoint.FRONT_HIP;
      case RIGHT_KNEE -> BodyPoint.FRONT_KNEE;
      case RIGHT_ANKLE -> BodyPoint.FRONT_ANKLE;
      case RIGHT_HEEL -> BodyPoint.FRONT_HEEL;
      case RIGHT_FOOT_INDEX -> BodyPoint.FRONT_TOE;
      case LEFT_KNEE -> BodyPoint.REAR_KNEE;
      case LEFT_ANKLE -> BodyPoint.REAR_ANKLE;
      case LEFT_HEEL -> BodyPoint.REAR_HEEL;
      case LEFT_FOOT_INDEX -> BodyPoint.REAR_TOE;
      default -> BodyPoint.NEAR_EAR;
    };
  }
}
