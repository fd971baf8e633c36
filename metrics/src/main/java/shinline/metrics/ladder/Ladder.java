package shinline.metrics.ladder;

import java.util.List;
import java.util.Optional;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;

/**
 * Steps from the easiest to the hardest.
 *
 * @param steps at least one, with ids told apart
 * @param unit of a first load where nothing on record tells the athlete's
 * @param maximum formula of the three-rep maximum
 */
public record Ladder(
    List<Step> steps, MassUnit unit, OneRepMax maximum, AtHand atHand, AdviceLimits limits) {

  public Ladder {
    steps = List.copyOf(steps);
    if (steps.isEmpty() || steps.stream().map(Step::id).distinct().count() != steps.size()) {
      throw new IllegalArgumentException("a ladder needs steps with ids told apart");
    }
  }

  public Step first() {
    return steps.get(0);
  }

  public Optional<Step> step(String id) {
    return steps.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  public Optional<Step> before(Step step) {
    return at(steps.indexOf(step) - 1);
  }

  public Optional<Step> after(Step step) {
    int index = steps.indexOf(step);
    return index < 0 ? Optional.empty() : at(index + 1);
  }

  private Optional<Step> at(int index) {
    return index >= 0 && index < steps.size() ? Optional.of(steps.get(index)) : Optional.empty();
  }
}
