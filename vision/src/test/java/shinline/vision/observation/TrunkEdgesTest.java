package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PersonMask;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;

/** Edges read off masks that are drawn, so that every edge is known. */
class TrunkEdgesTest {
  /** Shares of the way from hip to shoulder. */
  private static final double[] PLACES = {0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85};

  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;
  private static final RegionOfInterest REGION = new RegionOfInterest(320, 240, 384, 0.2);

  /** A cell is 1.5 pixels wide, and the edge lies within one. */
  private static final double CELL_PX = 1.5;

  private static final double HIP_X = 330;
  private static final double HIP_Y = 300;
  private static final double TRUNK_PX = 120;

  /** A trunk from the hip up that leans, its edges at given shares of its length. */
  private record Body(double leanRad, DoubleUnaryOperator left, DoubleUnaryOperator right) {
    double x(double along, double toRight) {
      return HIP_X + TRUNK_PX * (along * Math.sin(leanRad) + toRight * Math.cos(leanRad));
    }

    double y(double along, double toRight) {
      return HIP_Y - TRUNK_PX * (along * Math.cos(leanRad) - toRight * Math.sin(leanRad));
    }

    PersonMask mask() {
      float[] logits = new float[PersonMask.SIDE * PersonMask.SIDE];
      for (int row = 0; row < PersonMask.SIDE; row++) {
        for (int column = 0; column < PersonMask.SIDE; column++) {
          double u = (column + 0.5) / PersonMask.SIDE;
          double v = (row + 0.5) / PersonMask.SIDE;
          double dx = (REGION.frameX(u, v) - HIP_X) / TRUNK_PX;
          double dy = (HIP_Y - REGION.frameY(u, v)) / TRUNK_PX;
          double along = dx * Math.sin(leanRad) + dy * Math.cos(leanRad);
          double toRight = dx * Math.cos(leanRad) - dy * Math.sin(leanRad);
          boolean person =
              along > -1
                  && along < 1.3
                  && toRight < right.applyAsDouble(along)
                  && -toRight < left.applyAsDouble(along);
          logits[row * PersonMask.SIDE + column] = person ? 8 : -8;
        }
      }
      return new PersonMask(logits, REGION);
    }

    /** Arms hang before the chest unless an elbow is put somewhere. */
    PoseSighting.Found pose(double elbowAlong, double elbowToRight) {
      Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
      for (BodyLandmark landmark : BodyLandmark.values()) {
        points.put(landmark, at(0.5, 0));
      }
      for (BodyLandmark hip : List.of(BodyLandmark.LEFT_HIP, BodyLandmark.RIGHT_HIP)) {
        points.put(hip, at(0, 0));
      }
      for (BodyLandmark s : List.of(BodyLandmark.LEFT_SHOULDER, BodyLandmark.RIGHT_SHOULDER)) {
        points.put(s, at(1, 0));
      }
      points.put(BodyLandmark.LEFT_ELBOW, at(elbowAlong, elbowToRight));
      return new PoseSighting.Found(points, 1, REGION);
    }

    private Keypoint at(double along, double toRight) {
      return new Keypoint(x(along, toRight), y(along, toRight), 0, 1, 1);
    }

    TrunkSilhouette outline(double elbowAlong, double elbowToRight) {
      return new TrunkEdges(PLACES, WIDTH, HEIGHT)
          .silhouette(7, 1.5, pose(elbowAlong, elbowToRight), mask());
    }

    TrunkSilhouette outline() {
      return outline(0.5, 0);
    }

    PicturePoint inPicture(double along, double toRight) {
      return new PicturePoint(x(along, toRight), y(along, toRight));
    }
  }

  private static double distance(PicturePoint a, PicturePoint b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private static double wave(double along) {
    return 0.25 + 0.04 * Math.sin(6 * along);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.4, -0.3})
  void bothEdgesLieWhereTheMaskEnds(double leanRad) {
    Body body = new Body(leanRad, TrunkEdgesTest::wave, s -> 0.2 + 0.05 * s);
    TrunkSilhouette outline = body.outline();
    assertThat(outline.frame()).isEqualTo(7);
    assertThat(outline.timeS()).isEqualTo(1.5);
    assertThat(distance(outline.hip(), body.inPicture(0, 0))).isLessThan(1e-9);
    assertThat(distance(outline.shoulder(), body.inPicture(1, 0))).isLessThan(1e-9);
    for (int i = 0; i < PLACES.length; i++) {
      double s = PLACES[i];
      assertThat(distance(outline.left().get(i).orElseThrow(), body.inPicture(s, -wave(s))))
          .isLessThan(CELL_PX);
      assertThat(distance(outline.right().get(i).orElseThrow(), body.inPicture(s, 0.2 + 0.05 * s)))
          .isLessThan(CELL_PX);
    }
  }

  /** The mirrored body: what was left is right. */
  @Test
  void mirroringExchangesTheSides() {
    TrunkSilhouette here = new Body(0.3, TrunkEdgesTest::wave, s -> 0.2).outline();
    TrunkSilhouette there = new Body(-0.3, s -> 0.2, TrunkEdgesTest::wave).outline();
    for (int i = 0; i < PLACES.length; i++) {
      PicturePoint a = here.left().get(i).orElseThrow();
      PicturePoint b = there.right().get(i).orElseThrow();
      assertThat(b.y()).isCloseTo(a.y(), within(CELL_PX));
      assertThat(b.x() - HIP_X).isCloseTo(HIP_X - a.x(), within(CELL_PX));
    }
  }

  @Test
  void anElbowAtTheEdgeHidesThePlacesAroundIt() {
    Body body = new Body(0, s -> 0.25, s -> 0.25);
    TrunkSilhouette outline = body.outline(0.5, -0.2);
    assertThat(at(outline.left(), 0.5)).isEmpty();
    assertThat(at(outline.left(), 0.1)).isPresent();
    assertThat(at(outline.left(), 0.85)).isPresent();
    assertThat(outline.right()).allMatch(Optional::isPresent);
    // Well inside the trunk it hides nothing.
    assertThat(body.outline(0.5, -0.1).left()).allMatch(Optional::isPresent);
  }

  private static Optional<PicturePoint> at(List<Optional<PicturePoint>> edge, double share) {
    for (int i = 0; i < edge.size(); i++) {
      if (Math.abs(PLACES[i] - share) < 1e-9) {
        return edge.get(i);
      }
    }
    throw new AssertionError("no place at " + share);
  }

  @Test
  void withoutAMaskOrWithoutAnEndThereIsNoEdge() {
    assertThat(new Body(0, s -> -0.1, s -> 0.25).outline().left()).allMatch(Optional::isEmpty);
    // A mask that goes on and on is no trunk's.
    assertThat(new Body(0, s -> 2, s -> 0.25).outline().left()).allMatch(Optional::isEmpty);
  }

  @Test
  void thePicturesBorderIsNoEdge() {
    Body body = new Body(0, s -> 0.25, s -> 0.25);
    TrunkSilhouette cut =
        new TrunkEdges(PLACES, (int) HIP_X + 20, HEIGHT)
            .silhouette(0, 0, body.pose(0.5, 0), body.mask());
    assertThat(cut.right()).allMatch(Optional::isEmpty);
    assertThat(cut.left()).allMatch(Optional::isPresent);
  }
}
