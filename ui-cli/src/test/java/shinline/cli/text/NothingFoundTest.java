package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shinline.cli.Sets;
import shinline.metrics.fault.Sight;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/** That nothing was found is never said without what was not seen. */
class NothingFoundTest {
  private static final SetResult MEASURED = Sets.measured("x.mp4").set();

  private static SetResult clean(Map<Sight, List<Integer>> unseen) {
    List<RepResult> reps =
        MEASURED.reps().stream()
            .map(
                r ->
                    new RepResult(
                        r.rep(),
                        r.times(),
                        r.tempo(),
                        r.atBottom(),
                        r.drive(),
                        r.shortRange(),
                        r.judgement(),
                        List.of()))
            .toList();
    return new SetResult(
        MEASURED.setUp(),
        MEASURED.target(),
        reps,
        Map.of(),
        MEASURED.fading(),
        MEASURED.summary(),
        MEASURED.series(),
        unseen,
        Map.of(),
        List.of());
  }

  @Test
  void whatWasNotSeenIsSaidInTheSameBreath() {
    assertThat(NothingFound.of(clean(Map.of()))).contains("no fault of form was found");
    assertThat(NothingFound.of(clean(Map.of(Sight.BACK, List.of(1, 2)))))
        .contains("no fault of form was found; the back was not seen");
    assertThat(
            NothingFound.of(clean(Map.of(Sight.FRONT_FOOT, List.of(2), Sight.BACK, List.of(1, 2)))))
        .contains(
            "no fault of form was found; the back was not seen, the front foot was not seen in"
                + " rep 2");
  }

  @Test
  void aFaultThatWasFoundLeavesNothingToSay() {
    assertThat(NothingFound.of(MEASURED)).isEmpty();
  }

  @Test
  void aSpoiltRepIsNeverCalledGood() {
    RepResult spoilt = MEASURED.reps().get(1);
    assertThat(spoilt.spoilt()).isTrue();
    RepResult onTarget =
        new RepResult(
            2,
            spoilt.times(),
            spoilt.tempo(),
            spoilt.atBottom(),
            spoilt.drive(),
            false,
            Sets.judged(2, true),
            spoilt.flags());
    assertThat(VerdictWords.of(onTarget)).contains("hit, not clean");
    assertThat(VerdictWords.of(MEASURED.reps().get(0))).contains("hit");
  }
}
