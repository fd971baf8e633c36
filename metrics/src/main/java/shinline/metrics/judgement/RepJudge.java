package shinline.metrics.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.result.Amount;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

/**
 * Judges a rep's readings against the day's target.
 *
 * <p>Each limit is judged alone. With d the distance of the value beyond the nearest end of the
 * allowed range (negative inside), ± the half width of the value's 95 % interval, and k {@link
 * JudgeParameters#straddleShare()}:
 *
 * <ol>
 *   <li>|d| &lt; k·± : unclear, the value's side of the limit is open;
 *   <li>d ≤ 0 : met;
 *   <li>d ≤ the coach's margin : near;
 *   <li>else : miss.
 * </ol>
 *
 * <p>A wider ± can therefore only take a verdict away, never change it into another. The border
 * between near and miss is the coach's own courtesy, so the bare value decides there. A limit whose
 * reading is missing is unclear, with the reading's reason; how limits make a rep: {@link
 * RepJudgement}.
 */
public final class RepJudge {
  private final Target target;
  private final JudgeParameters parameters;

  public RepJudge(Target target, JudgeParameters parameters) {
    this.target = target;
    this.parameters = parameters;
  }

  /** Judges one rep. Pure; throws nothing for any readings. */
  public RepJudgement judge(RepReadings rep) {
    List<Finding> findings = new ArrayList<>();
    target.shin().ifPresent(shin -> findings.add(shin(shin, rep)));
    depth(rep, findings);
    target
        .trunk()
        .ifPresent(
            t ->
                findings.add(
                    against(
                        degrees(Aspect.TRUNK, Optional.empty(), t.minDeg(), t.maxDeg()),
                        rep.at(Measure.TRUNK_LEAN))));
    TempoTarget tempo = target.tempo();
    phase(Aspect.LOWERING, tempo.lowering(), rep.tempo().lowering(), findings);
    phase(Aspect.HOLD, tempo.hold(), rep.tempo().hold(), findings);
    phase(Aspect.DRIVE, tempo.drive(), rep.tempo().drive(), findings);
    // The last rep of a set has no next rep to rest for: a missing top is not held against it.
    if (rep.tempo().top() instanceof Reading.Measured) {
      phase(Aspect.TOP, tempo.top(), rep.tempo().top(), findings);
    }
    return new RepJudgement(rep.rep(), findings);
  }

  private Finding shin(ShinTarget shin, RepReadings rep) {
    return shin.fold(
        band ->
            against(
                degrees(Aspect.SHIN, Optional.of(band.name()), band.minDeg(), band.maxDeg()),
                rep.at(Measure.SHIN)),
        band -> {
          Limit limit =
              centimetres(Aspect.KNEE, Optional.of(band.name()), band.minCm(), band.maxCm());
          return rep.at(Measure.KNEE_PAST_TOE)
              .fold(
                  measured -> against(limit, measured),
                  missing -> new Finding.Unmeasured(limit, noCentimetres(missing, rep)));
        });
  }

  /** Says what is known without a scale, and how to get one. */
  private static String noCentimetres(Reading.NotMeasured missing, RepReadings rep) {
    return rep.at(Measure.KNEE_PAST_TOE_FOOT)
        .measured()
        .map(
            foot ->
                "there is no scale for centimetres (it is %s of foot length %s the toe); give --height"
                    .formatted(
                        Amount.signed(
                            Math.rint(Math.abs(foot.value())), MeasureUnit.PERCENT_OF_FOOT),
                        foot.value() < 0 ? "behind" : "past"))
        .orElse(missing.reason());
  }

  private void depth(RepReadings rep, List<Finding> findings) {
    DepthTarget depth = target.depth();
    if (depth.shortRangeAsked() && !rep.shortRange()) {
      findings.add(new Finding.WrongRange(Finding.Range.SHORT));
    }
    // A coach's own depth limits speak for themselves: only the house's "full" rules out short
    // range as such.
    if (depth.equals(DepthTarget.full()) && rep.shortRange()) {
      findings.add(new Finding.WrongRange(Finding.Range.FULL));
    }
    depth
        .maxThighDeg()
        .ifPresent(
            max ->
                findings.add(
                    against(
                        degrees(Aspect.THIGH, Optional.empty(), Double.NEGATIVE_INFINITY, max),
                        rep.at(Measure.THIGH))));
    depth
        .maxRearKneeCm()
        .ifPresent(
            max ->
                findings.add(
                    against(
                        centimetres(
                            Aspect.REAR_KNEE, Optional.empty(), Double.NEGATIVE_INFINITY, max),
                        rep.at(Measure.REAR_KNEE_HEIGHT))));
    depth
        .minHipTravelCm()
        .ifPresent(
            min ->
                findings.add(
                    against(
                        centimetres(
                            Aspect.HIP_TRAVEL, Optional.empty(), min, Double.POSITIVE_INFINITY),
                        rep.at(Measure.HIP_TRAVEL))));
  }

  private void phase(
      Aspect aspect, Optional<TempoTarget.Phase> asked, Reading reading, List<Finding> findings) {
    asked.ifPresent(
        phase ->
            findings.add(
                against(
                    new Limit(
                        aspect,
                        Optional.empty(),
                        // No phase lasts less than nothing, so a lower end of 0 is an open one.
                        phase.minS() > 0 ? phase.minS() : Double.NEGATIVE_INFINITY,
                        phase.maxS(),
                        target.margin().s(),
                        MeasureUnit.SECONDS),
                    reading)));
  }

  private Finding against(Limit limit, Reading reading) {
    return reading.fold(
        measured -> against(limit, measured),
        missing -> new Finding.Unmeasured(limit, missing.reason()));
  }

  private Finding against(Limit limit, Reading.Measured measured) {
    double beyond = limit.beyond(measured.value());
    Limit.End end = limit.nearestEnd(measured.value());
    if (Math.abs(beyond) < parameters.straddleShare() * measured.plusMinus()) {
      return new Finding.TooClose(limit, end, beyond, measured.plusMinus());
    }
    return beyond <= 0
        ? new Finding.Met(limit)
        : new Finding.Outside(limit, end, beyond, measured.plusMinus());
  }

  private Limit degrees(Aspect aspect, Optional<String> band, double min, double max) {
    return new Limit(aspect, band, min, max, target.margin().deg(), MeasureUnit.DEGREES);
  }

  private Limit centimetres(Aspect aspect, Optional<String> band, double min, double max) {
    return new Limit(aspect, band, min, max, target.margin().cm(), MeasureUnit.CENTIMETRES);
  }
}
