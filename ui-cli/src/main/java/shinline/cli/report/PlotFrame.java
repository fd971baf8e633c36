package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shinline.cli.text.Units;
import shinline.metrics.result.MeasureUnit;

/**
 * Draws curves as inline SVG. Places are per cent of the picture, so that one drawing fits a phone
 * and a sheet of paper while letters and line widths keep their size.
 */
public final class PlotFrame {
  /** Inner picture of a curve: stretched to the place it gets, line widths kept by the style. */
  private static final int GRID_W = 2000;

  private static final int GRID_H = 500;

  private final Markup page;
  private final Axis x;
  private final Axis y;

  public PlotFrame(Markup page, Axis x, Axis y) {
    this.page = page;
    this.x = x;
    this.y = y;
  }

  /** Numbers beside the plot, in its own narrow picture. */
  public void scale(MeasureUnit unit) {
    page.open("svg", "class", "scale", "aria-hidden", "true");
    if (unit == MeasureUnit.CENTIMETRES) {
      ticks(Figure.CM, y, "\u00a0cm");
      ticks(Figure.INCH, y.times(Units.IMPERIAL.fromCm(1)), "\u00a0in");
    } else {
      ticks("", y, unit == MeasureUnit.DEGREES ? "°" : " %");
    }
    page.close();
  }

  private void ticks(String shownIn, Axis axis, String symbol) {
    page.open("g", "class", shownIn);
    for (double tick : axis.ticks()) {
      page.leaf(
          "text",
          Figure.number(tick, Math.abs(tick - Math.rint(tick)) > 1e-6 ? 1 : 0) + symbol,
          "x",
          "100%",
          "y",
          axis.down(tick),
          "dy",
          "0.32em");
    }
    page.close();
  }

  public void grid(MeasureUnit unit) {
    if (unit == MeasureUnit.CENTIMETRES) {
      lines(Figure.CM, y);
      lines(Figure.INCH, y.times(Units.IMPERIAL.fromCm(1)));
    } else {
      lines("", y);
    }
  }

  private void lines(String shownIn, Axis axis) {
    page.open("g", "class", shownIn);
    for (double tick : axis.ticks()) {
      String at = axis.down(tick);
      String style = Math.abs(tick) < 1e-9 ? "grid zero" : "grid";
      page.empty("line", "class", style, "x1", "0", "x2", "100%", "y1", at, "y2", at);
    }
    page.close();
  }

  /** A line from bottom to top. */
  public void upright(double atX) {
    String at = x.across(atX);
    page.empty("line", "class", "grid zero", "x1", at, "x2", at, "y1", "0", "y2", "100%");
  }

  /** A filled part of the plot; infinite ends reach its edge. */
  public void area(String style, double fromX, double toX, double fromY, double toY) {
    double left = Math.max(fromX, x.min());
    double right = Math.min(toX, x.max());
    double bottom = Math.max(fromY, y.min());
    double top = Math.min(toY, y.max());
    if (right <= left || top <= bottom) {
      return;
    }
    page.empty(
        "rect",
        "class",
        style,
        "x",
        x.across(left),
        "y",
        y.down(top),
        "width",
        Figure.plain(100 * (x.share(right) - x.share(left)), 2) + "%",
        "height",
        Figure.plain(100 * (y.share(top) - y.share(bottom)), 2) + "%");
  }

  /** Where a curve is at one time. */
  public record Point(double x, OptionalDouble y) {}

  /** A curve, broken where nothing was seen. */
  public void curve(String style, List<Point> points) {
    page.open(
        "svg",
        "viewBox",
        "0 0 " + GRID_W + " " + GRID_H,
        "preserveAspectRatio",
        "none",
        "width",
        "100%",
        "height",
        "100%");
    List<String> run = new ArrayList<>();
    for (Point point : points) {
      if (point.y().isPresent()) {
        run.add(
            String.format(
                Locale.ROOT,
                "%.0f,%.0f",
                GRID_W * x.share(point.x()),
                GRID_H * (1 - y.share(point.y().getAsDouble()))));
      } else {
        line(style, run);
      }
    }
    line(style, run);
    page.close();
  }

  private void line(String style, List<String> run) {
    if (run.size() > 1) {
      page.empty("polyline", "class", style, "points", String.join(" ", run));
    }
    run.clear();
  }
}
