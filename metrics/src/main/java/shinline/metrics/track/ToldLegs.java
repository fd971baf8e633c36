package shinline.metrics.track;

import java.util.Optional;

/**
 * What somebody who was there says of the stance; empty where the clip is to tell it.
 *
 * @param facing side of the picture the athlete faces
 * @param frontLeg the athlete's own leg that is ahead
 */
public record ToldLegs(Optional<Side> facing, Optional<Side> frontLeg) {
  public static final ToldLegs NOTHING = new ToldLegs(Optional.empty(), Optional.empty());

  public ToldLegs withFrontLeg(Side leg) {
    return new ToldLegs(facing, Optional.of(leg));
  }
}
