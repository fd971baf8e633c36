package shinline.metrics.result;

/**
 * Upward speed of mid-hip in the drive of a rep, metres a second.
 *
 * @param meanSpeed over the drive
 * @param peakSpeed highest within it
 */
public record DriveReading(Reading meanSpeed, Reading peakSpeed) {}
