package shinline.metrics.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.TempoReading;

class FadingTest {
  private static final List<FlagKind> CLEAN = List.of();
  private static final List<FlagKind> LEAN = List.of(FlagKind.LEAN_GROWS);
  private static final List<FlagKind> SHALLOW = List.of(FlagKind.SHALLOW);
  private static final List<FlagKind> OFF = List.of(FlagKind.SHIN_OFF_TARGET);

  @SafeVarargs
  private static List<RepResult> reps(List<FlagKind>... flags) {
    Reading missing = Reading.missing(Gap.NOT_READ);
    Map<Measure, Reading> bottom = new EnumMap<>(Measure.class);
    Stream.of(Measure.values()).forEach(m -> bottom.put(m, missing));
    List<RepResult> reps = new ArrayList<>();
    for (List<FlagKind> kinds : flags) {
      reps.add(
          new RepResult(
              reps.size() + 1,
              new RepTimes(0, 1, 1, 1, 2),
              new TempoReading(missing, missing, missing, missing),
              bottom,
              new DriveReading(missing, missing),
              false,
              new RepJudgement(reps.size() + 1, List.of()),
              kinds.stream()
                  .map(k -> new Flag(k, 1, 30, 12, 10, MeasureUnit.DEGREES, 0.9))
                  .toList()));
    }
    return reps;
  }

  @Test
  void startsAtTheFirstRepAfterWhichNoneIsClean() {
    assertThat(Fading.of(reps(CLEAN, CLEAN, SHALLOW, LEAN)))
        .contains(new SetResult.Fading(3, FlagKind.SHALLOW));
    assertThat(Fading.of(reps(CLEAN, LEAN))).contains(new SetResult.Fading(2, FlagKind.LEAN_GROWS));
  }

  @Test
  void aFaultThatWasMendedIsNotItsStart() {
    assertThat(Fading.of(reps(LEAN, CLEAN, LEAN, LEAN)))
        .contains(new SetResult.Fading(3, FlagKind.LEAN_GROWS));
  }

  @Test
  void theKindIsOneOfThatRep() {
    assertThat(Fading.of(reps(CLEAN, SHALLOW, LEAN)))
        .contains(new SetResult.Fading(2, FlagKind.SHALLOW));
    assertThat(Fading.of(reps(CLEAN, List.of(FlagKind.SHALLOW, FlagKind.LEAN_GROWS))))
        .contains(new SetResult.Fading(2, FlagKind.LEAN_GROWS));
  }

  @Test
  void noneWithoutACleanRepBeforeOrWithACleanLastOne() {
    assertThat(Fading.of(reps(LEAN, LEAN))).isEmpty();
    assertThat(Fading.of(reps(CLEAN, LEAN, CLEAN))).isEmpty();
    assertThat(Fading.of(reps(CLEAN, CLEAN))).isEmpty();
    assertThat(Fading.of(reps())).isEmpty();
  }

  @Test
  void aShinOffTargetIsNoFaultOfForm() {
    assertThat(Fading.of(reps(CLEAN, OFF, OFF))).isEmpty();
    assertThat(Fading.of(reps(CLEAN, OFF, LEAN)))
        .contains(new SetResult.Fading(3, FlagKind.LEAN_GROWS));
  }
}
