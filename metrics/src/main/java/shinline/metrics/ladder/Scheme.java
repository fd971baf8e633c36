package shinline.metrics.ladder;

/**
 * Sets and reps.
 *
 * @param sets 1 or more
 * @param reps in each set, 1 or more
 */
public record Scheme(int sets, int reps) {

  public Scheme {
    if (sets < 1 || reps < 1) {
      throw new IllegalArgumentException(sets + " x " + reps);
    }
  }
}
