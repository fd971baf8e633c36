package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;

class TrueRepTest {
  private static final Path SAMPLES = Path.of("..", "sample-clips");

  @TempDir Path folder;

  /** Computed once, from the same series, by a separate program written to the definitions. */
  @ParameterizedTest
  @CsvSource({
    "gym1-bench-clean, 1, 1.8372, 1.6494, 0.7947, 4.2931, 22.21, 11.83, 2.53, 109.75, -3.8",
    "gym1-bench-clean, 4, 1.9461, 1.5376, 0.8127, 22.0505, 22.115, 11.71, 1.25, 110.965, -3.9",
    "plain1-bench-shallow, 3, 1.4187, 1.126, 0.5001, 11.509, 21.545, 13.58, 26.06, 85.475, -3.985"
  })
  void agreesWithKnownValues(
      String clip,
      int rep,
      double lowering,
      double hold,
      double drive,
      double bottom,
      double shin,
      double trunk,
      double thigh,
      double knee,
      double toe) {
    Truth truth = TruthReader.read(SAMPLES.resolve(clip + ".truth.json"));
    TrueRep is = TrueRep.of(truth, truth.reps().get(rep - 1)).orElseThrow();
    assertThat(is.bottomS()).isCloseTo(bottom, within(1e-4));
    Map<Scored, Double> known =
        Map.of(
            Scored.LOWERING, lowering,
            Scored.HOLD, hold,
            Scored.DRIVE, drive,
            Scored.SHIN, shin,
            Scored.TRUNK_LEAN, trunk,
            Scored.THIGH, thigh,
            Scored.KNEE_FLEXION, knee,
            Scored.KNEE_PAST_TOE, toe);
    known.forEach(
        (scored, value) ->
            assertThat(is.values().get(scored)).as(scored.words()).isCloseTo(value, within(1e-4)));
  }

  @Test
  void faultsAreReadWithTheRep() {
    Truth truth = TruthReader.read(SAMPLES.resolve("plain1-bench-shallow.truth.json"));
    assertThat(truth.reps())
        .extracting(Truth.Scripted::faults)
        .isEqualTo(List.of(Set.of(), Set.of(), Set.of("shallow")));
    assertThat(truth.onBench()).isTrue();
    assertThat(truth.facesLeft()).isFalse();
  }

  @Test
  void aRepOutsideTheSeriesIsNone() {
    Truth truth = TruthReader.read(SAMPLES.resolve("gym1-bench-clean.truth.json"));
    assertThat(TrueRep.of(truth, new Truth.Scripted(900, 910, Set.of()))).isEmpty();
    // Standing before the first rep: the hip passes no level.
    assertThat(TrueRep.of(truth, new Truth.Scripted(0, 0.2, Set.of()))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "nonsense;it is no JSON",
        "{\"clip\":\"x\"};series is missing",
        "{\"clip\":\"x\",\"series\":{\"timeS\":[0,1]},\"reps\":[]};series.hipHeightCm is missing",
        "{\"series\":{\"timeS\":[0,1],\"hipHeightCm\":[1]}};not as long",
        "{\"series\":{\"timeS\":[1,1],\"hipHeightCm\":[1,2]}};does not rise"
      })
  void aBadFileSaysWhatIsWrong(String text, String why) throws IOException {
    Path file = folder.resolve("x.truth.json");
    Files.writeString(file, text);
    assertThatThrownBy(() -> TruthReader.read(file))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("x.truth.json")
        .hasMessageContaining(why)
        .extracting(e -> ((CoachException) e).exitCode())
        .isEqualTo(ExitCode.UNREADABLE);
  }
}
