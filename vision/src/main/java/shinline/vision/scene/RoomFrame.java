package shinline.vision.scene;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One picture of the room.
 *
 * @param picture upright, square pixels, 8-bit BGR or grey; stays the caller's
 * @param athlete where the athlete is, if known
 */
public record RoomFrame(Mat picture, Optional<PersonBox> athlete) {}
