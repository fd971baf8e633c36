package shinline.metrics.ladder;

import java.util.List;
import java.util.Optional;
import shinline.metrics.load.Mass;

/**
 * Pairs of dumbbells.
 *
 * @param sizes mass of one of each pair, at least one; kept in ascending order
 */
public record DumbbellRack(List<Mass> sizes) implements Rack {

  public DumbbellRack {
    sizes = sizes.stream().sorted().toList();
    if (sizes.isEmpty() || lightestOf(sizes).isZero()) {
      throw new IllegalArgumentException("dumbbells of " + sizes);
    }
  }

  @Override
  public Optional<Mass> atMost(Mass limit) {
    return sizes.stream().filter(m -> m.compareTo(limit) <= 0).reduce((a, b) -> b);
  }

  @Override
  public Optional<Mass> nextAbove(Mass load) {
    return sizes.stream().filter(m -> m.compareTo(load) > 0).findFirst();
  }

  @Override
  public Mass lightest() {
    return lightestOf(sizes);
  }

  private static Mass lightestOf(List<Mass> sizes) {
    return sizes.get(0);
  }
}
