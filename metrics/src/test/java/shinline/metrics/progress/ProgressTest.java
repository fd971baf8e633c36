package shinline.metrics.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Asked;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** Worked by hand unless a source is named. */
class ProgressTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 2);
  private static final double EXACT = 1e-9;

  private final List<FollowedSet> sets = new ArrayList<>();

  /** MDC95 = 1.96 √2 SEM: 1.8 gives 4.99, 2.8 gives 7.76, 1.4 gives 3.88 (Konor 2012: 3.7-3.8). */
  @ParameterizedTest
  @CsvSource({"1.8, 4.99", "2.8, 7.76", "1.4, 3.88"})
  void theSmallestRealChangeIsThePublishedOne(double sem, double limit) {
    shin(0, 10, 1.96 * sem, OptionalDouble.empty());
    shin(7, 10 + limit + 0.01, 1.96 * sem, OptionalDouble.empty());
    Stretch stretch = left().latest(Followed.SHIN).orElseThrow();
    assertThat(stretch.realChange().orElseThrow()).isCloseTo(limit, within(0.005));
    assertThat(stretch.verdict()).isEqualTo(Stretch.Change.REAL);
    sets.remove(1);
    shin(7, 10 - limit + 0.02, 1.96 * sem, OptionalDouble.empty());
    assertThat(left().latest(Followed.SHIN).orElseThrow().verdict())
        .isEqualTo(Stretch.Change.WITHIN_ERROR);
  }

  @Test
  void theErrorOfSessionsIsPooled() {
    shin(0, 10, 3, OptionalDouble.empty());
    shin(7, 12, 4, OptionalDouble.empty());
    // Root mean square of 3 and 4 is √12.5; times √2 it is 5.
    assertThat(left().latest(Followed.SHIN).orElseThrow().realChange().orElseThrow())
        .isCloseTo(5, within(EXACT));
  }

  @Test
  void withoutTheBodysBiasSmallerChangesAreReal() {
    shin(0, 10, 3, OptionalDouble.of(1));
    shin(7, 12, 3, OptionalDouble.of(1));
    Stretch stretch = left().latest(Followed.SHIN).orElseThrow();
    assertThat(stretch.realChange().orElseThrow()).isCloseTo(Math.sqrt(2), within(EXACT));
    assertThat(stretch.verdict()).isEqualTo(Stretch.Change.REAL);
    assertThat(stretch.withoutBodyBias()).isTrue();
  }

  @Test
  void aSessionIsTheMeanOfItsSetsAndNoSurerThanOne() {
    shin(0, 10, 2, OptionalDouble.of(1));
    shin(0, 13, 4, OptionalDouble.empty());
    SessionValue session = left().latest(Followed.SHIN).orElseThrow().first();
    assertThat(session.value()).isEqualTo(11.5);
    assertThat(session.amount().plusMinus()).hasValue(3);
    assertThat(session.amount().within()).isEmpty();
    assertThat(session.sets()).containsExactly("s0", "s1");
  }

  @Test
  void withoutAnErrorNothingIsSaidOfAChange() {
    add(0, Side.LEFT, "upright", 10, Purpose.WORK, 8, 8, bare(Followed.SHIN, 10));
    add(7, Side.LEFT, "upright", 10, Purpose.WORK, 8, 8, bare(Followed.SHIN, 40));
    assertThat(left().latest(Followed.SHIN).orElseThrow().verdict())
        .isEqualTo(Stretch.Change.UNKNOWN);
  }

  @Test
  void anotherTargetBeginsAnew() {
    add(0, Side.LEFT, "upright", 10, Purpose.WORK, 8, 8, bare(Followed.SHIN, 5));
    add(7, Side.LEFT, "upright", 12, Purpose.WORK, 8, 8, bare(Followed.SHIN, 6));
    add(14, Side.LEFT, "over-toe", 8, Purpose.WORK, 8, 8, bare(Followed.SHIN, 20));
    List<Stretch> stretches = left().stretches(Followed.LOAD);
    assertThat(stretches).hasSize(2);
    assertThat(stretches.get(0).change()).isEqualTo(2);
    assertThat(stretches.get(0).verdict()).isEqualTo(Stretch.Change.REAL);
    assertThat(stretches.get(1).verdict()).isEqualTo(Stretch.Change.ONE_SESSION);
    assertThat(left().latest(Followed.SHIN).orElseThrow().asking().target()).isEqualTo("over-toe");
  }

  @Test
  void aSessionsLoadIsItsLightestWorkSet() {
    add(0, Side.LEFT, "upright", 12, Purpose.WORK, 8, 8, Map.of());
    add(0, Side.LEFT, "upright", 10, Purpose.WORK, 8, 8, Map.of());
    add(0, Side.LEFT, "upright", 4, Purpose.WARM_UP, 8, 8, Map.of());
    assertThat(left().latest(Followed.LOAD).orElseThrow().last().value()).isEqualTo(10);
  }

  /** Load 100: Epley 116.667, Brzycki 112.5 for five reps (REFERENCES: as commonly quoted). */
  @Test
  void theMaximumComesFromTheBestCleanSet() {
    add(0, Side.LEFT, "upright", 100, Purpose.WORK, 5, 5, Map.of());
    add(0, Side.LEFT, "upright", 110, Purpose.WORK, 5, 4, Map.of());
    add(0, Side.LEFT, "upright", 100, Purpose.WORK, 11, 11, Map.of());
    add(0, Side.LEFT, "upright", 105, Purpose.TEST, 1, 1, Map.of());
    assertThat(left().latest(Followed.MAXIMUM).orElseThrow().last().value())
        .isCloseTo(116.6666667, within(1e-6));
    assertThat(
            AthleteProgress.of(sets, OneRepMax.BRZYCKI)
                .left()
                .latest(Followed.MAXIMUM)
                .orElseThrow()
                .last()
                .value())
        .isCloseTo(112.5, within(EXACT));
  }

  /** 45 against 50 is 90.0 by definition. */
  @Test
  void weakIsTakenOfStrong() {
    add(0, Side.LEFT, "upright", 50, Purpose.WORK, 8, 8, Map.of());
    add(0, Side.RIGHT, "upright", 45, Purpose.WORK, 8, 8, Map.of());
    Sides load = progress().sides().get(0);
    assertThat(load.followed()).isEqualTo(Followed.LOAD);
    assertThat(load.weakerPct()).hasValue(90);
    assertThat(load.weaker()).contains(Side.RIGHT);
    assertThat(progress().fiveRepTest()).isEmpty();
  }

  /** Limits 96.54 and 103.46 % (Helme 2019). */
  @ParameterizedTest
  @CsvSource({
    "96.6, 100, false, 96.6",
    "96.5, 100, true, 96.5",
    "103.4, 100, false, 96.711798839",
    "103.5, 100, true, 96.618357488"
  })
  void onlyAFiveRepTestIsHeldAgainstHelmesLimits(
      double left, double right, boolean beyond, double weakerPct) {
    add(0, Side.LEFT, "upright", left, Purpose.TEST, 5, 5, Map.of());
    add(0, Side.RIGHT, "upright", right, Purpose.TEST, 5, 5, Map.of());
    Sides.FiveRepTest test = progress().fiveRepTest().orElseThrow();
    assertThat(test.beyondLimits()).isEqualTo(beyond);
    assertThat(test.weakerPct()).isCloseTo(weakerPct, within(1e-6));
  }

  @Test
  void legsAreComparedWithTheWholeError() {
    shin(0, 10, 3, OptionalDouble.of(1));
    add(
        0,
        Side.RIGHT,
        "upright",
        10,
        Purpose.WORK,
        8,
        8,
        Map.of(Followed.SHIN, new Amount(14, OptionalDouble.of(4), OptionalDouble.of(1))));
    Sides shin =
        progress().sides().stream()
            .filter(s -> s.followed() == Followed.SHIN)
            .findFirst()
            .orElseThrow();
    assertThat(shin.realDifference()).hasValue(5);
    assertThat(shin.difference()).isEqualTo(-4);
    assertThat(shin.weakerPct()).isEmpty();
  }

  @Test
  void legsAskedForSomethingElseAreNotCompared() {
    add(0, Side.LEFT, "upright", 50, Purpose.WORK, 8, 8, Map.of());
    add(0, Side.RIGHT, "over-toe", 45, Purpose.WORK, 8, 8, Map.of());
    assertThat(progress().sides()).isEmpty();
  }

  /** .50 to .40 is 20 % by definition. */
  @Test
  void setsFadeFromFirstRepToLast() {
    double[] speeds = {0.48, 0.50, 0.46, 0.44, 0.40};
    Map<Integer, Map<Followed, Double>> reps = new TreeMap<>();
    List<SetCounts.RepNote> notes = new ArrayList<>();
    for (int i = 0; i < speeds.length; i++) {
      reps.put(i + 1, Map.of(Followed.DRIVE_SPEED, speeds[i], Followed.TRUNK, 20 + 1.5 * i));
      notes.add(
          new SetCounts.RepNote(
              i + 1, true, i != 4, i == 3 ? List.of("lean-grows") : List.of("wobble")));
    }
    SetCounts counts = new SetCounts(5, Optional.empty(), 0, 3, Map.of(), notes);
    sets.add(
        new FollowedSet(set(0, Side.LEFT, "upright", 10, Purpose.WORK, counts, 5), Map.of(), reps));
    Fading day = progress().fading(left()).get(0);
    assertThat(day.speedLossPct().orElseThrow()).isCloseTo(20, within(EXACT));
    assertThat(day.drift().get(Followed.TRUNK)).isCloseTo(6, within(EXACT));
    // The middle rep is in neither half; the wobble spoils nothing.
    assertThat(day.firstHalf()).isEqualTo(new Fading.Half(2, 2));
    assertThat(day.lastHalf()).isEqualTo(new Fading.Half(2, 0));
  }

  /** Slope of (1,1), (2,3), (3,2) is 0.5: over two reps it is 1. */
  @Test
  void aTrendIsALineByLeastSquares() {
    assertThat(Fading.drift(new TreeMap<>(Map.of(1, 1.0, 2, 3.0, 3, 2.0))).orElseThrow())
        .isCloseTo(1, within(EXACT));
    assertThat(Fading.drift(new TreeMap<>(Map.of(1, 1.0, 2, 3.0)))).isEmpty();
  }

  @Test
  void massesAreToldInTheUnitOfTheLastLoad() {
    add(0, Side.LEFT, "upright", 10, Purpose.WORK, 8, 8, Map.of());
    sets.add(
        new FollowedSet(
            new RecordedSet(
                "lb",
                99,
                entry(
                    7,
                    Side.LEFT,
                    "upright",
                    Mass.of("25", MassUnit.LB),
                    Purpose.WORK,
                    SetCounts.byHand(8, 8),
                    8)),
            Map.of(),
            Map.of()));
    Stretch load = left().latest(Followed.LOAD).orElseThrow();
    assertThat(progress().unit()).isEqualTo(MassUnit.LB);
    // 10 kg ÷ 0.45359237
    assertThat(load.first().value()).isCloseTo(22.0462262, within(1e-6));
    assertThat(load.last().value()).isEqualTo(25);
  }

  @Test
  void noErrorIsNegative() {
    assertThatThrownBy(() -> new Amount(1, OptionalDouble.of(-1), OptionalDouble.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private AthleteProgress progress() {
    return AthleteProgress.of(sets, OneRepMax.EPLEY);
  }

  private LegProgress left() {
    return progress().left();
  }

  private static Map<Followed, Amount> bare(Followed followed, double value) {
    return Map.of(followed, Amount.bare(value));
  }

  private void shin(int days, double value, double plusMinus, OptionalDouble within) {
    add(
        days,
        Side.LEFT,
        "upright",
        10,
        Purpose.WORK,
        8,
        8,
        Map.of(Followed.SHIN, new Amount(value, OptionalDouble.of(plusMinus), within)));
  }

  private void add(
      int days,
      Side leg,
      String target,
      double kg,
      Purpose purpose,
      int reps,
      int clean,
      Map<Followed, Amount> amounts) {
    sets.add(
        new FollowedSet(
            set(days, leg, target, kg, purpose, SetCounts.byHand(reps, clean), reps),
            amounts,
            Map.of()));
  }

  private RecordedSet set(
      int days, Side leg, String target, double kg, Purpose purpose, SetCounts counts, int reps) {
    Mass mass = Mass.of(Double.toString(kg), MassUnit.KG);
    return new RecordedSet(
        "s" + sets.size(), sets.size() + 1, entry(days, leg, target, mass, purpose, counts, reps));
  }

  private static SetEntry entry(
      int days, Side leg, String target, Mass mass, Purpose purpose, SetCounts counts, int reps) {
    return new SetEntry(
        DAY.plusDays(days),
        leg,
        "bench-dumbbells",
        purpose,
        new Asked(OptionalInt.empty(), reps, target, Optional.empty(), Optional.empty()),
        Optional.of(new TrainingLoad(mass, LoadKind.EACH_HAND, Optional.empty())),
        Pain.NO,
        counts);
  }
}
