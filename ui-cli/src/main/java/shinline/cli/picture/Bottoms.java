package shinline.cli.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;

/**
 * The best and the worst bottom of a set, of those that have a picture.
 *
 * @param worst empty when no bottom is worse than the best
 */
public record Bottoms(Optional<RepPicture> best, Optional<RepPicture> worst) {

  /** Of reps, by the trouble that verdict and flags make. */
  public static Bottoms of(List<RepResult> reps, RepPictures pictures) {
    List<RepResult> shown =
        reps.stream().filter(r -> pictures.bottom(r.rep()).isPresent()).toList();
    Optional<RepResult> best = shown.stream().min(Comparator.comparingDouble(Bottoms::trouble));
    Optional<RepResult> worst =
        shown.stream()
            .max(Comparator.comparingDouble(Bottoms::trouble))
            .filter(w -> best.filter(b -> trouble(b) < trouble(w)).isPresent());
    return new Bottoms(
        best.flatMap(r -> pictures.bottom(r.rep())), worst.flatMap(r -> pictures.bottom(r.rep())));
  }

  /** Weight times sureness of the flags; a verdict weighs as one flag of its kind would. */
  private static double trouble(RepResult rep) {
    double verdict =
        rep.verdict()
            .map(
                told ->
                    switch (told) {
                      case HIT -> 0.0;
                      case NEAR -> 0.5;
                      case UNCLEAR -> 1.0;
                      case MISS -> 3.0;
                    })
            .orElse(0.0);
    return verdict
        + rep.flags().stream().mapToDouble((Flag f) -> f.kind().weight() * f.confidence()).sum();
  }
}
