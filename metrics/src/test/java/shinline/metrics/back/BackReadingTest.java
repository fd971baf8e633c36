package shinline.metrics.back;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static shinline.metrics.synthetic.BackMaker.arc;
import static shinline.metrics.synthetic.BackMaker.hiding;
import static shinline.metrics.synthetic.BackMaker.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.reps.Tempo;
import shinline.metrics.track.Side;

/** The bow of backs whose shape is known. */
class BackReadingTest {
  private static final Rep REP =
      new Rep(
          1,
          new RepTimes(2, 4, 4.5, 5, 6),
          new Tempo(2, 1, 1, OptionalDouble.empty()),
          100,
          40,
          100);

  private static final double STANDING_S = 1.5;
  private static final double BOTTOM_S = 4.5;
  private static final double EXACT = 1e-9;

  /** The parabola and the arc part by h³/a² or so: 0.0008 for a rise of 0.05 over 0.8. */
  private static final double FLAT_ARC = 0.001;

  private static Optional<BackReading.Change> change(Side facing, TrunkOutline... looks) {
    return BackReading.of(List.of(looks), List.of(REP), facing).at(REP);
  }

  private static double more(Side facing, TrunkOutline... looks) {
    return change(facing, looks).orElseThrow().more();
  }

  private static double more(DoubleUnaryOperator standing, DoubleUnaryOperator bottom) {
    return more(
        Side.RIGHT,
        outline(STANDING_S, Side.RIGHT, 130, 0.1, standing),
        outline(BOTTOM_S, Side.RIGHT, 118, 0.5, bottom));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.03, 0.05, -0.02, -0.05})
  void anArcAgainstAStraightBackRisesByItsSagitta(double rise) {
    assertThat(more(arc(0.2, 0), arc(0.2, rise))).isCloseTo(rise, within(FLAT_ARC));
  }

  @Test
  void theSagittaOfAnAngle() {
    // A fifth of a radian seen over 0.8 trunks: r = 0.8 / (2 sin 0.1), sagitta r (1 - cos 0.1).
    double radius = 0.8 / (2 * Math.sin(0.1));
    double sagitta = radius * (1 - Math.cos(0.1));
    DoubleUnaryOperator bent =
        s -> 0.2 + Math.sqrt(radius * radius - (s - 0.45) * (s - 0.45)) - radius * Math.cos(0.1);
    assertThat(more(arc(0.2, 0), bent)).isCloseTo(sagitta, within(FLAT_ARC));
  }

  @Test
  void whatIsThereInStandingDropsOut() {
    DoubleUnaryOperator spine = s -> 0.2 + 0.06 * Math.sin(9 * s) + 0.03 * s;
    assertThat(more(spine, spine)).isCloseTo(0, within(EXACT));
    DoubleUnaryOperator rounded = s -> spine.applyAsDouble(s) + arc(0, 0.05).applyAsDouble(s);
    assertThat(more(spine, rounded)).isCloseTo(0.05, within(FLAT_ARC));
  }

  @Test
  void aBackThatIsOnlyThickerOrTiltedDoesNotBow() {
    assertThat(more(s -> 0.2, s -> 0.24 + 0.1 * s)).isCloseTo(0, within(EXACT));
  }

  /** The picture's size, the athlete's lean and the side they face change nothing. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void mirrorScaleAndTurnChangeNothing(long seed) {
    Random random = new Random(seed);
    double[] wave = random.doubles(4, 0.01, 0.05).toArray();
    DoubleUnaryOperator standing = s -> 0.2 + wave[0] * Math.sin(7 * s + wave[1] * 60);
    DoubleUnaryOperator bottom = s -> 0.22 + wave[2] * Math.cos(5 * s + wave[3] * 60);
    double here = more(standing, bottom);
    double there =
        more(
            Side.LEFT,
            outline(STANDING_S, Side.LEFT, 400 + 50 * random.nextDouble(), 0.2, standing),
            outline(BOTTOM_S, Side.LEFT, 300 + 50 * random.nextDouble(), 0.9, bottom));
    assertThat(there).isCloseTo(here, within(EXACT));
  }

  @Test
  void anArmOverTheMiddleOfTheBackIsDoneWithout() {
    TrunkOutline standing = outline(STANDING_S, Side.RIGHT, 130, 0.1, arc(0.2, 0));
    TrunkOutline bottom = outline(BOTTOM_S, Side.RIGHT, 130, 0.4, arc(0.2, 0.05));
    assertThat(more(Side.RIGHT, standing, hiding(bottom, i -> i > 6 && i < 13)))
        .isCloseTo(0.05, within(2 * FLAT_ARC));
  }

  @Test
  void aFewPlacesFarOffAreLeftOut() {
    DoubleUnaryOperator rounded = arc(0.2, 0.05);
    // A bar behind the back passes for the person over a tenth of the trunk.
    DoubleUnaryOperator bar = s -> rounded.applyAsDouble(s) + (s > 0.28 && s < 0.38 ? 0.15 : 0);
    assertThat(more(arc(0.2, 0), bar)).isCloseTo(0.05, within(FLAT_ARC));
  }

  @Test
  void tooLittleOfTheBackIsNotMeasured() {
    TrunkOutline standing = outline(STANDING_S, Side.RIGHT, 130, 0.1, arc(0.2, 0));
    TrunkOutline bottom = outline(BOTTOM_S, Side.RIGHT, 130, 0.4, arc(0.2, 0.05));
    assertThat(change(Side.RIGHT, standing, hiding(bottom, i -> i % 2 == 0 || i == 1))).isEmpty();
    assertThat(change(Side.RIGHT, standing, hiding(bottom, i -> i < 4))).isEmpty();
    assertThat(change(Side.RIGHT, standing, hiding(bottom, i -> i > 12))).isEmpty();
    assertThat(change(Side.RIGHT, hiding(standing, i -> i < 4), bottom)).isEmpty();
  }

  @Test
  void withoutALookAtStandingOrAtTheBottomNothingIsSaid() {
    TrunkOutline early = outline(0.1, Side.RIGHT, 130, 0.1, arc(0.2, 0));
    TrunkOutline standing = outline(STANDING_S, Side.RIGHT, 130, 0.1, arc(0.2, 0));
    TrunkOutline bottom = outline(BOTTOM_S, Side.RIGHT, 130, 0.4, arc(0.2, 0.05));
    TrunkOutline rising = outline(5.5, Side.RIGHT, 130, 0.4, arc(0.2, 0.05));
    assertThat(change(Side.RIGHT)).isEmpty();
    assertThat(change(Side.RIGHT, early, bottom)).isEmpty();
    assertThat(change(Side.RIGHT, standing, rising)).isEmpty();
    // The front of the trunk is not the back.
    assertThat(change(Side.LEFT, standing, bottom)).isEmpty();
  }

  @Test
  void oneBadMaskOfThreeDoesNotMatter() {
    List<TrunkOutline> looks = new ArrayList<>();
    looks.add(outline(STANDING_S, Side.RIGHT, 130, 0.1, arc(0.2, 0)));
    looks.add(outline(4.3, Side.RIGHT, 130, 0.4, arc(0.2, 0.05)));
    looks.add(outline(4.5, Side.RIGHT, 130, 0.4, arc(0.2, -0.1)));
    looks.add(outline(4.7, Side.RIGHT, 130, 0.4, arc(0.2, 0.05)));
    BackReading.Change change =
        BackReading.of(looks, List.of(REP), Side.RIGHT).at(REP).orElseThrow();
    assertThat(change.more()).isCloseTo(0.05, within(FLAT_ARC));
    assertThat(change.atS()).isEqualTo(4.3);
  }

  /** The two lines meet at their ends, and the gap half way is the bow. */
  @ParameterizedTest
  @EnumSource(Side.class)
  void theGapThatIsDrawnIsTheBow(Side facing) {
    TrunkOutline bottom = outline(BOTTOM_S, facing, 100, 0.4, arc(0.24, 0.05));
    BackLine line =
        change(facing, outline(STANDING_S, facing, 130, 0.1, s -> 0.2 + 0.03 * s), bottom)
            .orElseThrow()
            .line();
    int last = TrunkOutline.PLACES - 1;
    double tolerancePx = 100 * FLAT_ARC;
    assertThat(line.now()).hasSize(TrunkOutline.PLACES);
    for (int end : new int[] {0, last}) {
      assertThat(line.standing().get(end).distanceTo(line.now().get(end))).isLessThan(tolerancePx);
    }
    assertThat(line.standing().get(last / 2).distanceTo(line.now().get(last / 2)))
        .isCloseTo(5, within(tolerancePx));
  }

  @Test
  void anOutlineHasAllItsPlaces() {
    TrunkOutline whole = outline(1, Side.RIGHT, 130, 0, s -> 0.2);
    assertThatThrownBy(
            () -> new TrunkOutline(1, 1, whole.hip(), whole.shoulder(), List.of(), whole.right()))
        .hasMessageContaining("17 places");
  }
}
