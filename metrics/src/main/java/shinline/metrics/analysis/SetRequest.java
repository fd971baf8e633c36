package shinline.metrics.analysis;

import java.util.Optional;
import shinline.metrics.target.Target;
import shinline.metrics.track.ToldLegs;

/**
 * What the coach asks of a set and states of it. What the clip shows is kept apart, in {@link
 * ClipObservations}; where the two speak of the same thing the coach's word counts.
 *
 * @param target what each rep is judged against
 * @param scale lengths that centimetres may come from
 * @param overrides what the coach states and the program need not find out
 */
public record SetRequest(Target target, KnownLengths scale, Overrides overrides) {

  /**
   * True lengths of what is in the picture.
   *
   * @param athleteHeightM standing height, 1.0 to 2.5 m
   * @param benchHeightM height of the bench the rear foot rests on, 0.1 to 1.0 m
   */
  public record KnownLengths(Optional<Double> athleteHeightM, Optional<Double> benchHeightM) {
    public static final KnownLengths NONE = new KnownLengths(Optional.empty(), Optional.empty());
  }

  /**
   * What the coach knows better than the program would guess.
   *
   * @param rollDeg turn of the camera, + when the picture must be turned counter-clockwise to stand
   *     upright
   * @param pitchDeg how far the camera looks down, minus for up
   * @param legs which way the athlete faces, and which leg is ahead
   */
  public record Overrides(Optional<Double> rollDeg, Optional<Double> pitchDeg, ToldLegs legs) {
    public static final Overrides NONE =
        new Overrides(Optional.empty(), Optional.empty(), ToldLegs.NOTHING);
  }

  /** Measures and faults only, in shares of the body, everything found out from the clip. */
  public static SetRequest plain() {
    return of(Target.none());
  }

  public static SetRequest of(Target target) {
    return new SetRequest(target, KnownLengths.NONE, Overrides.NONE);
  }

  public SetRequest withAthleteHeightM(double heightM) {
    return with(new KnownLengths(Optional.of(heightM), scale.benchHeightM()));
  }

  public SetRequest withBenchHeightM(double heightM) {
    return with(new KnownLengths(scale.athleteHeightM(), Optional.of(heightM)));
  }

  public SetRequest withRollDeg(double rollDeg) {
    return with(new Overrides(Optional.of(rollDeg), overrides.pitchDeg(), overrides.legs()));
  }

  public SetRequest withPitchDeg(double pitchDeg) {
    return with(new Overrides(overrides.rollDeg(), Optional.of(pitchDeg), overrides.legs()));
  }

  public SetRequest withLegs(ToldLegs legs) {
    return with(new Overrides(overrides.rollDeg(), overrides.pitchDeg(), legs));
  }

  private SetRequest with(Overrides told) {
    return new SetRequest(target, scale, told);
  }

  private SetRequest with(KnownLengths lengths) {
    return new SetRequest(target, lengths, overrides);
  }
}
