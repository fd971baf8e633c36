package shinline.vision.clip;

/**
 * A stretch of a clip whose pictures rest on one that could not be decoded whole. They look whole,
 * and parts of them may show what was there before, or nothing that ever was.
 *
 * @param fromS seconds from the first picture: the last sound one
 * @param toS seconds from the first picture: the next that rests on no other
 */
public record DoubtfulPictures(double fromS, double toS) {}
