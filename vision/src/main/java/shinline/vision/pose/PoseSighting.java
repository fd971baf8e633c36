package shinline.vision.pose;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** What the pose model saw in one frame. */
public sealed interface PoseSighting {

  /** The person, if there is one. */
  default Optional<Found> pose() {
    return fold(Optional::of, nobody -> Optional.empty());
  }

  /** Calls the function that fits. */
  <T> T fold(Function<Found, T> found, Function<NobodyFound, T> nobody);

  /**
   * A person.
   *
   * @param keypoints all 33 landmarks, refined by their heatmaps, not smoothed over time
   * @param poseFlag the model's probability, 0.5…1, that a person is in the region; below 0.5 only
   *     where a caller gave the region
   * @param region where the model looked
   */
  record Found(Map<BodyLandmark, Keypoint> keypoints, double poseFlag, RegionOfInterest region)
      implements PoseSighting {
    public Found {
      if (keypoints.size() != BodyLandmark.values().length) {
        throw new IllegalArgumentException("A pose has 33 landmarks, not " + keypoints.size());
      }
      keypoints = Collections.unmodifiableMap(new EnumMap<>(keypoints));
    }

    /** One landmark. */
    public Keypoint at(BodyLandmark landmark) {
      return Objects.requireNonNull(keypoints.get(landmark));
    }

    @Override
    public <T> T fold(Function<Found, T> found, Function<NobodyFound, T> nobody) {
      return found.apply(this);
    }
  }

  /**
   * Nobody.
   *
   * @param reason which step found nothing
   */
  record NobodyFound(Reason reason) implements PoseSighting {
    @Override
    public <T> T fold(Function<Found, T> found, Function<NobodyFound, T> nobody) {
      return nobody.apply(this);
    }
  }

  /** Why nobody was found. */
  enum Reason {
    /** The detector saw no person in the whole frame. */
    NO_PERSON_DETECTED,
    /** The detector saw something, but the landmark model does not take it for a person. */
    NO_POSE_IN_REGION,
    /** What the landmark model gave, in several regions, no body can be. */
    NO_BODY_CAN_BE_SO,
    /** Somebody is followed, but was not looked at in this frame. */
    NOT_LOOKED_AT
  }
}
