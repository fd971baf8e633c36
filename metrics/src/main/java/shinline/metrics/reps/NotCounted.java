package shinline.metrics.reps;

/**
 * A movement that is not a rep, and why; so that the coach does not wonder where it went.
 *
 * @param fromS start of the movement, seconds
 * @param toS end of the movement, seconds
 */
public record NotCounted(double fromS, double toS, Reason reason) {

  /** Why a movement was not counted. */
  public enum Reason {
    /** The film begins, or the athlete comes into view, after it has begun. */
    STARTS_PART_WAY,
    /** The film ends, or the athlete is lost from view, before it is done. */
    ENDS_PART_WAY,
    /** The hip moves too little against the largest rep. */
    TOO_SMALL,
    /** The front foot was not seen where it is planted. */
    NOT_IN_STANCE,
    /** The athlete was not seen well enough to follow the hips. */
    NOT_SEEN
  }
}
