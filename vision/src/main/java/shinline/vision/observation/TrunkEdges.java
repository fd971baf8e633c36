package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PersonMask;
import shinline.vision.pose.PoseSighting;

/**
 * Reads the edges of the trunk off the mask of a person: from the line between mid-hip and
 * mid-shoulder straight out to either side, to where the mask ends.
 */
public final class TrunkEdges {
  /** Steps along the way out, shares of the trunk: less than a cell of the mask. */
  private static final double STEP = 0.005;

  /** Nobody's trunk reaches farther from its middle line than this share of its length. */
  private static final double FARTHEST = 0.6;

  private static final double EDGE = 0.5;

  /**
   * An arm is about this thick to either side of its bones, with some margin, share of the trunk:
   * an edge no farther out than this may be the arm's (0.11 was seen on clips where it was, in a
   * long sleeve with the hands on the hips).
   */
  private static final double ARM = 0.12;

  /** Along the trunk an arm hides places this near. */
  private static final double ARM_ALONG = 0.05;

  private static final int POINTS_OF_ARM = 20;

  private final double[] places;
  private final int widthPx;
  private final int heightPx;

  /**
   * @param places where along the line to look, shares of the way from hip to shoulder
   * @param widthPx width of the upright picture
   * @param heightPx height of the upright picture
   */
  public TrunkEdges(double[] places, int widthPx, int heightPx) {
    this.places = places.clone();
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /**
   * The trunk's edges in one frame.
   *
   * @param frame index of the frame in the clip
   * @param timeS seconds from the first frame
   * @param found the pose in that frame
   * @param mask the person in that frame
   */
  public TrunkSilhouette silhouette(
      int frame, double timeS, PoseSighting.Found found, PersonMask mask) {
    Trunk trunk = Trunk.of(found);
    List<double[]> arms = new ArrayList<>();
    arm(
        arms,
        trunk,
        found,
        BodyLandmark.LEFT_SHOULDER,
        BodyLandmark.LEFT_ELBOW,
        BodyLandmark.LEFT_WRIST);
    arm(
        arms,
        trunk,
        found,
        BodyLandmark.RIGHT_SHOULDER,
        BodyLandmark.RIGHT_ELBOW,
        BodyLandmark.RIGHT_WRIST);
    // Of the two ways square to the trunk, one leads to the picture's left.
    int left = trunk.acrossX() < 0 ? 1 : -1;
    return new TrunkSilhouette(
        frame,
        timeS,
        new PicturePoint(trunk.hipX, trunk.hipY),
        new PicturePoint(trunk.hipX + trunk.toX, trunk.hipY + trunk.toY),
        edge(trunk, arms, mask, left),
        edge(trunk, arms, mask, -left));
  }

  /** The line from hip to shoulder in the picture, y down. */
  private record Trunk(double hipX, double hipY, double toX, double toY) {
    static Trunk of(PoseSighting.Found found) {
      Keypoint lh = found.at(BodyLandmark.LEFT_HIP);
      Keypoint rh = found.at(BodyLandmark.RIGHT_HIP);
      Keypoint ls = found.at(BodyLandmark.LEFT_SHOULDER);
      Keypoint rs = found.at(BodyLandmark.RIGHT_SHOULDER);
      double hipX = (lh.x() + rh.x()) / 2;
      double hipY = (lh.y() + rh.y()) / 2;
      return new Trunk(hipX, hipY, (ls.x() + rs.x()) / 2 - hipX, (ls.y() + rs.y()) / 2 - hipY);
    }

    double acrossX() {
      return toY;
    }

    double acrossY() {
      return -toX;
    }

    /** Column at a share of the trunk along it and a share of its length across. */
    double x(double along, double across) {
      return hipX + along * toX + across * acrossX();
    }

    double y(double along, double across) {
      return hipY + along * toY + across * acrossY();
    }

    /** Shares along and across of a point of the picture. */
    double[] shares(double x, double y) {
      double square = toX * toX + toY * toY;
      double dx = x - hipX;
      double dy = y - hipY;
      return new double[] {
        (dx * toX + dy * toY) / square, (dx * acrossX() + dy * acrossY()) / square
      };
    }
  }

  private static void arm(
      List<double[]> arms, Trunk trunk, PoseSighting.Found found, BodyLandmark... joints) {
    for (int j = 1; j < joints.length; j++) {
      Keypoint a = found.at(joints[j - 1]);
      Keypoint b = found.at(joints[j]);
      for (int i = 0; i <= POINTS_OF_ARM; i++) {
        double share = (double) i / POINTS_OF_ARM;
        arms.add(trunk.shares(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
      }
    }
  }

  private List<Optional<PicturePoint>> edge(
      Trunk trunk, List<double[]> arms, PersonMask mask, int way) {
    List<Optional<PicturePoint>> edge = new ArrayList<>();
    for (double along : places) {
      double out = reach(trunk, mask, along, way);
      double x = trunk.x(along, way * out);
      double y = trunk.y(along, way * out);
      boolean inPicture = x > 0 && x < widthPx - 1 && y > 0 && y < heightPx - 1;
      edge.add(
          out > 0 && out < FARTHEST && inPicture && !covered(arms, along, way, out)
              ? Optional.of(new PicturePoint(x, y))
              : Optional.empty());
    }
    return edge;
  }

  /** How far out the mask reaches; 0 where the line itself lies outside it. */
  private static double reach(Trunk trunk, PersonMask mask, double along, int way) {
    double inner = mask.probabilityAt(trunk.x(along, 0), trunk.y(along, 0));
    if (inner < EDGE) {
      return 0;
    }
    for (int step = 1; step * STEP <= FARTHEST; step++) {
      double across = way * step * STEP;
      double outer = mask.probabilityAt(trunk.x(along, across), trunk.y(along, across));
      if (outer < EDGE) {
        return STEP * (step - (EDGE - outer) / (inner - outer));
      }
      inner = outer;
    }
    return FARTHEST;
  }

  private static boolean covered(List<double[]> arms, double along, int way, double out) {
    return arms.stream()
        .anyMatch(p -> Math.abs(p[0] - along) < ARM_ALONG && out - way * p[1] < ARM);
  }
}
