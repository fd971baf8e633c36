package shinline.metrics.progress;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;

/** Both legs of an athlete over the weeks. */
public record AthleteProgress(LegProgress left, LegProgress right) {

  /**
   * @param sets all sets of the athlete, in the order of dates
   * @param formula of the estimated maximum
   */
  public static AthleteProgress of(List<FollowedSet> sets, OneRepMax formula) {
    // Masses are told in the unit of the last load: that is what the coach writes now.
    MassUnit unit =
        sets.stream()
            .flatMap(s -> s.set().entry().load().stream())
            .map(TrainingLoad::mass)
            .reduce((a, b) -> b)
            .map(m -> m.unit())
            .orElse(MassUnit.KG);
    return new AthleteProgress(
        new LegProgress(Side.LEFT, sets, unit, formula),
        new LegProgress(Side.RIGHT, sets, unit, formula));
  }

  public List<LegProgress> legs() {
    return List.of(left, right);
  }

  public MassUnit unit() {
    return left.unit();
  }

  /** What both legs have in their latest session with the same asked for. */
  public List<Sides> sides() {
    return Stream.of(Followed.values()).flatMap(f -> Sides.of(f, left, right).stream()).toList();
  }

  public Optional<Sides.FiveRepTest> fiveRepTest() {
    return Sides.fiveRepTest(left, right);
  }

  public List<Fading> fading(LegProgress leg) {
    return Fading.of(leg);
  }
}
