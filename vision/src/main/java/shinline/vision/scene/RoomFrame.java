package shinline.vision.scene;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One picture of the room.
 *
 * @param segments the straight segments in it
 * @param athlete where the athlete is, if known
 * @param toCommonView moves a point of this picture to its place in the view that all pictures of
 *     the room are brought to; {@link Similarity#IDENTITY} for a camera that stood still
 */
public record RoomFrame(
    RoomSegments segments, Optional<PersonBox> athlete, Similarity toCommonView) {

  /**
   * @param picture upright, square pixels, 8-bit BGR or grey; stays the caller's
   */
  public RoomFrame(Mat picture, Optional<PersonBox> athlete, Similarity toCommonView) {
    this(segments(picture), athlete, toCommonView);
  }

  /** Of a camera that stood still. */
  public RoomFrame(Mat picture, Optional<PersonBox> athlete) {
    this(picture, athlete, Similarity.IDENTITY);
  }

  private static RoomSegments segments(Mat picture) {
    try (RoomPicture room = RoomPicture.of(picture)) {
      return room.segments();
    }
  }
}
