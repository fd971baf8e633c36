package shinline.vision.clip;

/**
 * What is written into a film's own file, for whoever gets it without a word beside it. A player
 * shows it under the file's details.
 *
 * @param title one line; may be empty
 * @param comment may be empty
 */
public record FilmNotes(String title, String comment) {
  /** Nothing is noted. */
  public static final FilmNotes NONE = new FilmNotes("", "");
}
