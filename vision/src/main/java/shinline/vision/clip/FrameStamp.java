package shinline.vision.clip;

/**
 * A picture's place and time, as in {@link Frame}, before anybody has looked at it.
 *
 * @param index 0-based place among all pictures of the clip
 * @param timeS seconds since the clip's first picture
 */
public record FrameStamp(int index, double timeS) {}
