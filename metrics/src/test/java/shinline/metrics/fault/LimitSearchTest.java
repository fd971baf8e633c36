package shinline.metrics.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.synthetic.RepPlan;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.track.RawTrack;

class LimitSearchTest {
  private static final Calibration SHIPPED = ShippedCalibration.HEAVY;

  private static RawTrack film(FlagKind fault) {
    RepPlan clean = RepPlan.clean();
    return TrackMaker.film(SplitSquat.of(clean, clean, clean.with(fault), clean)).track();
  }

  private static LimitSearch search(FlagKind kind, RawTrack track) {
    List<RepEvidence> reps =
        new SetAnalysis(SHIPPED).evidence(track, SetRequest.plain(), ClipObservations.none());
    assertThat(reps).hasSize(4);
    return new LimitSearch(kind, kind.limitKey().orElseThrow(), reps, SHIPPED);
  }

  private static boolean flagged(FlagKind kind, RawTrack track, double limit) {
    CalibrationKey key = kind.limitKey().orElseThrow();
    return new SetAnalysis(SHIPPED.trying(Map.of(key, limit)))
        .measure(track, SetRequest.plain(), ClipObservations.none())
        .fold(
            measured ->
                measured.set().reps().get(2).flags().stream().anyMatch(f -> f.kind() == kind),
            not -> {
              throw new AssertionError(not.why().toString());
            });
  }

  /** The whole analysis flags the rep on the one side of the turn, and not on the other. */
  @ParameterizedTest
  @EnumSource(
      value = FlagKind.class,
      names = {
        "LEAN_GROWS",
        "HIPS_FIRST",
        "HINGE_SHIFT",
        "HEEL_RISE",
        "FOREFOOT_RISE",
        "REAR_PUSH",
        "WOBBLE",
        "SHALLOW",
        "LOWERING_RUSHED",
        "HOLD_SKIPPED",
        "DRIVE_SLOW"
      })
  void theFlagTurnsWhereItIsSaidTo(FlagKind kind) {
    RawTrack track = film(kind);
    LimitSearch.Turn turn = search(kind, track).of(2).orElseThrow();
    double step = 1e-4 * (kind.limitKey().orElseThrow().most());
    double inside = turn.fault() == LimitSearch.Side.ABOVE ? -step : step;
    assertThat(flagged(kind, track, turn.limit() + inside)).isTrue();
    assertThat(flagged(kind, track, turn.limit() - inside)).isFalse();
  }

  /** Leans 8 degrees more: so much is the limit at which nothing would be said. */
  @Test
  void aLeanTurnsAtItsOwnAmount() {
    LimitSearch.Turn turn =
        search(FlagKind.LEAN_GROWS, film(FlagKind.LEAN_GROWS)).of(2).orElseThrow();
    assertThat(turn.fault()).isEqualTo(LimitSearch.Side.ABOVE);
    assertThat(turn.limit()).isCloseTo(8, within(0.3));
  }

  @Test
  void depthIsAFaultBelowItsLimit() {
    LimitSearch.Turn turn = search(FlagKind.SHALLOW, film(FlagKind.SHALLOW)).of(2).orElseThrow();
    assertThat(turn.fault()).isEqualTo(LimitSearch.Side.BELOW);
    assertThat(turn.limit()).isBetween(0.5, SHIPPED.value(CalibrationKey.SHALLOW_LIMIT));
  }

  @Test
  void withoutAnOutlineNoLimitDecidesOnTheBack() {
    assertThat(search(FlagKind.BACK_ROUNDS, film(FlagKind.BACK_ROUNDS)).of(2)).isEmpty();
  }
}
