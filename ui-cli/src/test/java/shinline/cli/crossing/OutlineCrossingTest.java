package shinline.cli.crossing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.metrics.back.TrunkOutline;
import shinline.metrics.geometry.Point;
import shinline.vision.observation.PicturePoint;
import shinline.vision.observation.TrunkSilhouette;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

class OutlineCrossingTest {
  private static final int HEIGHT = 480;
  private static final PictureAxis AXIS = new PictureAxis(HEIGHT);

  private static TrunkSilhouette seen() {
    List<Optional<PicturePoint>> edge =
        new ArrayList<>(Collections.nCopies(TrunkOutline.PLACES, Optional.empty()));
    edge.set(4, Optional.of(new PicturePoint(200, 150)));
    return new TrunkSilhouette(
        30, 1, new PicturePoint(210, 279), new PicturePoint(215, 179), edge, edge);
  }

  @Test
  void rowsBecomeHeights() {
    TrunkOutline outline =
        OutlineCrossing.outlines(List.of(seen()), CameraPath.still(), AXIS).get(0);
    assertThat(outline.frame()).isEqualTo(30);
    assertThat(outline.timeS()).isEqualTo(1);
    assertThat(outline.hip()).isEqualTo(new Point(210, 200));
    assertThat(outline.shoulder()).isEqualTo(new Point(215, 300));
    assertThat(outline.left().get(4)).contains(new Point(200, HEIGHT - 1 - 150));
    assertThat(outline.right().get(3)).isEmpty();
  }

  @Test
  void ofAHandHeldClipTheOutlineMovesToTheStillViewAsAWhole() {
    Similarity move = new Similarity(0.99, 0.05, 7, -3);
    CameraPath camera = CameraPath.of(List.of(1.0), List.of(move));
    TrunkOutline still = OutlineCrossing.outlines(List.of(seen()), camera, AXIS).get(0);
    Point moved = still.left().get(4).orElseThrow();
    assertThat(moved.x()).isCloseTo(move.x(200, 150), within(1e-9));
    assertThat(HEIGHT - 1 - moved.y()).isCloseTo(move.y(200, 150), within(1e-9));
    assertThat(still.right().get(3)).isEmpty();
  }

  @Test
  void placesAreThoseOfAnOutline() {
    double[] places = OutlineCrossing.places();
    assertThat(places).hasSize(TrunkOutline.PLACES).isSorted();
    assertThat(places[3]).isEqualTo(TrunkOutline.place(3));
  }
}
