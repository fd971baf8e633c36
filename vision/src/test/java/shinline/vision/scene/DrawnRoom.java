package shinline.vision.scene;

import java.util.Random;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Scalar;

/** Draws a room through a pinhole camera of known roll, pitch and yaw. */
final class DrawnRoom {
  static final int WIDTH = 960;
  static final int HEIGHT = 540;
  static final double FOCAL_PX = 850;
  private static final int SUBPIXEL_BITS = 4;

  private final double roll;
  private final double pitch;
  private final double yaw;
  private final Mat picture =
      new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3, new Scalar(190, 195, 200, 0));

  DrawnRoom(double rollDeg, double pitchDeg, double yawDeg) {
    roll = Math.toRadians(rollDeg);
    pitch = Math.toRadians(pitchDeg);
    yaw = Math.toRadians(yawDeg);
  }

  /** A post at x metres, z metres behind the athlete's plane, from the floor to 2.4 m. */
  DrawnRoom post(double x, double z) {
    line(x, -1, z, x, 1.4, z, 5);
    return this;
  }

  /** A level line along the wall at height y above the lens. */
  DrawnRoom rail(double y, double z) {
    line(-4, y, z, 4, y, z, 4);
    return this;
  }

  /** A bar that leans: no evidence of anything. */
  DrawnRoom slanted(double x, double tilt) {
    line(x, -0.8, 1, x + 1.2 * Math.tan(tilt), 0.4, 1, 6);
    return this;
  }

  /** Limbs that are elsewhere in every frame. */
  DrawnRoom limbs(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 5; i++) {
      double x = random.nextDouble() - 0.5;
      double tilt = Math.toRadians(40 * random.nextDouble() - 20);
      line(x, -0.7, 0, x + Math.tan(tilt), 0.3, 0, 14);
    }
    return this;
  }

  /** Sensor noise of the given standard deviation, grey levels. */
  DrawnRoom noise(double sigma, int seed) {
    try (Mat wide = new Mat();
        Mat noise = new Mat(HEIGHT, WIDTH, opencv_core.CV_16SC3);
        Mat mean = new Mat(1, 1, opencv_core.CV_64F, new Scalar(0));
        Mat deviation = new Mat(1, 1, opencv_core.CV_64F, new Scalar(sigma))) {
      opencv_core.setRNGSeed(seed);
      opencv_core.randn(noise, mean, deviation);
      picture.convertTo(wide, opencv_core.CV_16SC3);
      opencv_core.add(wide, noise, wide);
      wide.convertTo(picture, opencv_core.CV_8UC3);
    }
    return this;
  }

  Mat picture() {
    return picture;
  }

  private void line(
      double x1, double y1, double z1, double x2, double y2, double z2, int thickness) {
    opencv_imgproc.line(
        picture,
        project(x1, y1, z1),
        project(x2, y2, z2),
        new Scalar(60, 55, 50, 0),
        thickness,
        opencv_imgproc.LINE_AA,
        SUBPIXEL_BITS);
  }

  private Point project(double x, double y, double z) {
    double depth = z + 4;
    double xYawed = x * Math.cos(yaw) - depth * Math.sin(yaw);
    double zYawed = x * Math.sin(yaw) + depth * Math.cos(yaw);
    double yPitched = y * Math.cos(pitch) - zYawed * Math.sin(pitch);
    double zPitched = y * Math.sin(pitch) + zYawed * Math.cos(pitch);
    double u = FOCAL_PX * xYawed / zPitched;
    double v = -FOCAL_PX * yPitched / zPitched;
    double unit = 1 << SUBPIXEL_BITS;
    double column = u * Math.cos(roll) - v * Math.sin(roll) + (WIDTH - 1) / 2.0;
    double row = u * Math.sin(roll) + v * Math.cos(roll) + (HEIGHT - 1) / 2.0;
    return new Point((int) Math.round(column * unit), (int) Math.round(row * unit));
  }
}
