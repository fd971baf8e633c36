package shinline.cli.doctor;

/**
 * What became of looking at one part.
 *
 * @param words what there is, and what to do about it
 */
public record Health(Part part, State state, String words) {

  /** How it stands. */
  public enum State {
    GOOD,
    /** The job can be done, with less comfort. */
    POOR,
    /** The job cannot be done until this is mended. */
    BAD
  }

  static Health good(Part part, String words) {
    return new Health(part, State.GOOD, words);
  }

  static Health poor(Part part, String words) {
    return new Health(part, State.POOR, words);
  }

  static Health bad(Part part, String words) {
    return new Health(part, State.BAD, words);
  }
}
