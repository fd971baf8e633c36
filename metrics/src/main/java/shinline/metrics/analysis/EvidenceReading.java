package shinline.metrics.analysis;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import shinline.metrics.back.BackReading;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.fault.RepEvidence;
import shinline.metrics.geometry.SegmentAngles;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.signal.ButterworthLowPass;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;

/** Reads from the cleaned track what each rep's faults are judged by. */
final class EvidenceReading {
  /** Standing before a rep is taken over this long. */
  private static final double TOP_S = 0.3;

  /** Speeding up and stopping are quick, too: the ends of lowering and hold do not count. */
  private static final double WOBBLE_AFTER_S = 0.3;

  private static final double WOBBLE_BEFORE_S = 0.15;

  /** Less than about one to and fro is none. */
  private static final double WOBBLE_LEAST_S = 0.5;

  /** A heel or forefoot that is up stays up about this long. */
  private static final double HELD_S = 0.3;

  private final Body body;
  private final Series heel;
  private final Series toe;
  private final Series quickShin;
  private final BackReading back;
  private final BarMeasuring bar;
  private final Series rearFlexion;

  EvidenceReading(Body body, List<Rep> reps, BackReading back, BarMeasuring bar) {
    this.body = body;
    this.bar = bar;
    this.back = back;
    heel = body.rise(BodyPoint.FRONT_HEEL, reps);
    toe = body.rise(BodyPoint.FRONT_TOE, reps);
    quickShin = quickShin(body);
    CleanPath rearHip = body.track().path(BodyPoint.REAR_HIP);
    CleanPath rearKnee = body.track().path(BodyPoint.REAR_KNEE);
    CleanPath rearAnkle = body.track().path(BodyPoint.REAR_ANKLE);
    rearFlexion =
        joined(
            rearHip.x(),
            joinedSeen(rearKnee.x(), rearAnkle.x()),
            i ->
                SegmentAngles.kneeFlexion(rearHip.at(i), rearKnee.at(i), rearAnkle.at(i))
                    .degrees());
  }

  RepEvidence of(Rep rep) {
    RepTimes t = rep.times();
    Kinematics k = body.kinematics();
    BottomWindow bottom = BottomWindow.of(t);
    OptionalDouble leanBottom = bottom.bottomMedian(k.trunkLeanDeg());
    double early = t.intoDrive(body.calibration().value(CalibrationKey.HIPS_FIRST_UNTIL));
    Peak lean = peak(k.trunkLeanDeg(), s -> s >= t.bottomEndS() - 0.1 && s <= early);
    Peak heelPeak = held(heel, toe, BodyPoint.FRONT_HEEL, t);
    Peak toePeak = held(toe, heel, BodyPoint.FRONT_TOE, t);
    DoublePredicate top = s -> s >= t.startS() - TOP_S && s <= t.startS();
    double frontAnkleX =
        bottom.bottomMedian(body.track().path(BodyPoint.FRONT_ANKLE).x()).orElse(Double.NaN);
    OptionalDouble hipX = bottom.bottomMedian(k.hipX());
    double stature = body.scale().staturePx();
    return new RepEvidence(
        t.startS(),
        t.bottomStartS(),
        t.bottomS(),
        t.bottomEndS(),
        t.endS(),
        rep.tempo().loweringS(),
        rep.tempo().holdS(),
        rep.tempo().driveS(),
        median(k.trunkLeanDeg(), top),
        leanBottom,
        leanBottom.isPresent() && lean.seen()
            ? OptionalDouble.of(lean.value - leanBottom.getAsDouble())
            : OptionalDouble.empty(),
        lean.atS,
        bottom.bottomMedian(k.shinDeg()),
        hipX.isPresent() && !Double.isNaN(frontAnkleX)
            ? OptionalDouble.of((hipX.getAsDouble() - frontAnkleX) / stature)
            : OptionalDouble.empty(),
        heelPeak.optional(),
        heelPeak.atS,
        toePeak.optional(),
        toePeak.atS,
        rearOpen(t),
        rep.travel() / stature,
        t.endS() > t.bottomEndS()
            ? OptionalDouble.of((rep.topAfter() - rep.lowest()) / stature / rep.tempo().driveS())
            : OptionalDouble.empty(),
        wobble(t),
        bar.lean(rep),
        back.at(rep));
  }

  /**
   * The highest rise that one end of the foot keeps over the other. A foot that leaves the floor
   * with both ends is a point misplaced, as is one that jumps up and comes down again at once.
   */
  private Peak held(Series end, Series other, BodyPoint point, RepTimes t) {
    double seen = body.track().source().seenShare(point, t.startS(), t.endS());
    if (seen < body.calibration().value(CalibrationKey.FOOT_LEAST_SEEN)) {
      return Peak.NONE;
    }
    Series over = joined(end, other, i -> end.value(i) - Math.max(0, other.value(i)));
    Peak best = Peak.NONE;
    for (int i = 0; i < over.size(); i++) {
      double at = over.timeS(i);
      if (over.seen(i) && at >= t.startS() && at <= t.endS()) {
        double level = median(over, s -> Math.abs(s - at) <= HELD_S / 2).orElse(0);
        best = level > best.value ? new Peak(level, at) : best;
      }
    }
    return best;
  }

  /** Rear knee's opening less the front knee's, over the first part of the drive. */
  private OptionalDouble rearOpen(RepTimes t) {
    Series front = body.kinematics().kneeFlexionDeg();
    double from = t.bottomEndS();
    double to = t.intoDrive(body.calibration().value(CalibrationKey.REAR_PUSH_UNTIL));
    OptionalDouble r0 = median(rearFlexion, s -> Math.abs(s - from) <= 0.05);
    OptionalDouble r1 = median(rearFlexion, s -> Math.abs(s - to) <= 0.05);
    OptionalDouble f0 = median(front, s -> Math.abs(s - from) <= 0.05);
    OptionalDouble f1 = median(front, s -> Math.abs(s - to) <= 0.05);
    if (r0.isEmpty() || r1.isEmpty() || f0.isEmpty() || f1.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        (r0.getAsDouble() - r1.getAsDouble()) - (f0.getAsDouble() - f1.getAsDouble()));
  }

  /** How far the shin sways to either side: half of its swing, were it a pure to and fro. */
  private OptionalDouble wobble(RepTimes t) {
    double from = t.startS() + WOBBLE_AFTER_S;
    double to = t.bottomEndS() - WOBBLE_BEFORE_S;
    if (to - from < WOBBLE_LEAST_S) {
      return OptionalDouble.of(0);
    }
    double squares = 0;
    int n = 0;
    for (int i = 0; i < quickShin.size(); i++) {
      if (quickShin.seen(i) && quickShin.timeS(i) >= from && quickShin.timeS(i) <= to) {
        squares += quickShin.value(i) * quickShin.value(i);
        n++;
      }
    }
    return n * body.kinematics().grid().stepS() < WOBBLE_LEAST_S
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(2 * squares / n));
  }

  private static Series quickShin(Body body) {
    double rateHz = body.kinematics().grid().rateHz();
    double quickestHz = body.calibration().value(CalibrationKey.WOBBLE_QUICKEST);
    double slowestHz = body.calibration().value(CalibrationKey.WOBBLE_SLOWEST);
    Series shin = body.kinematics().shinDeg();
    Series smooth = ButterworthLowPass.twoPass(quickestHz, rateHz).zeroPhase(shin);
    Series slow = ButterworthLowPass.twoPass(slowestHz, rateHz).zeroPhase(smooth);
    return joined(smooth, slow, i -> smooth.value(i) - slow.value(i));
  }

  private static Series joinedSeen(Series a, Series b) {
    return joined(a, b, i -> 0);
  }

  private interface AtIndex {
    double value(int i);
  }

  private static Series joined(Series a, Series b, AtIndex value) {
    double[] v = new double[a.size()];
    boolean[] seen = new boolean[a.size()];
    for (int i = 0; i < v.length; i++) {
      seen[i] = a.seen(i) && b.seen(i);
      v[i] = seen[i] ? value.value(i) : 0;
    }
    return Series.of(a.times(), v, seen);
  }

  private static OptionalDouble median(Series series, DoublePredicate when) {
    return RobustStatistics.median(series.seenValues(when));
  }

  private record Peak(double value, double atS) {
    static final Peak NONE = new Peak(Double.NEGATIVE_INFINITY, 0);

    boolean seen() {
      return value > Double.NEGATIVE_INFINITY;
    }

    OptionalDouble optional() {
      return seen() ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
  }

  private static Peak peak(Series series, DoublePredicate when) {
    Peak best = Peak.NONE;
    for (int i = 0; i < series.size(); i++) {
      if (series.seen(i) && when.test(series.timeS(i)) && series.value(i) > best.value) {
        best = new Peak(series.value(i), series.timeS(i));
      }
    }
    return best;
  }
}
