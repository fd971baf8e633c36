package shinline.metrics.reps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.signal.ButterworthLowPass;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;

class RepFinderTest {

  private static final double LEG_CM = 90;
  private static final RepFinder FINDER = new RepFinder();

  /** Linear crossing between samples of a curve: far below a frame. */
  private static final double EDGE_S = 0.004;

  /**
   * Where a raised cosine (1 − cos πs)/2 has done 5 % of its way: s = acos(0.9)/π. So a lowering of
   * L seconds lasts L(1 − 2s) between its five per cent levels, and the hold gains s of either
   * side.
   */
  private static final double FIVE = Math.acos(0.9) / Math.PI;

  private static Series path(HipPath p) {
    return p.sample(30);
  }

  @Test
  void closedFormRep() {
    Series h = path(HipPath.from(95).rest(1).to(55, 3).rest(1).to(95, 0.8).rest(1));
    RepSearch found = FINDER.find(h, LEG_CM);
    assertThat(found.notCounted()).isEmpty();
    assertThat(found.reps()).hasSize(1);
    Rep rep = found.reps().get(0);
    assertThat(rep.index()).isEqualTo(1);
    assertThat(rep.travel()).isCloseTo(40, within(1e-9));
    assertThat(rep.times().startS()).isCloseTo(1 + FIVE * 3, within(EDGE_S));
    assertThat(rep.times().bottomStartS()).isCloseTo(4 - FIVE * 3, within(EDGE_S));
    assertThat(rep.times().bottomEndS()).isCloseTo(5 + FIVE * 0.8, within(EDGE_S));
    assertThat(rep.times().endS()).isCloseTo(5.8 - FIVE * 0.8, within(EDGE_S));
    assertThat(rep.times().lowestS()).isBetween(3.9, 5.1);
    assertThat(rep.tempo().loweringS()).isCloseTo(3 * (1 - 2 * FIVE), within(2 * EDGE_S));
    assertThat(rep.tempo().holdS()).isCloseTo(1 + FIVE * 3.8, within(2 * EDGE_S));
    assertThat(rep.tempo().driveS()).isCloseTo(0.8 * (1 - 2 * FIVE), within(2 * EDGE_S));
    assertThat(rep.tempo().topS()).isEmpty();

    DriveSpeed speed = DriveSpeed.of(h, 1 / 30.0, rep.times()).orElseThrow();
    // 90 % of 40 cm over the drive; the peak of a raised cosine is π/2 of its mean rate.
    assertThat(speed.mean()).isCloseTo(36 / (0.8 * (1 - 2 * FIVE)), within(0.5));
    // A seven-sample quadratic flattens a 0.8 s drive's peak by about 5 %.
    assertThat(speed.peak()).isCloseTo(Math.PI / 2 * 40 / 0.8, within(5.0));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 8})
  void setsOfReps(int count) {
    HipPath p = HipPath.from(95).rest(1);
    for (int i = 0; i < count; i++) {
      p = p.to(55, 2).rest(0.5).to(95, 0.7).rest(0.6);
    }
    List<Rep> reps = FINDER.find(path(p), LEG_CM).reps();
    assertThat(reps).hasSize(count);
    for (int i = 0; i + 1 < count; i++) {
      assertThat(reps.get(i).tempo().topS().orElseThrow())
          .isCloseTo(0.6 + FIVE * 2.7, within(2 * EDGE_S));
    }
  }

  @Test
  void shortRangeAndTouchAndGoReps() {
    HipPath p = HipPath.from(95).rest(1);
    for (int i = 0; i < 4; i++) {
      p = p.to(84, 0.4).to(95, 0.35);
    }
    assertThat(FINDER.find(path(p.rest(1)), LEG_CM).reps()).hasSize(4);
  }

  @Test
  void deepAndShallowRepsOfOneSet() {
    HipPath p = HipPath.from(95).rest(1).to(50, 2).rest(.5).to(95, .8).rest(.5);
    p = p.to(78, 1.5).rest(.5).to(95, .8).rest(1);
    assertThat(FINDER.find(path(p), LEG_CM).reps()).hasSize(2);
  }

  @Test
  void wobblingHoldIsOneRep() {
    HipPath p = HipPath.from(95).rest(1).to(55, 2).rest(.3).to(59, .4).to(55.5, .4).rest(.4);
    List<Rep> reps = FINDER.find(path(p.to(95, .8).rest(1)), LEG_CM).reps();
    assertThat(reps).hasSize(1);
    // From the first to the last instant near the lowest: the wobble inside is part of the hold.
    assertThat(reps.get(0).tempo().holdS()).isGreaterThan(1.5);
  }

  @Test
  void swayAloneIsNoRep() {
    double[] t = new double[600];
    double[] h = new double[600];
    for (int i = 0; i < 600; i++) {
      t[i] = i / 30.0;
      h[i] = 95 + 3 * Math.sin(2 * Math.PI * t[i] / 4);
    }
    assertThat(FINDER.find(Series.of(t, h), LEG_CM).reps()).isEmpty();
  }

  @Test
  void slowSwayUnderRepsChangesNoCount() {
    HipPath p = HipPath.from(95).rest(1);
    for (int i = 0; i < 5; i++) {
      p = p.to(55, 2).rest(0.5).to(95, 0.7).rest(0.6);
    }
    Series h = path(p);
    double[] t = h.times();
    double[] x = new double[t.length];
    for (int i = 0; i < t.length; i++) {
      x[i] = h.value(i) + 2 * Math.sin(2 * Math.PI * t[i] / 9);
    }
    assertThat(FINDER.find(Series.of(t, x), LEG_CM).reps()).hasSize(5);
  }

  /** Walks in tall, settles 10 cm lower in the stance, does two reps, stands up tall. */
  @Test
  void walkingInAndStandingUpDoNotMoveTheTops() {
    HipPath p = HipPath.from(105).rest(1).to(95, .6).rest(1);
    p = p.to(55, 2).rest(.5).to(95, .7).rest(.8).to(55, 2).rest(.5).to(95, .7).rest(.6);
    p = p.to(105, .6).rest(1);
    RepSearch found = FINDER.find(path(p), LEG_CM);
    assertThat(found.reps()).hasSize(2);
    assertThat(found.reps().get(0).topBefore()).isCloseTo(95, within(1.0));
    assertThat(found.reps().get(0).times().startS()).isCloseTo(2.6 + FIVE * 2, within(0.05));
    Rep last = found.reps().get(1);
    assertThat(last.topAfter()).isCloseTo(95, within(1.0));
    assertThat(last.times().endS()).isCloseTo(9.8 - FIVE * .7, within(0.05));
  }

  @Test
  void walkingInAndOutAroundOneRep() {
    HipPath p = HipPath.from(105).rest(1).to(95, .6).rest(1).to(55, 2).rest(.5).to(95, .7);
    List<Rep> reps = FINDER.find(path(p.rest(.6).to(105, .6).rest(1)), LEG_CM).reps();
    assertThat(reps).hasSize(1);
    assertThat(reps.get(0).topBefore()).isCloseTo(95, within(1.0));
    assertThat(reps.get(0).topAfter()).isCloseTo(95, within(1.0));
  }

  @Test
  void aBobWhileWalkingInIsNoRep() {
    HipPath p = HipPath.from(97).to(93, .3).to(97, .3).to(93, .3).to(97, .3).to(95, .4).rest(.5);
    p = p.to(55, 2).rest(.5).to(95, .7).rest(1);
    assertThat(FINDER.find(path(p), LEG_CM).reps()).hasSize(1);
  }

  @Test
  void clipThatBeginsAtTheBottom() {
    HipPath p = HipPath.from(55).rest(.5).to(95, .7).rest(1).to(55, 2).rest(.5).to(95, .7).rest(1);
    RepSearch found = FINDER.find(path(p), LEG_CM);
    assertThat(found.reps()).hasSize(1);
    assertThat(found.notCounted())
        .extracting(NotCounted::reason)
        .containsExactly(NotCounted.Reason.STARTS_PART_WAY);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.9, 2.2, 2.6})
  void clipThatBeginsDuringTheLowering(double fromS) {
    HipPath p = HipPath.from(95).rest(1).to(55, 2).rest(.5).to(95, .7).rest(1);
    p = p.to(55, 2).rest(.5).to(95, .7).rest(1);
    RepSearch found = FINDER.find(between(path(p), fromS, 99), LEG_CM);
    assertThat(found.reps()).hasSize(1);
    assertThat(found.notCounted())
        .extracting(NotCounted::reason)
        .containsExactly(NotCounted.Reason.STARTS_PART_WAY);
  }

  @ParameterizedTest
  @ValueSource(doubles = {7.0, 7.6, 8.0})
  void clipThatEndsDuringARep(double toS) {
    HipPath p = HipPath.from(95).rest(1).to(55, 2).rest(.5).to(95, .7).rest(1);
    p = p.to(55, 2).rest(.5).to(95, .7).rest(1);
    RepSearch found = FINDER.find(between(path(p), 0, toS), LEG_CM);
    assertThat(found.reps()).hasSize(1);
    assertThat(found.notCounted())
        .extracting(NotCounted::reason)
        .containsExactly(NotCounted.Reason.ENDS_PART_WAY);
  }

  @Test
  void aRepCutByAMissingStretchIsNotCounted() {
    HipPath p = HipPath.from(95).rest(1).to(55, 2).rest(.5).to(95, .7).rest(1);
    p = p.to(55, 2).rest(.5).to(95, .7).rest(1);
    Series h = path(p);
    double[] x = new double[h.size()];
    boolean[] seen = new boolean[h.size()];
    for (int i = 0; i < x.length; i++) {
      seen[i] = h.timeS(i) < 2 || h.timeS(i) > 2.5;
      x[i] = h.value(i);
    }
    RepSearch found = FINDER.find(Series.of(h.times(), x, seen), LEG_CM);
    assertThat(found.reps()).hasSize(1);
    assertThat(found.reps().get(0).times().startS()).isGreaterThan(5);
    assertThat(found.notCounted()).isNotEmpty();
  }

  /** The rep ends at its own level when the athlete does not come all the way up. */
  @Test
  void ownEndLevel() {
    HipPath p = HipPath.from(95).rest(1).to(55, 2).rest(.5).to(88, .7).rest(1);
    Rep rep = FINDER.find(path(p), LEG_CM).reps().get(0);
    assertThat(rep.topAfter()).isCloseTo(88, within(1e-9));
    assertThat(rep.times().endS()).isCloseTo(4.2 - FIVE * .7, within(EDGE_S));
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void noiseAndVariableFrameRate(long seed) {
    Random random = new Random(seed);
    HipPath p = HipPath.from(95).rest(1);
    for (int i = 0; i < 5; i++) {
      p = p.to(55, 2).rest(0.8).to(95, 0.7).rest(0.8);
    }
    int n = (int) (p.lengthS() * 30) - 5;
    double[] t = new double[n];
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = i == 0 ? 0 : t[i - 1] + 1 / 30.0 + (random.nextDouble() - .5) / 100;
      x[i] = p.at(t[i]) + 0.4 * random.nextGaussian();
    }
    Series raw = Series.of(t, x);
    UniformTimeGrid grid = UniformTimeGrid.covering(raw, 30);
    Series smooth = ButterworthLowPass.twoPass(6, grid.rateHz()).zeroPhase(grid.resample(raw));
    List<Rep> reps = FINDER.find(smooth, LEG_CM).reps();
    assertThat(reps).hasSize(5);
    for (int i = 0; i < 5; i++) {
      double from = 1 + i * 4.3;
      // The highest of a noisy rest lies 0.6 cm or so too high, where a 2 s lowering moves 14 cm/s
      // at its five per cent level: 0.05 s early, and as much again for the noise itself.
      assertThat(reps.get(i).times().startS()).isCloseTo(from + FIVE * 2, within(0.12));
      assertThat(reps.get(i).times().bottomStartS()).isCloseTo(from + 2 - FIVE * 2, within(0.12));
      assertThat(reps.get(i).times().bottomEndS()).isCloseTo(from + 2.8 + FIVE * .7, within(0.05));
      assertThat(reps.get(i).times().endS()).isCloseTo(from + 3.5 - FIVE * .7, within(0.06));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void unitAndClockDoNotMatter(long seed) {
    Random random = new Random(seed);
    HipPath p = HipPath.from(95).rest(1);
    for (int i = 0; i < 4; i++) {
      p = p.to(random.nextDouble(50, 75), random.nextDouble(.5, 4)).rest(random.nextDouble(0, 3));
      p = p.to(95, random.nextDouble(.4, 1.5)).rest(random.nextDouble(.3, 2));
    }
    Series h = path(p);
    List<Rep> reps = FINDER.find(h, LEG_CM).reps();
    assertThat(reps).hasSize(4);
    double factor = random.nextDouble(.01, 8);
    double shift = random.nextDouble(-50, 50);
    double[] t = h.times();
    for (int i = 0; i < t.length; i++) {
      t[i] += shift;
    }
    double[] x = h.map(v -> factor * v - 13).values(new Series.Run(0, h.size()));
    List<Rep> moved = FINDER.find(Series.of(t, x), factor * LEG_CM).reps();
    assertThat(moved).hasSize(4);
    for (int i = 0; i < 4; i++) {
      RepTimes a = reps.get(i).times();
      RepTimes b = moved.get(i).times();
      assertThat(b.startS() - shift).isCloseTo(a.startS(), within(1e-6));
      assertThat(b.bottomStartS() - shift).isCloseTo(a.bottomStartS(), within(1e-6));
      assertThat(b.bottomEndS() - shift).isCloseTo(a.bottomEndS(), within(1e-6));
      assertThat(b.endS() - shift).isCloseTo(a.endS(), within(1e-6));
      assertThat(moved.get(i).travel()).isCloseTo(factor * reps.get(i).travel(), within(1e-9));
    }
  }

  /** Backwards in time a lowering is a drive and a drive a lowering, when both tops are level. */
  @Test
  void timeTurnedRound() {
    Series h = path(HipPath.from(95).rest(1).to(55, 3).rest(1).to(95, 1).rest(1));
    int n = h.size();
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = h.value(n - 1 - i);
    }
    Tempo there = FINDER.find(h, LEG_CM).reps().get(0).tempo();
    Tempo back = FINDER.find(Series.of(h.times(), x), LEG_CM).reps().get(0).tempo();
    assertThat(back.loweringS()).isCloseTo(there.driveS(), within(1e-9));
    assertThat(back.holdS()).isCloseTo(there.holdS(), within(1e-9));
    assertThat(back.driveS()).isCloseTo(there.loweringS(), within(1e-9));
  }

  @Test
  void noiseAtTheTopHardlyLengthensTheDrive() {
    double bias = 0;
    int clips = 30;
    for (int seed = 0; seed < clips; seed++) {
      Random random = new Random(seed);
      Series clean = path(HipPath.from(95).rest(3).to(55, 2).rest(1).to(95, 0.8).rest(3));
      double[] h = clean.values(clean.runs().get(0));
      for (int i = 0; i < h.length; i++) {
        h[i] += h[i] > 94.9 ? 0.5 * random.nextGaussian() : 0;
      }
      Rep rep = FINDER.find(Series.of(clean.times(clean.runs().get(0)), h), LEG_CM).reps().get(0);
      bias += (rep.tempo().driveS() - 0.8 * (1 - 2 * FIVE)) / clips;
    }
    // Half a centimetre of noise: the highest of a hundred samples, 1.25 cm up, would make it
    // 0.035.
    assertThat(bias).isBetween(-0.01, 0.023);
  }

  /**
   * A computer-made set with exact joint centres (raised rear foot, 30 frames a second); the
   * expected times were worked out outside this code, from the written definition of the phases.
   */
  @Test
  void computerMadeSet() throws IOException {
    double[][] truth = {
      {1.6311080, 3.4683365, 5.1177760, 5.91249875, 22.21},
      {7.5449990, 9.54958325, 10.97796517, 11.73785471, 22.59},
      {13.4049995, 15.29625038, 16.79694475, 17.62190257, 23.09},
      {19.33555267, 21.2816685, 22.81925733, 23.63194125, 22.115}
    };
    double[][] rows = rows("bench-set.csv");
    Series hip = Series.of(rows[0], rows[1]);
    Series shin = Series.of(rows[0], rows[2]);
    RepSearch found = FINDER.find(hip, LEG_CM);
    assertThat(found.notCounted()).isEmpty();
    assertThat(found.reps()).hasSize(4);
    for (int i = 0; i < 4; i++) {
      RepTimes times = found.reps().get(i).times();
      // The tops are the highest between the lows here and the highest within 0.3 s there. They may
      // differ by a few hundredths of a centimetre; a third of a frame leaves room for that.
      assertThat(times.startS()).isCloseTo(truth[i][0], within(0.01));
      assertThat(times.bottomStartS()).isCloseTo(truth[i][1], within(0.01));
      assertThat(times.bottomEndS()).isCloseTo(truth[i][2], within(0.01));
      assertThat(times.endS()).isCloseTo(truth[i][3], within(0.01));
      assertThat(BottomWindow.of(times).bottomMedian(shin).orElseThrow())
          .isCloseTo(truth[i][4], within(0.02));
    }
  }

  private static double[][] rows(String name) throws IOException {
    try (var in = RepFinderTest.class.getResourceAsStream(name);
        var reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      List<double[]> rows =
          reader
              .lines()
              .skip(1)
              .map(
                  line ->
                      java.util.Arrays.stream(line.split(","))
                          .mapToDouble(Double::parseDouble)
                          .toArray())
              .toList();
      double[][] columns = new double[3][rows.size()];
      for (int i = 0; i < rows.size(); i++) {
        for (int c = 0; c < 3; c++) {
          columns[c][i] = rows.get(i)[c];
        }
      }
      return columns;
    }
  }

  private static Series between(Series h, double fromS, double toS) {
    double[] t = h.times();
    int from = 0;
    while (t[from] < fromS) {
      from++;
    }
    int to = t.length;
    while (t[to - 1] > toS) {
      to--;
    }
    Series.Run run = new Series.Run(from, to);
    return Series.of(h.times(run), h.values(run));
  }

  @Test
  void bottomWindowIsTheHoldOrATenthOfASecond() {
    BottomWindow hold = BottomWindow.of(new RepTimes(0, 1, 1.2, 1.5, 2));
    assertThat(hold.fromS()).isEqualTo(1);
    assertThat(hold.toS()).isEqualTo(1.5);
    BottomWindow touch = BottomWindow.of(new RepTimes(0, 1, 1.02, 1.05, 2));
    assertThat(touch.fromS()).isCloseTo(0.97, within(1e-12));
    assertThat(touch.toS()).isCloseTo(1.07, within(1e-12));
    Series s =
        Series.of(
            new double[] {0.9, 0.97, 1, 1.03, 1.06, 1.1},
            new double[] {9, 1, 4, 2, 3, 9},
            new boolean[] {true, true, true, true, true, true});
    assertThat(touch.bottomMedian(s)).hasValue(2.5);
    assertThat(touch.bottomMedian(Series.of(new double[] {5}, new double[] {1}))).isEmpty();
  }
}
