package shinline.metrics.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.synthetic.BackMaker;
import shinline.metrics.synthetic.RepPlan;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.Side;
import shinline.metrics.view.RoomSight;

/**
 * An athlete who does each fault a little less and a little more than its limit, through the whole
 * analysis. How much of it there is, is read off the closed form by the words of docs/measures.md.
 */
class FlagEdgeTest {
  private static final double STATURE_CM = 175;

  /** How near its wanted amount a fault is built in, share of it. */
  private static final double EXACT = 0.005;

  /** The fourth of five reps has the fault. */
  private static final int FAULTY = 3;

  /**
   * How one kind's amount is built in and how it is told from the closed form.
   *
   * @param motion the fourth rep when so much is built in
   * @param truth what docs/measures.md says of it, in the unit of the limit
   * @param most that may be built in
   * @param just share of the limit that is just below and just above it: what the analysis rounds
   */
  private record Family(
      DoubleFunction<RepPlan> motion,
      ToDoubleFunction<SplitSquat> truth,
      double most,
      double just) {

    /** So much built in that the truth is {@code wanted}: the truth is smooth, so secants do. */
    SplitSquat with(double wanted) {
      double before = 0;
      double amount = most;
      double offBefore = truth.applyAsDouble(set(before)) - wanted;
      double off = truth.applyAsDouble(set(amount)) - wanted;
      for (int i = 0; i < 10 && Math.abs(off) > EXACT * wanted; i++) {
        double next = amount - off * (amount - before) / (off - offBefore);
        before = amount;
        offBefore = off;
        amount = Math.max(0, Math.min(most, next));
        off = truth.applyAsDouble(set(amount)) - wanted;
      }
      assertThat(Math.abs(off)).as("%s built in", amount).isLessThan(EXACT * wanted);
      return set(amount);
    }

    private SplitSquat set(double amount) {
      RepPlan clean = plain();
      return SplitSquat.of(clean, clean, clean, motion.apply(amount), clean);
    }
  }

  private static RepPlan plain() {
    return RepPlan.clean().bottom(8, 5, 14);
  }

  private static Family family(FlagKind kind, ToDoubleFunction<SplitSquat> truth, double most) {
    return family(kind, truth, most, 0.06);
  }

  private static Family family(
      FlagKind kind, ToDoubleFunction<SplitSquat> truth, double most, double just) {
    return new Family(amount -> plain().with(kind, amount), truth, most, just);
  }

  /** No default: a new kind does not compile until an athlete does it here. */
  private static Family of(FlagKind kind) {
    return switch (kind) {
      case LEAN_GROWS -> family(kind, m -> lean(m, FAULTY) - lean(m, 0), 15);
      case HIPS_FIRST -> family(kind, FlagEdgeTest::leanGain, 25);
      case HINGE_SHIFT -> family(kind, m -> open(m, FAULTY) - open(m, 0), 20);
      case BACK_ROUNDS, BACK_ARCHES ->
          // An arc, its chord and the parabola that fits it differ by hundredths of the rise.
          family(kind, m -> built(m, kind), 0.09);
      case HEEL_RISE, FOREFOOT_RISE -> family(kind, m -> built(m, kind), 0.06);
      case REAR_PUSH -> family(kind, m -> rearOpen(m, FAULTY) - rearOpen(m, 0), 0.12, 0.1);
      case WOBBLE -> family(kind, FlagEdgeTest::wobble, 8, 0.15);
      case SHALLOW -> family(kind, m -> travel(m, FAULTY) / travel(m, 0), 25, 0.02);
      case LOWERING_RUSHED ->
          family(kind, m -> at(m, FAULTY).loweringS() / at(m, 0).loweringS(), 2);
      case HOLD_SKIPPED -> family(kind, m -> at(m, FAULTY).holdS() / at(m, 0).holdS(), 1);
      case DRIVE_SLOW -> family(kind, m -> at(m, 0).driveS() / at(m, FAULTY).driveS(), 2);
      case SHIN_OFF_TARGET -> family(kind, m -> bottom(m, Measure.SHIN), 20, 0.03);
    };
  }

  private static SplitSquat.Truth at(SplitSquat set, int rep) {
    return set.truth(rep, STATURE_CM);
  }

  private static double bottom(SplitSquat set, Measure measure) {
    return at(set, FAULTY).atBottom().get(measure);
  }

  private static double lean(SplitSquat set, int rep) {
    return at(set, rep).atBottom().get(Measure.TRUNK_LEAN);
  }

  private static double open(SplitSquat set, int rep) {
    return lean(set, rep) - at(set, rep).atBottom().get(Measure.SHIN);
  }

  private static double travel(SplitSquat set, int rep) {
    return at(set, rep).atBottom().get(Measure.HIP_TRAVEL);
  }

  private static double built(SplitSquat set, FlagKind kind) {
    return set.reps().get(FAULTY).faults().getOrDefault(kind, 0.0);
  }

  /** Lean gained out of the bottom in the first 75 % of the drive. */
  private static double leanGain(SplitSquat set) {
    SplitSquat.Truth rep = at(set, FAULTY);
    double most = 0;
    for (double t = rep.bottomEndS(); t <= rep.bottomEndS() + 0.75 * rep.driveS(); t += 0.005) {
      most = Math.max(most, SplitSquat.trunk(set.at(t)));
    }
    return most - lean(set, FAULTY);
  }

  /** What the rear knee opens over the front one in the first 30 % of the drive. */
  private static double rearOpen(SplitSquat set, int rep) {
    double from = at(set, rep).bottomEndS();
    double to = from + 0.3 * at(set, rep).driveS();
    return bend(set.at(from), "REAR")
        - bend(set.at(to), "REAR")
        - (bend(set.at(from), "FRONT") - bend(set.at(to), "FRONT"));
  }

  private static double bend(Map<BodyPoint, Point> p, String leg) {
    Point hip = p.get(BodyPoint.valueOf(leg + "_HIP"));
    Point knee = p.get(BodyPoint.valueOf(leg + "_KNEE"));
    Point ankle = p.get(BodyPoint.valueOf(leg + "_ANKLE"));
    double up = Math.atan2(hip.y() - knee.y(), hip.x() - knee.x());
    double down = Math.atan2(knee.y() - ankle.y(), knee.x() - ankle.x());
    return Math.toDegrees(Math.abs(up - down));
  }

  /**
   * How far the shin sways to either side in lowering and hold, as a pure to and fro of the same
   * mean square would: a swing under a half sine, less what three low-passes do to its frequency.
   * The ends, where it starts and stops, do not count. Gain of a two-pass second-order Butterworth
   * whose cut-off was corrected: 1/(1 + (0.802 f/fc)⁴), Winter 2009 ch. 2.
   */
  private static double wobble(SplitSquat set) {
    RepPlan rep = set.reps().get(FAULTY);
    double low = rep.loweringS() + rep.holdS();
    double squares = 0;
    int n = 0;
    for (double into = 0.5; into <= low - 0.2; into += 0.01) {
      squares += Math.pow(Math.sin(Math.PI * into / low), 2);
      n++;
    }
    double kept = gain(6) * gain(3.5) * (1 - gain(1.3));
    return built(set, FlagKind.WOBBLE) * Math.sqrt(squares / n) * kept;
  }

  private static double gain(double cutoffHz) {
    return 1 / (1 + Math.pow(0.802243 * SplitSquat.WOBBLE_HZ / cutoffHz, 4));
  }

  private static SetResult measured(Calibration limits, SplitSquat motion) {
    Target upright =
        new Target(
            Optional.of(ShinPreset.UPRIGHT.target()),
            DepthTarget.any(),
            TempoTarget.any(),
            Optional.empty(),
            Target.Margin.standard());
    RoomSight.Slope level = new RoomSight.Slope(0, 0.01);
    ClipObservations seen =
        ClipObservations.none()
            .withRoom(Optional.of(new RoomSight(0, 0.25, Optional.of(level), Optional.of(level))))
            .withOutlines(BackMaker.of(motion, Side.RIGHT));
    return new SetAnalysis(limits)
        .measure(
            TrackMaker.film(motion).track(),
            SetRequest.of(upright).withAthleteHeightM(STATURE_CM / 100),
            seen)
        .fold(
            AnalysisOutcome.Measured::set,
            not -> {
              throw new AssertionError(not.why().toString());
            });
  }

  private static List<List<FlagKind>> flags(SetResult set) {
    return set.reps().stream().map(rep -> rep.flags().stream().map(Flag::kind).toList()).toList();
  }

  /** The target's 10 degrees and its margin of 3: docs/target-file.md. */
  private static double limit(FlagKind kind, Calibration limits) {
    return kind.limitKey().map(limits::value).orElse(13.0);
  }

  private static boolean isFaultBelow(FlagKind kind) {
    return switch (kind) {
      case SHALLOW, LOWERING_RUSHED, HOLD_SKIPPED, DRIVE_SLOW -> true;
      default -> false;
    };
  }

  static Stream<Arguments> kinds() {
    return Stream.of(FlagKind.values())
        .flatMap(
            kind ->
                Stream.of(ShippedCalibration.HEAVY, ShippedCalibration.FULL)
                    .map(limits -> Arguments.of(kind, limits.model(), limits)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @MethodSource("kinds")
  void aLittleLessIsNoFaultAndALittleMoreIsOne(FlagKind kind, String model, Calibration limits) {
    Family family = of(kind);
    double limit = limit(kind, limits);
    double over = isFaultBelow(kind) ? -family.just() : family.just();
    List<List<FlagKind>> less = flags(measured(limits, family.with(limit * (1 - over))));
    SetResult beyond = measured(limits, family.with(limit * (1 + over)));
    List<FlagKind> none = List.of();
    assertThat(less).containsExactly(none, none, none, none, none);
    assertThat(flags(beyond)).containsExactly(none, none, none, List.of(kind), none);
    RepResult rep = beyond.reps().get(FAULTY);
    Flag flag = rep.flags().get(0);
    assertThat(flag.atS()).isBetween(rep.startS(), rep.endS());
  }
}
