package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.vision.pose.HeatmapRefinement.Search;

/** The small parts of the tracker, against answers worked out by hand. */
final class PosePartsTest {
  private static final double EXACT = 1e-9;
  private static final float NOTHING = -100;
  private static final int SIDE = HeatmapRefinement.SIDE;

  @Test
  void thereAre2254Anchors() {
    DetectorAnchors.Anchor[] anchors = DetectorAnchors.all();
    assertThat(anchors).hasSize(2254);
    assertThat(anchors[0]).isEqualTo(new DetectorAnchors.Anchor(0.5 / 28, 0.5 / 28));
    assertThat(anchors[2253]).isEqualTo(new DetectorAnchors.Anchor(6.5 / 7, 6.5 / 7));
  }

  @Test
  void aSinglePeakPullsTheLandmarkOntoIt() {
    float[] heatmap = emptyHeatmap();
    heatmap[20 * SIDE + 12] = 3;
    var place = HeatmapRefinement.refine(place(10.5, 18.2), Search.NEAR, heatmap, 1, 0);
    assertThat(place.u()).isCloseTo(12.0 / SIDE, within(EXACT));
    assertThat(place.v()).isCloseTo(20.0 / SIDE, within(EXACT));
  }

  @Test
  void twoCellsAreWeightedByTheirProbabilities() {
    float[] heatmap = emptyHeatmap();
    heatmap[20 * SIDE + 10] = (float) Math.log(3); // probability 3/4
    heatmap[20 * SIDE + 12] = (float) -Math.log(3); // probability 1/4
    var place = HeatmapRefinement.refine(place(10.5, 20.5), Search.NEAR, heatmap, 1, 0);
    assertThat(place.u()).isCloseTo(10.5 / SIDE, within(1e-7));
  }

  @Test
  void aWeakPeakOrAPeakOutOfReachChangesNothing() {
    float[] heatmap = emptyHeatmap();
    heatmap[20 * SIDE + 10] = -0.1f;
    heatmap[20 * SIDE + 14] = 5;
    var place = place(10.5, 20.5);
    assertThat(HeatmapRefinement.refine(place, Search.NEAR, heatmap, 1, 0)).isEqualTo(place);
    var outside = place(-0.5, 20.5);
    assertThat(HeatmapRefinement.refine(outside, Search.NEAR, heatmap, 1, 0)).isEqualTo(outside);
  }

  @Test
  void aMeanOfTwoLegsGoesToTheStrongerOfTheTwoPeaks() {
    float[] heatmap = emptyHeatmap();
    heatmap[20 * SIDE + 10] = -0.4f;
    heatmap[24 * SIDE + 40] = -0.6f;
    var between = place(25.5, 22.5);
    assertThat(HeatmapRefinement.refine(between, Search.NEAR, heatmap, 1, 0)).isEqualTo(between);
    var place = HeatmapRefinement.refine(between, Search.ANYWHERE, heatmap, 1, 0);
    assertThat(place.u()).isCloseTo(10.0 / SIDE, within(EXACT));
    assertThat(place.v()).isCloseTo(20.0 / SIDE, within(EXACT));
  }

  @Test
  void withoutAPeakAnywhereTheLandmarkStays() {
    float[] heatmap = emptyHeatmap();
    heatmap[20 * SIDE + 10] = -2;
    var between = place(25.5, 22.5);
    assertThat(HeatmapRefinement.refine(between, Search.ANYWHERE, heatmap, 1, 0))
        .isEqualTo(between);
  }

  private static HeatmapRefinement.Place place(double column, double row) {
    return new HeatmapRefinement.Place(column / SIDE, row / SIDE);
  }

  private static float[] emptyHeatmap() {
    float[] heatmap = new float[SIDE * SIDE];
    Arrays.fill(heatmap, NOTHING);
    return heatmap;
  }

  @Test
  void anUprightBodyGivesAnUprightRegion() {
    RegionOfInterest region = RegionOfInterest.around(100, 200, 100, 120);
    assertThat(region.sizePx()).isCloseTo(2 * 80 * 1.25, within(EXACT));
    assertThat(region.rotationRad()).isCloseTo(0, within(EXACT));
    assertThat(region.frameX(0, 0.5)).isCloseTo(0, within(EXACT));
    assertThat(region.frameY(0.5, 1)).isCloseTo(300, within(EXACT));
  }

  @Test
  void theRegionTurnsWithTheBodyAndLeadsBack() {
    RegionOfInterest lying = RegionOfInterest.around(100, 200, 180, 200);
    assertThat(lying.rotationRad()).isCloseTo(Math.PI / 2, within(EXACT));
    // Up in the region is to the right in the frame.
    assertThat(lying.frameX(0.5, 0)).isCloseTo(200, within(EXACT));
    RegionOfInterest slanted = new RegionOfInterest(37, 11, 90, 0.7);
    double x = slanted.frameX(0.2, 0.9);
    double y = slanted.frameY(0.2, 0.9);
    assertThat(slanted.regionU(x, y)).isCloseTo(0.2, within(EXACT));
    assertThat(slanted.regionV(x, y)).isCloseTo(0.9, within(EXACT));
  }

  @Test
  void badParametersAreRefused() {
    assertThatThrownBy(() -> new RegionOfInterest(0, 0, 0, 0)).hasMessageContaining("size");
  }

  @Test
  void theFilterKeepsAConstantAndAnswersAStepByItsFormula() {
    OneEuroFilter filter = new OneEuroFilter(1, 0, 1);
    assertThat(filter.next(5, 1, 0)).isEqualTo(5);
    assertThat(filter.next(5, 1, 0.1)).isCloseTo(5, within(EXACT));
    double share = 1 / (1 + 1 / (2 * Math.PI * 0.1));
    assertThat(filter.next(6, 1, 0.2)).isCloseTo(5 + share, within(EXACT));
    // A time that stands still adds nothing.
    assertThat(filter.next(9, 1, 0.2)).isCloseTo(5 + share, within(EXACT));
  }

  @Test
  void aFasterValueIsFollowedMoreClosely() {
    OneEuroFilter stiff = new OneEuroFilter(0.01, 0, 1);
    OneEuroFilter quick = new OneEuroFilter(0.01, 10, 1);
    stiff.next(0, 1, 0);
    quick.next(0, 1, 0);
    assertThat(quick.next(1, 1, 0.1)).isGreaterThan(stiff.next(1, 1, 0.1));
  }

  @Test
  void boxesOfOnePersonBecomeOneAndTwoPeopleStayTwo() {
    DetectorBox a = box(0.1, 0.9);
    DetectorBox b = box(0.12, 0.6);
    DetectorBox other = box(0.6, 0.7);
    List<DetectorBox> people = DetectorBox.onePerPerson(List.of(b, other, a));
    assertThat(people).extracting(DetectorBox::score).containsExactly(0.9, 0.7);
    double mean = (0.1 * 0.9 + 0.12 * 0.6) / 1.5;
    assertThat(people.get(0).values()[0]).isCloseTo(mean, within(EXACT));
  }

  private static DetectorBox box(double left, double score) {
    return new DetectorBox(new double[] {left, 0, left + 0.2, 0.2, 0, 0, 0, 0}, score);
  }

  @Test
  void theDetectorSeesOnePersonInThePicture() {
    try (PersonDetector detector = PersonDetector.open()) {
      assertThat(detector.detect(SplitSquatPicture.read())).hasSize(1);
    }
  }

  @Test
  void theMaskCoversTheKneeAndNotTheWall() {
    Mat picture = SplitSquatPicture.read();
    try (PersonDetector detector = PersonDetector.open();
        PersonSegmenter segmenter = PersonSegmenter.open()) {
      RegionOfInterest region = detector.detect(picture).get(0).region();
      PersonMask mask = segmenter.mask(picture, region);
      double[] knee = SplitSquatPicture.TRUTH.get(BodyLandmark.RIGHT_KNEE);
      assertThat(mask.probabilityAt(knee[0], knee[1])).isGreaterThan(0.5);
      assertThat(mask.probabilityAt(region.frameX(0.02, 0.1), region.frameY(0.02, 0.1)))
          .isLessThan(0.5);
      assertThat(mask.probabilityAt(-1e4, 0)).isZero();
    }
  }

  @Test
  void aModelUnpackedIsTheSameModel(@TempDir Path folder) throws IOException {
    Mat picture = SplitSquatPicture.read();
    RegionOfInterest region;
    try (PersonDetector detector = PersonDetector.open()) {
      region = detector.detect(picture).get(0).region();
    }
    float packed = middleOfMask(picture, region);
    for (String name : ModelFile.names()) {
      try (InputStream in = ModelFile.packed(name).orElseThrow().openStream()) {
        Files.copy(in, folder.resolve(name));
      }
    }
    String before = System.getProperty(ModelFile.UNPACKED);
    System.setProperty(ModelFile.UNPACKED, folder.toString());
    try {
      assertThat(ModelFile.unpacked(ModelFile.OUTLINES)).isPresent();
      assertThat(middleOfMask(picture, region)).isEqualTo(packed);
    } finally {
      if (before == null) {
        System.clearProperty(ModelFile.UNPACKED);
      } else {
        System.setProperty(ModelFile.UNPACKED, before);
      }
    }
  }

  private static float middleOfMask(Mat picture, RegionOfInterest region) {
    try (PersonSegmenter segmenter = PersonSegmenter.open()) {
      return (float)
          segmenter
              .mask(picture, region)
              .probabilityAt(region.frameX(0.45, 0.4), region.frameY(0.45, 0.4));
    }
  }

  @Test
  void theRuntimeIsToldToStayOffTheNetwork() {
    PersonDetector.open().close();
    assertThat(System.getProperty("ai.djl.offline")).isEqualTo("true");
    assertThat(System.getProperty("OPT_OUT_TRACKING")).isEqualTo("true");
  }
}
