package shinline.metrics.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.target.TempoTarget;

/** Every shipped limit of every rule: kept just on this side of it, broken just on that. */
class FlagLimitTest {
  /** Share of the limit that is just below, and just above. */
  private static final double JUST = 1e-6;

  private static final double NO_PITCH = 0;

  /** On which side of the limit the fault is. */
  private enum FaultIs {
    ABOVE,
    BELOW
  }

  /**
   * A limit and the evidence that moves across it in the last of three reps.
   *
   * @param rep the last rep, when its value is so much, in the key's unit
   */
  private record Edge(
      FlagKind kind, CalibrationKey key, FaultIs fault, DoubleFunction<EvidenceMaker> rep) {
    @Override
    public String toString() {
      return kind + " by " + key.word();
    }
  }

  private static final double BOTTOM_LEAN = EvidenceMaker.CLEAN_BOTTOM_LEAN_DEG;

  /** No default: a new kind does not compile until it has its edges here. */
  private static List<Edge> edges(FlagKind kind, Calibration limits) {
    return switch (kind) {
      case LEAN_GROWS ->
          List.of(
              above(kind, CalibrationKey.LEAN_GROWS_LIMIT, v -> rep().leanBottom(BOTTOM_LEAN + v)),
              // No deeper lean than the first rep's, but from a top that leans back.
              above(
                  kind, CalibrationKey.LEAN_GROWS_IN_ONE_REP, v -> rep().leanTop(BOTTOM_LEAN - v)),
              above(
                  kind,
                  CalibrationKey.BAR_LEAN_GROWS_LIMIT,
                  v -> rep().byBar(EvidenceMaker.CLEAN_BAR_LEAN_DEG + v, 0)));
      case HIPS_FIRST ->
          List.of(
              above(kind, CalibrationKey.HIPS_FIRST_LIMIT, v -> rep().leanGain(v)),
              above(
                  kind,
                  CalibrationKey.BAR_HIPS_FIRST_LIMIT,
                  v -> rep().byBar(EvidenceMaker.CLEAN_BAR_LEAN_DEG, v)));
      case HINGE_SHIFT -> {
        double open = 2 * limits.value(CalibrationKey.HINGE_SHIFT_LIMIT);
        double back = 2 * limits.value(CalibrationKey.HINGE_SHIFT_HIP_BACK);
        yield List.of(
            above(kind, CalibrationKey.HINGE_SHIFT_LIMIT, v -> rep().shinLess(v).hipBack(back)),
            above(kind, CalibrationKey.HINGE_SHIFT_HIP_BACK, v -> rep().shinLess(open).hipBack(v)));
      }
      case BACK_ROUNDS ->
          List.of(above(kind, CalibrationKey.BACK_ROUNDS_LIMIT, v -> rep().backBow(v)));
      case BACK_ARCHES ->
          List.of(above(kind, CalibrationKey.BACK_ARCHES_LIMIT, v -> rep().backBow(-v)));
      case HEEL_RISE -> List.of(above(kind, CalibrationKey.HEEL_RISE_LIMIT, v -> rep().heel(v)));
      case FOREFOOT_RISE ->
          List.of(above(kind, CalibrationKey.FOREFOOT_RISE_LIMIT, v -> rep().forefoot(v)));
      case REAR_PUSH ->
          List.of(
              above(
                  kind,
                  CalibrationKey.REAR_PUSH_LIMIT,
                  v -> rep().rearOpen(EvidenceMaker.CLEAN_REAR_OPEN_DEG + v)));
      case WOBBLE -> List.of(above(kind, CalibrationKey.WOBBLE_LIMIT, v -> rep().wobble(v)));
      case SHALLOW ->
          List.of(
              below(
                  kind,
                  CalibrationKey.SHALLOW_LIMIT,
                  v -> rep().travel(v * EvidenceMaker.CLEAN_TRAVEL)));
      case LOWERING_RUSHED ->
          List.of(
              below(
                  kind,
                  CalibrationKey.LOWERING_RUSHED_LIMIT,
                  v -> rep().lowering(v * EvidenceMaker.CLEAN_LOWERING_S)));
      case HOLD_SKIPPED ->
          List.of(
              below(
                  kind,
                  CalibrationKey.HOLD_SKIPPED_LIMIT,
                  v -> rep().hold(v * EvidenceMaker.CLEAN_HOLD_S)));
      case DRIVE_SLOW ->
          List.of(
              below(
                  kind,
                  CalibrationKey.DRIVE_SLOW_LIMIT,
                  v ->
                      rep()
                          .driveSpeed(v * EvidenceMaker.CLEAN_DRIVE_SPEED)
                          .drive(2 * EvidenceMaker.CLEAN_DRIVE_S)));
      // The coach's own limit, which is in no calibration: FlagEdgeTest.
      case SHIN_OFF_TARGET -> List.of();
    };
  }

  private static EvidenceMaker rep() {
    return new EvidenceMaker();
  }

  private static Edge above(FlagKind kind, CalibrationKey key, DoubleFunction<EvidenceMaker> rep) {
    return new Edge(kind, key, FaultIs.ABOVE, rep);
  }

  private static Edge below(FlagKind kind, CalibrationKey key, DoubleFunction<EvidenceMaker> rep) {
    return new Edge(kind, key, FaultIs.BELOW, rep);
  }

  private static List<Calibration> shipped() {
    return List.of(ShippedCalibration.HEAVY, ShippedCalibration.FULL);
  }

  private static Stream<Edge> edges(Calibration limits) {
    return Stream.of(FlagKind.values()).flatMap(kind -> edges(kind, limits).stream());
  }

  static Stream<Edge> everyEdge() {
    return edges(ShippedCalibration.HEAVY);
  }

  private static List<FlagKind> found(Calibration limits, double pitchDeg, EvidenceMaker last) {
    // The first reps as the last one is seen, so that a bar's end is held against a bar's end.
    EvidenceMaker clean = last.isByBar() ? rep().byBar(EvidenceMaker.CLEAN_BAR_LEAN_DEG, 0) : rep();
    List<RepEvidence> reps = List.of(clean.make(), clean.make(), last.make());
    List<List<Fault>> faults = new FaultFinder(limits, TempoTarget.any(), 0.3, pitchDeg).find(reps);
    assertThat(faults.get(0)).isEmpty();
    assertThat(faults.get(1)).isEmpty();
    return faults.get(2).stream().map(Fault::kind).toList();
  }

  @ParameterizedTest
  @MethodSource("everyEdge")
  void aLimitIsKeptOnOneSideAndBrokenOnTheOther(Edge named) {
    for (Calibration limits : shipped()) {
      Edge edge =
          edges(named.kind(), limits).stream()
              .filter(e -> e.key() == named.key())
              .findFirst()
              .orElseThrow();
      double limit = limits.value(edge.key());
      double sign = edge.fault() == FaultIs.ABOVE ? 1 : -1;
      assertThat(found(limits, NO_PITCH, edge.rep().apply(limit * (1 - sign * JUST))))
          .as("%s, %s, kept", limits.model(), edge)
          .isEmpty();
      assertThat(found(limits, NO_PITCH, edge.rep().apply(limit * (1 + sign * JUST))))
          .as("%s, %s, broken", limits.model(), edge)
          .containsExactly(edge.kind());
    }
  }

  /** The limit that a kind names in the catalogue, and every further one that goes by its name. */
  @Test
  void noLimitOfTheCalibrationIsLeftOut() {
    Set<CalibrationKey> tried =
        everyEdge()
            .map(Edge::key)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(CalibrationKey.class)));
    // Each has its own test below.
    tried.addAll(
        EnumSet.of(
            CalibrationKey.HEEL_RISE_STEEP,
            CalibrationKey.HEEL_RISE_PITCH,
            CalibrationKey.LOWERING_RUSHED_ALWAYS,
            CalibrationKey.HOLD_SKIPPED_REAL_HOLD));
    // What a rule looks at, no limit: BarLeanTest and FlagEdgeTest hold it against closed forms.
    tried.addAll(
        EnumSet.of(
            CalibrationKey.HIPS_FIRST_UNTIL,
            CalibrationKey.REAR_PUSH_UNTIL,
            CalibrationKey.WOBBLE_SLOWEST,
            CalibrationKey.WOBBLE_QUICKEST));
    List<CalibrationKey> left = new ArrayList<>();
    for (FlagKind kind : FlagKind.values()) {
      for (CalibrationKey key : CalibrationKey.values()) {
        boolean ofKind =
            key.word().startsWith(kind.jsonName() + ".")
                || key.word().equals("bar." + kind.jsonName())
                || kind.limitKey().equals(java.util.Optional.of(key));
        if (ofKind && !tried.contains(key)) {
          left.add(key);
        }
      }
    }
    assertThat(left).isEmpty();
  }

  /** Out of a shallow bottom the front knee opens less, and the rear one seems to open more. */
  @Test
  void aShallowRepIsNoPushOfTheRearFoot() {
    for (Calibration limits : shipped()) {
      double open =
          EvidenceMaker.CLEAN_REAR_OPEN_DEG + 2 * limits.value(CalibrationKey.REAR_PUSH_LIMIT);
      double just = limits.value(CalibrationKey.SHALLOW_LIMIT) * EvidenceMaker.CLEAN_TRAVEL;
      assertThat(found(limits, 0, rep().rearOpen(open).travel(just * (1 + JUST))))
          .containsExactly(FlagKind.REAR_PUSH);
      assertThat(found(limits, 0, rep().rearOpen(open).travel(just * (1 - JUST))))
          .containsExactly(FlagKind.SHALLOW);
    }
  }

  /** Up or down alike; up to the steep angle nothing changes. */
  @Test
  void fromASteepCameraAHeelHasToRiseMore() {
    for (Calibration limits : shipped()) {
      double flat = limits.value(CalibrationKey.HEEL_RISE_LIMIT);
      double steep = limits.value(CalibrationKey.HEEL_RISE_STEEP);
      double more = limits.value(CalibrationKey.HEEL_RISE_PITCH);
      for (double sign : new double[] {1, -1}) {
        assertThat(found(limits, sign * steep, rep().heel(flat * (1 + JUST))))
            .containsExactly(FlagKind.HEEL_RISE);
        double limit = flat + 5 * more;
        assertThat(found(limits, sign * (steep + 5), rep().heel(limit * (1 - JUST)))).isEmpty();
        assertThat(found(limits, sign * (steep + 5), rep().heel(limit * (1 + JUST))))
            .containsExactly(FlagKind.HEEL_RISE);
      }
    }
  }

  /** One rep whose begin was misread as far too early must not make all others rushed. */
  @Test
  void theSlowestLoweringOfThreeSetsNoMeasure() {
    for (Calibration limits : shipped()) {
      RepEvidence usual = rep().lowering(1).make();
      List<RepEvidence> reps = List.of(rep().lowering(9).make(), usual, usual);
      assertThat(new FaultFinder(limits, TempoTarget.any(), 0.3, NO_PITCH).find(reps))
          .allSatisfy(faults -> assertThat(faults).isEmpty());
    }
  }

  /** A short way down takes less time. */
  @Test
  void aShortRangeMayBeQuicker() {
    for (Calibration limits : shipped()) {
      double always = limits.value(CalibrationKey.LOWERING_RUSHED_ALWAYS);
      for (double side : new double[] {-JUST, JUST}) {
        RepEvidence quick = rep().travel(0.1).lowering(always / 2 * (1 + side)).make();
        List<List<Fault>> faults =
            new FaultFinder(limits, TempoTarget.any(), 0.3, NO_PITCH).find(List.of(quick, quick));
        assertThat(faults.get(1).stream().map(Fault::kind).toList())
            .isEqualTo(side < 0 ? List.of(FlagKind.LOWERING_RUSHED) : List.of());
      }
    }
  }

  /** A set all of whose lowerings are as quick: none is quicker than the set's own. */
  @Test
  void aLoweringCanBeTooShortWhateverTheSet() {
    for (Calibration limits : shipped()) {
      double always = limits.value(CalibrationKey.LOWERING_RUSHED_ALWAYS);
      for (double side : new double[] {-JUST, JUST}) {
        RepEvidence quick = rep().lowering(always * (1 + side)).make();
        List<List<Fault>> faults =
            new FaultFinder(limits, TempoTarget.any(), 0.3, NO_PITCH).find(List.of(quick, quick));
        assertThat(faults.get(1).stream().map(Fault::kind).toList())
            .isEqualTo(side < 0 ? List.of(FlagKind.LOWERING_RUSHED) : List.of());
      }
    }
  }

  /** Where nobody holds, nobody skips a hold. */
  @Test
  void onlyASetWithARealHoldCanHaveOneSkipped() {
    for (Calibration limits : shipped()) {
      double real = limits.value(CalibrationKey.HOLD_SKIPPED_REAL_HOLD);
      for (double side : new double[] {-JUST, JUST}) {
        List<RepEvidence> reps =
            List.of(rep().hold(real * (1 + side)).make(), rep().hold(0).make());
        List<List<Fault>> faults =
            new FaultFinder(limits, TempoTarget.any(), 0.3, NO_PITCH).find(reps);
        assertThat(faults.get(1).stream().map(Fault::kind).toList())
            .isEqualTo(side > 0 ? List.of(FlagKind.HOLD_SKIPPED) : List.of());
      }
    }
  }

  /** A rep over a shorter way is slower: its drive must take longer, too. */
  @Test
  void aDriveThatTakesNoLongerIsNotSlow() {
    for (Calibration limits : shipped()) {
      double limit = limits.value(CalibrationKey.DRIVE_SLOW_LIMIT);
      double slow = 0.9 * limit * EvidenceMaker.CLEAN_DRIVE_SPEED;
      double lasts = EvidenceMaker.CLEAN_DRIVE_S / limit;
      assertThat(found(limits, NO_PITCH, rep().driveSpeed(slow).drive(lasts * (1 - JUST))))
          .isEmpty();
      assertThat(found(limits, NO_PITCH, rep().driveSpeed(slow).drive(lasts * (1 + JUST))))
          .containsExactly(FlagKind.DRIVE_SLOW);
    }
  }

  /** What the smaller model's points cannot tell as finely has the wider limit. */
  @Test
  void theSmallerModelIsNowhereHeldToANarrowerLimit() {
    Map<CalibrationKey, FaultIs> sides =
        everyEdge().collect(Collectors.toMap(Edge::key, Edge::fault));
    sides.forEach(
        (key, side) -> {
          double sign = side == FaultIs.ABOVE ? 1 : -1;
          assertThat(sign * ShippedCalibration.FULL.value(key))
              .as(key.word())
              .isGreaterThanOrEqualTo(sign * ShippedCalibration.HEAVY.value(key));
        });
  }
}
