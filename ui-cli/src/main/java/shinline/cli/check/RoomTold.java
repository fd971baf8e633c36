package shinline.cli.check;

import shinline.metrics.view.RoomSight;
import shinline.vision.scene.UprightEstimate;

/** What the room's lines tell, in standard deviations. */
final class RoomTold {
  private RoomTold() {}

  static RoomSight of(UprightEstimate.Found found) {
    return new RoomSight(
        found.rollDeg(),
        found.plusMinusDeg() / RoomSight.NINETY_FIVE,
        found.uprights().map(RoomTold::slope),
        found.levels().map(RoomTold::slope));
  }

  private static RoomSight.Slope slope(UprightEstimate.Convergence lines) {
    return new RoomSight.Slope(lines.perLongSide(), lines.plusMinus() / RoomSight.NINETY_FIVE);
  }
}
