package shinline.cli.report;

import shinline.cli.words.Words;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.target.Target;

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
    for (Asked asked : Asked.of(target)) {
      asked.fold(
          within -> {
            limit(within.limit());
            return page;
          },
          this::range);
    }
    if (first) {
      page.text(Words.say("report.target.none"));
    }
  }

  private void limit(Limit limit) {
    separate();
    if (limit.band().isPresent()) {
      page.words("report.target.shin", p -> p.text(limit.band().get()), p -> band(limit));
    } else {
      page.words(
          "report.target.limit", p -> p.text(Words.of(limit.aspect(), "noun")), p -> range(limit));
    }
  }

  private void band(Limit limit) {
    if (limit.aspect() == Aspect.SHIN) {
      page.words("report.band.angle", p -> range(limit));
    } else {
      page.words("report.band.distance", p -> range(limit));
    }
  }

  /** The full range is told by the thigh that goes with it. */
  private Markup range(Asked.OfRange asked) {
    if (asked.range() == Finding.Range.SHORT) {
      separate();
      page.text(Words.say("target.short-range"));
    }
    return page;
  }

  private void range(Limit limit) {
    range(limit.min(), limit.max(), limit.unit());
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
