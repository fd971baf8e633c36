package shinline.cli.report;

import java.util.Optional;
import shinline.metrics.result.MeasureUnit;
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
    page.text(".");
  }

  private void write(Target target) {
    target
        .shin()
        .ifPresent(
            shin -> {
              item("shin " + shin.name() + " (");
              shin.fold(
                  a -> range(a.minDeg(), a.maxDeg(), MeasureUnit.DEGREES).text(" from vertical"),
                  d -> range(d.minCm(), d.maxCm(), MeasureUnit.CENTIMETRES).text(" past the toe"));
              page.text(")");
            });
    Optional<Double> none = Optional.empty();
    limits("thigh", none, target.depth().maxThighDeg(), MeasureUnit.DEGREES);
    limits("rear knee", none, target.depth().maxRearKneeCm(), MeasureUnit.CENTIMETRES);
    limits("hips down", target.depth().minHipTravelCm(), none, MeasureUnit.CENTIMETRES);
    target
        .trunk()
        .ifPresent(
            t ->
                limits(
                    "trunk",
                    Optional.of(t.minDeg()),
                    Optional.of(t.maxDeg()),
                    MeasureUnit.DEGREES));
    phase("lowering", target.tempo().lowering());
    phase("hold", target.tempo().hold());
    phase("drive", target.tempo().drive());
    if (first) {
      page.text("nothing in particular (set a target with --target)");
    }
  }

  private void phase(String name, Optional<TempoTarget.Phase> asked) {
    asked.ifPresent(
        p -> limits(name, Optional.of(p.minS()), Optional.of(p.maxS()), MeasureUnit.SECONDS));
  }

  private void limits(String name, Optional<Double> min, Optional<Double> max, MeasureUnit unit) {
    if (min.isEmpty() && max.isEmpty()) {
      return;
    }
    item(name + " ");
    range(min.orElse(Double.NEGATIVE_INFINITY), max.orElse(Double.POSITIVE_INFINITY), unit);
  }

  private void item(String text) {
    page.text((first ? "" : ", ") + text);
    first = false;
  }

  private Markup range(double min, double max, MeasureUnit unit) {
    if (Double.isInfinite(min)) {
      page.text("at most ");
    } else {
      if (Double.isInfinite(max)) {
        page.text("at least ");
      }
      Figure.quantity(page, min, unit);
      if (Double.isInfinite(max)) {
        return page;
      }
      page.text(" to ");
    }
    Figure.quantity(page, max, unit);
    return page;
  }
}
