package shinline.metrics.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

class AskedTest {
  private static final Optional<TempoTarget.Phase> PHASE = Optional.of(new TempoTarget.Phase(0, 2));

  @Test
  void nothingIsAskedOfAnEmptyTarget() {
    assertThat(Asked.of(Target.none())).isEmpty();
  }

  @Test
  void everyPartOfATargetIsAskedForInTheOrderInWhichItIsTold() {
    Target all =
        new Target(
            Optional.of(ShinPreset.UPRIGHT.target()),
            new DepthTarget("own", Optional.of(5.0), Optional.of(10.0), Optional.of(30.0), true),
            new TempoTarget(PHASE, PHASE, PHASE, PHASE),
            Optional.of(new Target.TrunkBand(0, 30)),
            Target.Margin.standard());
    List<Asked> asked = Asked.of(all);
    assertThat(asked.stream().flatMap(a -> a.aspect().stream()))
        .containsExactly(
            Aspect.SHIN,
            Aspect.THIGH,
            Aspect.REAR_KNEE,
            Aspect.HIP_TRAVEL,
            Aspect.TRUNK,
            Aspect.LOWERING,
            Aspect.HOLD,
            Aspect.DRIVE,
            Aspect.TOP);
    assertThat(asked).contains(new Asked.OfRange(Finding.Range.SHORT)).hasSize(10);
  }

  @Test
  void theHousesFullDepthRulesOutShortRange() {
    assertThat(Asked.of(Target.preset(ShinPreset.OVER_TOE)))
        .contains(new Asked.OfRange(Finding.Range.FULL));
  }
}
