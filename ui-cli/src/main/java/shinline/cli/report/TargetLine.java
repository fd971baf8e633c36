package shinline.cli.report;

import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

/** What the coach asked for, in one sentence. */
final class TargetLine {
  private final Markup page;
  private boolean first = true;

  private TargetLine(Markup page) {
    this.page = page;
  }

  static void write(Markup page, Target target) {
    new TargetLine(page).write(target);
  }

  private void write(Target target) {
    target
        .shin()
        .ifPresent(
            shin -> {
              separate();
              page.words("report.target.shin", p -> p.text(shin.name()), p -> band(shin));
            });
    Optional<Double> none = Optional.empty();
    limits(Words.say("measure.thigh"), none, target.depth().maxThighDeg(), MeasureUnit.DEGREES);
    limits(
        Words.say("measure.rear-knee"),
        none,
        target.depth().maxRearKneeCm(),
        MeasureUnit.CENTIMETRES);
    limits(
        Words.say("report.target.hip-travel"),
        target.depth().minHipTravelCm(),
        none,
        MeasureUnit.CENTIMETRES);
    target
        .trunk()
        .ifPresent(
            t ->
                limits(
                    Words.say("measure.trunk"),
                    Optional.of(t.minDeg()),
                    Optional.of(t.maxDeg()),
                    MeasureUnit.DEGREES));
    phase(Words.say("measure.lowering"), target.tempo().lowering());
    phase(Words.say("measure.hold"), target.tempo().hold());
    phase(Words.say("measure.drive"), target.tempo().drive());
    if (first) {
      page.text(Words.say("report.target.none"));
    }
  }

  private void band(ShinTarget shin) {
    shin.fold(
        a ->
            page.words(
                "report.band.angle", p -> range(a.minDeg(), a.maxDeg(), MeasureUnit.DEGREES)),
        d ->
            page.words(
                "report.band.distance", p -> range(d.minCm(), d.maxCm(), MeasureUnit.CENTIMETRES)));
  }

  private void phase(String name, Optional<TempoTarget.Phase> asked) {
    asked.ifPresent(
        p -> limits(name, Optional.of(p.minS()), Optional.of(p.maxS()), MeasureUnit.SECONDS));
  }

  private void limits(String name, Optional<Double> min, Optional<Double> max, MeasureUnit unit) {
    if (min.isEmpty() && max.isEmpty()) {
      return;
    }
    separate();
    page.words(
        "report.target.limit",
        p -> p.text(name),
        p ->
            range(
                min.orElse(Double.NEGATIVE_INFINITY), max.orElse(Double.POSITIVE_INFINITY), unit));
  }

  private void separate() {
    page.text(first ? "" : ", ");
    first = false;
  }

  private void range(double min, double max, MeasureUnit unit) {
    if (Double.isInfinite(min)) {
      page.words("range.at-most", p -> Figure.quantity(p, max, unit));
    } else if (Double.isInfinite(max)) {
      page.words("range.at-least", p -> Figure.quantity(p, min, unit));
    } else {
      page.words(
          "range.between", p -> Figure.quantity(p, min, unit), p -> Figure.quantity(p, max, unit));
    }
  }
}
