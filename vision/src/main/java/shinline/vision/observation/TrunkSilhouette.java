package shinline.vision.observation;

import java.util.List;
import java.util.Optional;

/**
 * The trunk's edges in one frame, in its own pixels.
 *
 * @param frame index of the frame in the clip
 * @param timeS seconds from the first frame
 * @param hip mid-hip
 * @param shoulder mid-shoulder
 * @param left the edge toward the picture's left, one for each place asked for along the line from
 *     hip to shoulder; empty where it was not seen, or an arm lies over it
 * @param right the same toward the picture's right
 */
public record TrunkSilhouette(
    int frame,
    double timeS,
    PicturePoint hip,
    PicturePoint shoulder,
    List<Optional<PicturePoint>> left,
    List<Optional<PicturePoint>> right) {
  public TrunkSilhouette {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }
}
