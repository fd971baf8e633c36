package shinline.metrics.result;

import java.util.Optional;

/**
 * The drive of a rep.
 *
 * @param meanSpeed upward speed of mid-hip over the drive, metres a second
 * @param peakSpeed highest within it, metres a second
 * @param bar the bar on the back; empty when there is none
 */
public record DriveReading(Reading meanSpeed, Reading peakSpeed, Optional<BarReading> bar) {

  /** Without a bar. */
  public DriveReading(Reading meanSpeed, Reading peakSpeed) {
    this(meanSpeed, peakSpeed, Optional.empty());
  }

  /** The same with a bar. */
  public DriveReading withBar(BarReading seen) {
    return new DriveReading(meanSpeed, peakSpeed, Optional.of(seen));
  }
}
