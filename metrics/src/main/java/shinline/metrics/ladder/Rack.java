package shinline.metrics.ladder;

import java.util.Optional;
import shinline.metrics.load.Mass;

/** The loads of one kind that are at hand, all in one unit. */
public sealed interface Rack permits DumbbellRack, BarAndDiscs {

  /** The heaviest load that is not above the limit. */
  Optional<Mass> atMost(Mass limit);

  /** The lightest load above a load. */
  Optional<Mass> nextAbove(Mass load);

  Mass lightest();
}
