package shinline.metrics.ladder;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/**
 * A bar and the discs that go on it, always the same on both ends. There are as many pairs of each
 * size as are wanted.
 *
 * @param bar above 0
 * @param discs mass of one disc of each pair, same unit as the bar, at least one, at most {@link
 *     #DECIMALS} decimals
 */
public record BarAndDiscs(Mass bar, List<Mass> discs) implements Rack {

  /** Finest disc: a hundredth of a kilogram or pound. */
  public static final int DECIMALS = 2;

  /** No bar holds more, kg or lb; keeps the search for a load small. */
  private static final BigDecimal MOST = BigDecimal.valueOf(2000);

  public BarAndDiscs {
    discs = discs.stream().sorted().toList();
    MassUnit unit = bar.unit();
    if (bar.isZero()
        || discs.isEmpty()
        || discs.stream()
            .anyMatch(d -> d.isZero() || d.unit() != unit || d.value().scale() > DECIMALS)) {
      throw new IllegalArgumentException("bar of " + bar + " and discs of " + discs);
    }
  }

  @Override
  public Optional<Mass> atMost(Mass limit) {
    Mass asked = limit.in(bar.unit());
    // An estimate a hair below a full load, by its last digit, is that load.
    BigDecimal most =
        asked.value().setScale(12, RoundingMode.HALF_EVEN).min(MOST).subtract(bar.value());
    if (most.signum() < 0) {
      return Optional.empty();
    }
    int room = steps(most);
    return Optional.of(withDiscs(sums(room).previousSetBit(room)));
  }

  @Override
  public Optional<Mass> nextAbove(Mass load) {
    if (load.compareTo(bar) < 0) {
      return Optional.of(bar);
    }
    Mass top = new Mass(MOST, bar.unit());
    if (load.compareTo(top) >= 0) {
      return Optional.empty();
    }
    // One smallest pair more than what is at hand below is at hand too, so the next is not farther.
    int below = steps(load.in(bar.unit()).value().subtract(bar.value()));
    BitSet sums = sums(below + 2 * steps(discs.get(0).value()) + 1);
    for (int sum = sums.nextSetBit(below); sum >= 0; sum = sums.nextSetBit(sum + 1)) {
      Mass found = withDiscs(sum);
      if (found.compareTo(load) > 0) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }

  @Override
  public Mass lightest() {
    return bar;
  }

  /** Sums of pairs up to a number of the finest steps; nothing at all is one of them. */
  private BitSet sums(int most) {
    BitSet sums = new BitSet(most + 1);
    sums.set(0);
    for (Mass disc : discs) {
      int pair = 2 * steps(disc.value());
      for (int sum = pair; sum <= most; sum++) {
        if (sums.get(sum - pair)) {
          sums.set(sum);
        }
      }
    }
    return sums;
  }

  private static int steps(BigDecimal mass) {
    return mass.movePointRight(DECIMALS).setScale(0, RoundingMode.FLOOR).intValueExact();
  }

  private Mass withDiscs(int steps) {
    return new Mass(bar.value().add(BigDecimal.valueOf(steps, DECIMALS)), bar.unit());
  }
}
