package shinline.metrics.fault;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.back.BackReading;
import shinline.metrics.bar.BarLean;

/**
 * What the faults of one rep are read from. Lengths are shares of stature.
 *
 * @param leanTopDeg trunk lean before the rep
 * @param leanBottomDeg trunk lean at the bottom
 * @param leanGainDriveDeg most lean gained from the bottom within the first part of the drive
 * @param leanGainAtS when that was
 * @param shinDeg shin angle at the bottom
 * @param hipAhead mid-hip ahead of the front ankle at the bottom
 * @param heelRise most the heel was above its standing level
 * @param heelAtS when that was
 * @param forefootRise most the toe was above its standing level
 * @param forefootAtS when that was
 * @param rearOpenDeg opening of the rear knee beyond that of the front knee within the first part
 *     of the drive
 * @param travel hip travel
 * @param driveSpeed mean upward speed of the hip in the drive, statures a second
 * @param wobble how far the shin sways to either side in lowering and hold, quicker than the
 *     movement itself, degrees
 * @param barLean what the end of a bar on the back tells of the trunk
 * @param back the bow of the back at the bottom against standing
 */
public record RepEvidence(
    double startS,
    double bottomStartS,
    double bottomS,
    double bottomEndS,
    double endS,
    double loweringS,
    double holdS,
    double driveS,
    OptionalDouble leanTopDeg,
    OptionalDouble leanBottomDeg,
    OptionalDouble leanGainDriveDeg,
    double leanGainAtS,
    OptionalDouble shinDeg,
    OptionalDouble hipAhead,
    OptionalDouble heelRise,
    double heelAtS,
    OptionalDouble forefootRise,
    double forefootAtS,
    OptionalDouble rearOpenDeg,
    double travel,
    OptionalDouble driveSpeed,
    OptionalDouble wobble,
    BarLean barLean,
    Optional<BackReading.Change> back) {}
