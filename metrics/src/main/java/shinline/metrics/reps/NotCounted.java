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
    STARTS_PART_WAY("the film begins, or the athlete comes into view, after this rep has begun"),
    ENDS_PART_WAY("the film ends, or the athlete is lost from view, before this rep is done"),
    TOO_SMALL("the hip moves too little against the largest rep to be one"),
    NOT_IN_STANCE("the front foot was not seen where it is planted: not in the split stance"),
    NOT_SEEN("the athlete was not seen well enough to follow the hips");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /** For the coach. */
    public String words() {
      return words;
    }
  }
}
