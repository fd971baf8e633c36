package shinline.cli.picture;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import shinline.metrics.track.BodyPoint;

/**
 * The part of the upright picture that holds the athlete, and how much it is scaled.
 *
 * @param box pixels of the upright picture
 * @param scale pixels of the cut picture for one of the upright picture
 */
record Crop(Rectangle box, double scale) {
  /** Shorter side of a cut picture, where the clip is sharp enough. */
  private static final double SHORTER_SIDE_PX = 720;

  /** Beyond this, scaling up only blurs. */
  private static final double LARGEST_SCALE = 2;

  /** A cut picture's width against its height, at least; narrow ones are hard to read. */
  private static final double LEAST_WIDE = 0.7;

  /** The head above the ear, and the arms, feet and loads around the joints; share of stature. */
  private static final double ABOVE = 0.16;

  private static final double BESIDE = 0.14;
  private static final double AHEAD_OF_TOE = 0.24;
  private static final double BELOW = 0.07;

  /** Around the athlete as seen at an instant; the whole picture when not seen. */
  static Crop around(SetScene scene, PoseAt pose, double shorterSidePx) {
    Rectangle picture = new Rectangle(scene.widthPx(), scene.heightPx());
    if (pose.points().size() < 4 || scene.staturePx().isEmpty()) {
      return new Crop(picture, scale(picture, shorterSidePx));
    }
    double stature = scene.staturePx().getAsDouble();
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = 0;
    double bottom = 0;
    for (Point2D point : pose.points().values()) {
      left = Math.min(left, point.getX());
      right = Math.max(right, point.getX());
      top = Math.min(top, point.getY());
      bottom = Math.max(bottom, point.getY());
    }
    // Room for the words at the toe line.
    for (Point2D toe : pose.point(BodyPoint.FRONT_TOE).stream().toList()) {
      Point2D room = scene.from(toe, AHEAD_OF_TOE * stature, 0);
      left = Math.min(left, room.getX() + BESIDE * stature);
      right = Math.max(right, room.getX() - BESIDE * stature);
    }
    top -= ABOVE * stature;
    bottom += BELOW * stature;
    double wide = Math.max(right - left + 2 * BESIDE * stature, LEAST_WIDE * (bottom - top));
    double middle = (left + right) / 2;
    Rectangle box =
        new Rectangle(
                (int) Math.round(middle - wide / 2),
                (int) Math.round(top),
                (int) Math.round(wide),
                (int) Math.round(bottom - top))
            .intersection(picture);
    return box.isEmpty()
        ? new Crop(picture, scale(picture, shorterSidePx))
        : new Crop(box, scale(box, shorterSidePx));
  }

  static Crop around(SetScene scene, PoseAt pose) {
    return around(scene, pose, SHORTER_SIDE_PX);
  }

  private static double scale(Rectangle box, double shorterSidePx) {
    return Math.min(LARGEST_SCALE, shorterSidePx / Math.min(box.width, box.height));
  }

  int widthPx() {
    return (int) Math.round(box.width * scale);
  }

  int heightPx() {
    return (int) Math.round(box.height * scale);
  }

  /** From the upright picture to the cut one that begins {@code topPx} below its top. */
  AffineTransform transform(int topPx) {
    AffineTransform transform = AffineTransform.getTranslateInstance(0, topPx);
    transform.scale(scale, scale);
    transform.translate(-box.x, -box.y);
    return transform;
  }

  void paint(Graphics2D g, BufferedImage upright, int topPx) {
    // Area averaging in two steps keeps edges of a large picture from fraying.
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    BufferedImage source = upright.getSubimage(box.x, box.y, box.width, box.height);
    double left = scale;
    while (left < 0.5) {
      BufferedImage half =
          new BufferedImage(
              Math.max(1, source.getWidth() / 2),
              Math.max(1, source.getHeight() / 2),
              BufferedImage.TYPE_3BYTE_BGR);
      Graphics2D h = half.createGraphics();
      h.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      h.drawImage(source, 0, 0, half.getWidth(), half.getHeight(), null);
      h.dispose();
      source = half;
      left *= 2;
    }
    g.drawImage(source, 0, topPx, widthPx(), heightPx(), null);
  }
}
