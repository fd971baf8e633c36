package shinline.metrics.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

/**
 * Validation from a track file: what the pose model saw in a filmed set, against the truth of that
 * clip. Every number of the truth: truth of development clip gym2-floor-heel, by the definitions of
 * docs/measures.md.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FilmedTrackTest {
  /** Twice the mean error allowed over all clips; the bands to be judged are 10° wide. */
  private static final double DEG = 2;

  /**
   * Half a look of a fifteenth of a second at either end of a phase, and one per cent of the travel
   * at the top, where a lowering begins so slowly that the hip takes about 0.05 s over it.
   */
  private static final double PHASE_S = 0.12;

  private record Truth(
      double shin,
      double trunk,
      double thigh,
      double kneeFlexion,
      double kneePastToeCm,
      double loweringS,
      double holdS,
      double driveS,
      double bottomS) {}

  private static final List<Truth> TRUTH =
      List.of(
          new Truth(27.12, 9.37, 3.83, 113.36, 1.3, 1.571, 1.091, 0.757, 3.636),
          new Truth(27.60, 7.99, 3.59, 114.18, 3.7, 1.674, 1.087, 0.844, 8.566));

  private SetResult set;

  @BeforeAll
  void measure() throws IOException {
    set =
        new SetAnalysis(ShippedCalibration.HEAVY)
            .measure(
                track("floor-heel.track.csv", 960, 540),
                SetRequest.plain().withAthleteHeightM(1.6381),
                ClipObservations.none())
            .fold(
                AnalysisOutcome.Measured::set,
                not -> {
                  throw new AssertionError(not.why().toString());
                });
  }

  @Test
  void theSetUpIsRead() {
    assertThat(set.setUp().facing()).isEqualTo(Side.LEFT);
    assertThat(set.setUp().frontLeg()).isEqualTo(Side.LEFT);
    assertThat(set.setUp().frontLegNearCamera()).isTrue();
    assertThat(set.reps()).hasSize(2);
  }

  @Test
  void anglesAtTheBottom() {
    for (RepResult rep : set.reps()) {
      Truth truth = TRUTH.get(rep.rep() - 1);
      near(rep, Measure.SHIN, truth.shin, DEG);
      near(rep, Measure.TRUNK_LEAN, truth.trunk, DEG);
      near(rep, Measure.THIGH, truth.thigh, DEG);
      near(rep, Measure.KNEE_FLEXION, truth.kneeFlexion, DEG);
      near(rep, Measure.KNEE_PAST_TOE, truth.kneePastToeCm, 2);
    }
  }

  private static void near(RepResult rep, Measure measure, double truth, double tolerance) {
    Reading.Measured reading = rep.at(measure).measured().orElseThrow();
    assertThat(reading.value())
        .as("rep %d %s", rep.rep(), measure)
        .isCloseTo(truth, within(tolerance));
    assertThat(Math.abs(reading.value() - truth)).isLessThanOrEqualTo(reading.plusMinus());
  }

  @Test
  void phases() {
    for (RepResult rep : set.reps()) {
      Truth truth = TRUTH.get(rep.rep() - 1);
      assertThat(seconds(rep.tempo().lowering())).isCloseTo(truth.loweringS, within(PHASE_S));
      assertThat(seconds(rep.tempo().hold())).isCloseTo(truth.holdS, within(PHASE_S));
      assertThat(seconds(rep.tempo().drive())).isCloseTo(truth.driveS, within(PHASE_S));
      assertThat(rep.bottomS()).isCloseTo(truth.bottomS, within(PHASE_S));
    }
  }

  private static double seconds(Reading reading) {
    return reading.measured().orElseThrow().value();
  }

  /** The heel leaves the floor in the second rep, and in that one only. */
  @Test
  void theHeelRise() {
    assertThat(set.reps().get(0).flags()).isEmpty();
    assertThat(set.reps().get(1).flags())
        .extracting(Flag::kind)
        .containsExactly(FlagKind.HEEL_RISE);
  }

  private static RawTrack track(String resource, int widthPx, int heightPx) throws IOException {
    List<RawPose> poses = new ArrayList<>();
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(FilmedTrackTest.class.getResourceAsStream(resource)),
                StandardCharsets.UTF_8))) {
      List<String> lines = in.lines().filter(l -> !l.startsWith("#")).toList();
      String[] names = lines.get(0).split(",", -1);
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", -1);
        Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
        for (int c = 2; c < cells.length; c += 3) {
          points.put(
              RawPoint.valueOf(names[c].substring(0, names[c].length() - 2)),
              new RawSighting(
                  Double.parseDouble(cells[c]),
                  heightPx - Double.parseDouble(cells[c + 1]),
                  Double.parseDouble(cells[c + 2])));
        }
        poses.add(new RawPose(Integer.parseInt(cells[0]), Double.parseDouble(cells[1]), points));
      }
    }
    return new RawTrack(widthPx, heightPx, poses);
  }
}
