package shinline.metrics.load;

import java.util.Optional;

/**
 * The load of a set.
 *
 * @param mass of one dumbbell, or of the bar with its discs; above 0
 * @param kind not {@link LoadKind#NONE}: a set without load has no training load
 * @param vest what the athlete wears besides, above 0
 */
public record TrainingLoad(Mass mass, LoadKind kind, Optional<Mass> vest) {

  public TrainingLoad {
    if (mass.isZero() || kind == LoadKind.NONE) {
      throw new IllegalArgumentException("a load of " + mass + ", " + kind.word());
    }
    vest = vest.filter(v -> !v.isZero());
  }

  /** The same kind and vest with another mass. */
  public TrainingLoad with(Mass other) {
    return new TrainingLoad(other, kind, vest);
  }

  /** Same mass (across units), kind and vest. */
  public boolean sameAs(TrainingLoad other) {
    return kind == other.kind
        && mass.sameAs(other.mass)
        && vestOrNothing().sameAs(other.vestOrNothing());
  }

  private Mass vestOrNothing() {
    return vest.orElse(Mass.zero(mass.unit()));
  }
}
