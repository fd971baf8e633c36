package shinline.metrics.ladder;

import java.util.EnumMap;
import java.util.Map;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.MassUnit;

/** The loads at hand in both units. */
public record AtHand(Map<MassUnit, Racks> racks) {

  /** The loads of one unit; a guided bar may weigh something else than the free one. */
  public record Racks(DumbbellRack dumbbells, BarAndDiscs bar, BarAndDiscs guidedBar) {}

  public AtHand {
    racks = Map.copyOf(new EnumMap<>(racks));
    for (MassUnit unit : MassUnit.values()) {
      if (!racks.containsKey(unit)) {
        throw new IllegalArgumentException("no loads at hand in " + unit.word());
      }
    }
  }

  /**
   * @throws IllegalArgumentException for {@link LoadKind#NONE}
   */
  public Rack of(LoadKind kind, MassUnit unit) {
    Racks here = racks.get(unit);
    if (here == null) {
      throw new IllegalStateException("checked on construction: " + unit);
    }
    return switch (kind) {
      case EACH_HAND -> here.dumbbells();
      case BAR -> here.bar();
      case GUIDED_BAR -> here.guidedBar();
      case NONE -> throw new IllegalArgumentException("nothing is not at hand");
    };
  }
}
