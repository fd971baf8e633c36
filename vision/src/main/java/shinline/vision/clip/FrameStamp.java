package shinline.vision.clip;

/**
 * A picture that was passed over: its place and time, as in {@link Frame}, without the picture.
 *
 * @param index 0-based place among the pictures handed out
 * @param timeS seconds since the clip's first picture
 */
public record FrameStamp(int index, double timeS) {}
