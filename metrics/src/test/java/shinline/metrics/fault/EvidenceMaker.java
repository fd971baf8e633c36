package shinline.metrics.fault;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.back.BackLine;
import shinline.metrics.back.BackReading;
import shinline.metrics.bar.BarLean;

/** What was seen of a clean rep, but for what a test changes. Lengths are shares of stature. */
final class EvidenceMaker {
  static final double CLEAN_BOTTOM_LEAN_DEG = 14;
  static final double CLEAN_BAR_LEAN_DEG = 9;
  static final double CLEAN_REAR_OPEN_DEG = 5;
  static final double CLEAN_TRAVEL = 0.25;
  static final double CLEAN_LOWERING_S = 2;
  static final double CLEAN_HOLD_S = 1;
  static final double CLEAN_DRIVE_S = 1;
  static final double CLEAN_DRIVE_SPEED = 0.25;
  private static final double CLEAN_SHIN_DEG = 20;

  /** Three different instants, so that a fault shows at its own. */
  static final double GAIN_AT_S = 4.3;

  static final double BAR_GAIN_AT_S = 4.4;
  static final double HEEL_AT_S = 2.7;
  static final double FOREFOOT_AT_S = 2.8;
  static final double BOTTOM_S = 3.5;
  static final double BOTTOM_END_S = 4;

  private double leanTopDeg = 6;
  private double leanBottomDeg = CLEAN_BOTTOM_LEAN_DEG;
  private double leanGainDeg;
  private double shinDeg = CLEAN_SHIN_DEG;
  private double hipAhead = -0.1;
  private double heel;
  private double forefoot;
  private double rearOpenDeg = CLEAN_REAR_OPEN_DEG;
  private double travel = CLEAN_TRAVEL;
  private double loweringS = CLEAN_LOWERING_S;
  private double holdS = CLEAN_HOLD_S;
  private double driveS = CLEAN_DRIVE_S;
  private double driveSpeed = CLEAN_DRIVE_SPEED;
  private double wobble = 0.001;
  private Optional<BarLean> bar = Optional.empty();
  private Optional<BackReading.Change> back = Optional.empty();

  EvidenceMaker leanTop(double deg) {
    leanTopDeg = deg;
    return this;
  }

  EvidenceMaker leanBottom(double deg) {
    leanBottomDeg = deg;
    return this;
  }

  EvidenceMaker leanGain(double deg) {
    leanGainDeg = deg;
    return this;
  }

  EvidenceMaker shinLess(double deg) {
    shinDeg = CLEAN_SHIN_DEG - deg;
    return this;
  }

  EvidenceMaker hipBack(double share) {
    hipAhead = -0.1 - share;
    return this;
  }

  EvidenceMaker heel(double rise) {
    heel = rise;
    return this;
  }

  EvidenceMaker forefoot(double rise) {
    forefoot = rise;
    return this;
  }

  EvidenceMaker rearOpen(double deg) {
    rearOpenDeg = deg;
    return this;
  }

  EvidenceMaker travel(double share) {
    travel = share;
    return this;
  }

  EvidenceMaker lowering(double s) {
    loweringS = s;
    return this;
  }

  EvidenceMaker hold(double s) {
    holdS = s;
    return this;
  }

  EvidenceMaker drive(double s) {
    driveS = s;
    return this;
  }

  EvidenceMaker driveSpeed(double staturesPerS) {
    driveSpeed = staturesPerS;
    return this;
  }

  EvidenceMaker wobble(double rms) {
    wobble = rms;
    return this;
  }

  EvidenceMaker backBow(double more) {
    BackLine line = new BackLine(List.of(), List.of());
    back = Optional.of(new BackReading.Change(more, BOTTOM_S, line));
    return this;
  }

  /** A disc hides the shoulders: of the trunk only the bar's end tells. */
  EvidenceMaker byBar(double bottomDeg, double gainDeg) {
    bar =
        Optional.of(
            new BarLean(OptionalDouble.of(bottomDeg), OptionalDouble.of(gainDeg), BAR_GAIN_AT_S));
    return this;
  }

  /** Neither shoulders nor a bar. */
  EvidenceMaker withoutTrunk() {
    bar = Optional.of(BarLean.UNSEEN);
    return this;
  }

  boolean isByBar() {
    return bar.isPresent();
  }

  RepEvidence make() {
    return new RepEvidence(
        1,
        3,
        BOTTOM_S,
        BOTTOM_END_S,
        5,
        loweringS,
        holdS,
        driveS,
        ofShoulders(leanTopDeg),
        ofShoulders(leanBottomDeg),
        ofShoulders(leanGainDeg),
        GAIN_AT_S,
        OptionalDouble.of(shinDeg),
        OptionalDouble.of(hipAhead),
        OptionalDouble.of(heel),
        HEEL_AT_S,
        OptionalDouble.of(forefoot),
        FOREFOOT_AT_S,
        OptionalDouble.of(rearOpenDeg),
        travel,
        OptionalDouble.of(driveSpeed),
        OptionalDouble.of(wobble),
        bar.orElse(BarLean.UNSEEN),
        back);
  }

  private OptionalDouble ofShoulders(double deg) {
    return isByBar() ? OptionalDouble.empty() : OptionalDouble.of(deg);
  }
}
