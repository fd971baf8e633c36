package shinline.cli.picture;

import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import shinline.metrics.track.BodyPoint;

/**
 * Makes the athlete's head unrecognisable: a disc of coarse tiles. Where the head is not seen, the
 * disc about its last or next known place grows as fast as a head can travel, so that it is covered
 * all the same. Other people in the picture stay as they are.
 */
final class HeadBlur {
  /** From the ear, a disc of this radius holds face and hair; share of stature, rounded up. */
  private static final double RADIUS = 0.125;

  /** The face lies ahead of the ear. */
  private static final double AHEAD = 0.015;

  /** Ear above the middle of the shoulders, share of stature. */
  private static final double EAR_ABOVE_SHOULDER = 0.115;

  /** How fast a head can go out of a known place: a brisk walk, statures a second. */
  private static final double GROWTH = 0.8;

  /** Below this confidence the ear is a guess, and the disc grows as if it were not seen. */
  private static final double TRUSTED = 0.3;

  /** Tiles across the disc; a face needs more than a dozen to be known by. */
  private static final int TILES = 5;

  /** Where it was known to be, by the time. */
  private final NavigableMap<Double, Point2D> known = new TreeMap<>();

  private final double staturePx;
  private final SetScene scene;

  HeadBlur(SetScene scene) {
    this.scene = scene;
    staturePx = scene.staturePx().orElse(scene.heightPx());
    for (int row = 0; row < scene.series().rows(); row++) {
      double t = scene.series().timeS(row);
      boolean trusted = scene.series().confidence(BodyPoint.NEAR_EAR, row).orElse(0) >= TRUSTED;
      PoseAt pose = scene.pose(t);
      Optional<Point2D> ear = trusted ? pose.point(BodyPoint.NEAR_EAR) : Optional.empty();
      ear.or(() -> pose.midShoulder().map(this::earOver))
          .ifPresent(e -> known.put(t, scene.from(e, AHEAD * staturePx, 0)));
    }
  }

  private Point2D earOver(Point2D shoulder) {
    return scene.from(shoulder, 0, EAR_ABOVE_SHOULDER * staturePx);
  }

  /** Tiles the head of a frame of the clip, in place. */
  void cover(BufferedImage upright, double timeS) {
    tile(upright, disc(timeS), RADIUS * staturePx);
  }

  /** What {@link #cover} looks at, pixels of the upright picture; it may lie beyond its edges. */
  Rectangle reach(double timeS) {
    return disc(timeS).getBounds();
  }

  private Ellipse2D disc(double timeS) {
    if (known.isEmpty()) {
      return new Ellipse2D.Double(-1e6, -1e6, 2e6, 2e6);
    }
    Map.Entry<Double, Point2D> next =
        Optional.ofNullable(known.ceilingEntry(timeS)).orElseGet(known::lastEntry);
    Map.Entry<Double, Point2D> last =
        Optional.ofNullable(known.lowerEntry(timeS)).orElseGet(known::firstEntry);
    double span = next.getKey() - last.getKey();
    double share = span <= 0 ? 0 : Math.max(0, Math.min(1, (timeS - last.getKey()) / span));
    double away = Math.min(Math.abs(timeS - last.getKey()), Math.abs(timeS - next.getKey()));
    double radius = (RADIUS + GROWTH * away) * staturePx;
    Point2D still =
        new Point2D.Double(
            (1 - share) * last.getValue().getX() + share * next.getValue().getX(),
            (1 - share) * last.getValue().getY() + share * next.getValue().getY());
    Point2D shown = scene.toFrame(timeS).transform(still, null);
    double x = shown.getX();
    double y = shown.getY();
    return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private static void tile(BufferedImage image, Ellipse2D disc, double radiusPx) {
    int size = Math.max(4, (int) Math.ceil(2 * radiusPx / TILES));
    int left = (int) Math.max(0, Math.floor(disc.getMinX()));
    int top = (int) Math.max(0, Math.floor(disc.getMinY()));
    int right = (int) Math.min(image.getWidth(), Math.ceil(disc.getMaxX()));
    int bottom = (int) Math.min(image.getHeight(), Math.ceil(disc.getMaxY()));
    for (int y = top; y < bottom; y += size) {
      for (int x = left; x < right; x += size) {
        int w = Math.min(size, right - x);
        int h = Math.min(size, bottom - y);
        // A tile that only touches the disc is tiled as a whole: an edge leaks nothing.
        if (disc.intersects(x, y, w, h)) {
          fill(image, x, y, w, h);
        }
      }
    }
  }

  private static void fill(BufferedImage image, int x, int y, int w, int h) {
    int[] pixels = image.getRGB(x, y, w, h, null, 0, w);
    long red = 0;
    long green = 0;
    long blue = 0;
    for (int pixel : pixels) {
      red += (pixel >> 16) & 0xFF;
      green += (pixel >> 8) & 0xFF;
      blue += pixel & 0xFF;
    }
    int n = pixels.length;
    int mean = (int) (red / n) << 16 | (int) (green / n) << 8 | (int) (blue / n);
    java.util.Arrays.fill(pixels, 0xFF000000 | mean);
    image.setRGB(x, y, w, h, pixels, 0, w);
  }
}
