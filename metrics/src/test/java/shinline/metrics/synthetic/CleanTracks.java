package shinline.metrics.synthetic;

import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.cleaning.TrackCleaning;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.RawTrack;

/** Raw tracks on their way as far as cleaning. */
public final class CleanTracks {
  private CleanTracks() {}

  public static CleanTrack of(RawTrack raw) {
    return new LegIdentity(ShippedCalibration.HEAVY)
        .resolve(raw)
        .fold(
            resolved -> new TrackCleaning(ShippedCalibration.HEAVY).clean(resolved.track()),
            unresolved -> {
              throw new AssertionError(unresolved.doubt().toString());
            });
  }
}
