package shinline.cli.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Bright strokes on dark outlines, so that a line stands out on any background, and differs from
 * its neighbour by shape as well as by colour. The colours are among those that people of every
 * colour vision tell apart (Okabe and Ito 2008), lightened for the dark outline.
 */
final class Ink {
  static final Color LEG = new Color(0xFFE94A);
  static final Color TRUNK = new Color(0x6CCBFF);
  static final Color PLUMB = Color.WHITE;
  static final Color TOE_LINE = new Color(0xF2A9DB);
  static final Color FAULT = new Color(0xFF7A3C);
  static final Color DARK = new Color(0x10, 0x14, 0x18, 0xE6);
  private static final Color TAG = new Color(0x10, 0x14, 0x18, 0xD2);

  /** Dark edge on either side of a stroke, in stroke widths. */
  private static final float EDGE = 0.55f;

  private final Graphics2D g;
  private final double unit;
  private final Rectangle2D bounds;
  private final List<Rectangle2D> tags = new ArrayList<>();

  /**
   * @param unit width of a main line, pixels
   * @param bounds where tags must stay
   */
  Ink(Graphics2D g, double unit, Rectangle2D bounds) {
    this.g = g;
    this.unit = unit;
    this.bounds = bounds;
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  double unit() {
    return unit;
  }

  void line(Point2D from, Point2D to, Color colour, double widthUnits) {
    shape(new Line2D.Double(from, to), colour, widthUnits, new float[0]);
  }

  void dashed(Point2D from, Point2D to, Color colour, double widthUnits) {
    float dash = (float) (2.6 * unit);
    shape(new Line2D.Double(from, to), colour, widthUnits, new float[] {dash, dash});
  }

  void shape(Shape shape, Color colour, double widthUnits, float[] dash) {
    float width = (float) (widthUnits * unit);
    stroke(shape, DARK, width + 2 * EDGE * (float) (unit * Math.min(1, widthUnits)), new float[0]);
    stroke(shape, colour, width, dash);
  }

  private void stroke(Shape shape, Color colour, float width, float[] dash) {
    g.setColor(colour);
    g.setStroke(
        dash.length == 0
            ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
            : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
    g.draw(shape);
  }

  void joint(Point2D at, Color colour) {
    Shape disc = disc(at, 1.15 * unit);
    g.setColor(colour);
    g.fill(disc);
    stroke(disc, DARK, (float) (0.6 * unit), new float[0]);
  }

  void ring(Point2D at, double radius, Color colour) {
    shape(disc(at, radius), colour, 0.8, new float[0]);
  }

  private static Shape disc(Point2D at, double radius) {
    return new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
  }

  /** A line with a head at its end. */
  void arrow(Point2D from, Point2D to, Color colour) {
    double length = from.distance(to);
    if (length < unit) {
      return;
    }
    double ux = (to.getX() - from.getX()) / length;
    double uy = (to.getY() - from.getY()) / length;
    double head = Math.min(2.6 * unit, length);
    Path2D path = new Path2D.Double(new Line2D.Double(from, to));
    path.moveTo(to.getX() - head * (ux + 0.7 * uy), to.getY() - head * (uy - 0.7 * ux));
    path.lineTo(to.getX(), to.getY());
    path.lineTo(to.getX() - head * (ux - 0.7 * uy), to.getY() - head * (uy + 0.7 * ux));
    shape(path, colour, 0.8, new float[0]);
  }

  /** Which side of a place a tag goes to. */
  enum Hang {
    LEFT,
    RIGHT,
    CENTRE
  }

  /** A few words on a dark plate beside a place, kept inside the picture and off other plates. */
  void tag(String words, Point2D at, Hang hang, Color colour, double sizeUnits) {
    g.setFont(font(sizeUnits));
    FontMetrics metrics = g.getFontMetrics();
    double pad = 0.8 * unit;
    double w = metrics.stringWidth(words) + 2 * pad;
    if (w > bounds.getWidth() - 2) {
      // Smaller words rather than cut ones; a little less than needed, as widths are rounded.
      g.setFont(font(0.97 * sizeUnits * (bounds.getWidth() - 2 - 2 * pad) / (w - 2 * pad)));
      metrics = g.getFontMetrics();
      w = metrics.stringWidth(words) + 2 * pad;
    }
    double h = metrics.getAscent() + metrics.getDescent() + 0.6 * pad;
    double gap = 2 * unit;
    double x =
        switch (hang) {
          case LEFT -> at.getX() - gap - w;
          case RIGHT -> at.getX() + gap;
          case CENTRE -> at.getX() - w / 2;
        };
    x = Math.max(bounds.getMinX() + 1, Math.min(bounds.getMaxX() - w - 1, x));
    double y =
        Math.max(bounds.getMinY() + 1, Math.min(bounds.getMaxY() - h - 1, at.getY() - h / 2));
    y = free(x, y, w, h);
    tags.add(new Rectangle2D.Double(x, y, w, h));
    g.setColor(TAG);
    g.fill(new RoundRectangle2D.Double(x, y, w, h, 2 * pad, 2 * pad));
    g.setColor(colour);
    g.drawString(words, (float) (x + pad), (float) (y + 0.3 * pad + metrics.getAscent()));
  }

  /** The height nearest to the wanted one at which a plate covers no other; else the wanted one. */
  private double free(double x, double wanted, double w, double h) {
    double step = h / 4;
    for (double off = 0; off < bounds.getHeight(); off += step) {
      for (double y : new double[] {wanted + off, wanted - off}) {
        Rectangle2D plate = new Rectangle2D.Double(x, y, w, h);
        if (y > bounds.getMinY()
            && y + h < bounds.getMaxY()
            && tags.stream().noneMatch(plate::intersects)) {
          return y;
        }
      }
    }
    return wanted;
  }

  Font font(double sizeUnits) {
    return new Font(Font.SANS_SERIF, Font.BOLD, 1).deriveFont((float) (sizeUnits * unit));
  }
}
