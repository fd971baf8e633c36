package shinline.metrics.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import shinline.metrics.analysis.ClipObservations.DoubtfulSpan;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.Range;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetResult;
import shinline.metrics.synthetic.RepPlan;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.target.Target;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;

/** Sets in which the model saw what no body can do, or nothing, or damaged pictures. */
final class ImpossibleSightsTest {
  private static final SplitSquat THREE = SplitSquat.clean(3);

  /** What the low-pass leaves around a bridged look, degrees. */
  private static final double BRIDGED_DEG = 0.6;

  private static SetResult measured(RawTrack track, ClipObservations seen) {
    return new SetAnalysis(ShippedCalibration.HEAVY)
        .measure(
            track,
            SetRequest.of(Target.none()).withAthleteHeightM(1.75).withRollDeg(0).withPitchDeg(0),
            seen)
        .fold(
            AnalysisOutcome.Measured::set,
            not -> {
              throw new AssertionError(not.why().toString());
            });
  }

  private static SetResult measured(RawTrack track) {
    return measured(track, ClipObservations.none());
  }

  private static RawTrack changed(
      RawTrack track, DoublePredicate when, UnaryOperator<Map<RawPoint, RawSighting>> change) {
    List<RawPose> poses = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      poses.add(
          when.test(pose.timeS())
              ? new RawPose(pose.frame(), pose.timeS(), change.apply(pose.points()))
              : pose);
    }
    return new RawTrack(track.widthPx(), track.heightPx(), poses);
  }

  /** Hips, knees and shoulders turned over about the hips' height, as behind a disc. */
  private static Map<RawPoint, RawSighting> upsideDown(Map<RawPoint, RawSighting> points) {
    Map<RawPoint, RawSighting> turned = new EnumMap<>(RawPoint.class);
    double hip = points.get(RawPoint.LEFT_HIP).y();
    points.forEach(
        (point, s) -> turned.put(point, new RawSighting(s.x(), 2 * hip - s.y(), s.confidence())));
    return turned;
  }

  private static Map<RawPoint, RawSighting> nobody(Map<RawPoint, RawSighting> points) {
    return Map.of();
  }

  private static double lowered(int rep) {
    SplitSquat.Truth truth = THREE.truth(rep, 175);
    return (truth.bottomStartS() + truth.bottomEndS()) / 2;
  }

  private static void assertPossible(SetResult set) {
    BodyLimits limits = BodyLimits.DEFAULT;
    Map<SeriesTable.Column, Range> ranges =
        Map.of(
            SeriesTable.Column.SHIN, limits.shin(),
            SeriesTable.Column.TRUNK_LEAN, limits.trunkLean(),
            SeriesTable.Column.THIGH, limits.thigh(),
            SeriesTable.Column.KNEE_FLEXION, limits.kneeFlexion());
    ranges.forEach(
        (column, range) -> {
          for (int row = 0; row < set.series().rows(); row++) {
            OptionalDouble value = set.series().value(column, row);
            assertThat(value.isEmpty() || range.holds(value.getAsDouble(), 0))
                .as("%s %s", column, value)
                .isTrue();
          }
        });
  }

  @Test
  void aFewImpossibleLooksBendNothing() {
    RawTrack track = TrackMaker.film(THREE).track();
    double at = lowered(1);
    SetResult set =
        measured(changed(track, t -> Math.abs(t - at) < 0.05, ImpossibleSightsTest::upsideDown));
    assertThat(set.reps()).hasSize(3);
    double shin = set.reps().get(1).at(Measure.SHIN).measured().orElseThrow().value();
    assertThat(shin)
        .isCloseTo(THREE.truth(1, 175).atBottom().get(Measure.SHIN), within(BRIDGED_DEG));
    assertPossible(set);
  }

  @Test
  void aWholeRepUpsideDownIsListedAndNothingImpossibleIsSaid() {
    RawTrack track = TrackMaker.film(THREE).track();
    SplitSquat.Truth second = THREE.truth(1, 175);
    SetResult set =
        measured(
            changed(
                track,
                t -> t > second.startS() && t < second.endS(),
                ImpossibleSightsTest::upsideDown));
    assertThat(set.reps()).hasSize(2);
    assertThat(set.notCounted())
        .anySatisfy(
            not -> {
              assertThat(not.fromS()).isLessThan(second.bottomEndS());
              assertThat(not.toS()).isGreaterThan(second.bottomStartS());
            });
    assertPossible(set);
  }

  @Test
  void aRepNobodySawIsListedAsNotSeen() {
    RawTrack track = TrackMaker.film(THREE).track();
    SplitSquat.Truth second = THREE.truth(1, 175);
    SetResult set =
        measured(
            changed(
                track,
                t -> t > second.startS() - 0.1 && t < second.endS() + 0.1,
                ImpossibleSightsTest::nobody));
    assertThat(set.reps()).hasSize(2);
    assertThat(set.notCounted())
        .extracting(NotCounted::reason)
        .containsExactly(NotCounted.Reason.NOT_SEEN);
  }

  @Test
  void aWholeSetCountsEverything() {
    assertThat(measured(TrackMaker.film(THREE).track()).notCounted()).isEmpty();
  }

  private static Map<RawPoint, RawSighting> armsSure(
      Map<RawPoint, RawSighting> points, double sure) {
    Map<RawPoint, RawSighting> with = new EnumMap<>(points);
    RawSighting at = points.get(RawPoint.LEFT_SHOULDER);
    for (RawPoint arm :
        List.of(
            RawPoint.LEFT_ELBOW, RawPoint.RIGHT_ELBOW, RawPoint.LEFT_WRIST, RawPoint.RIGHT_WRIST)) {
      with.put(arm, new RawSighting(at.x(), at.y(), sure));
    }
    return with;
  }

  @Test
  void hiddenArmsMeanHiddenShouldersAndTheLegsAreMeasuredAllTheSame() {
    SplitSquat leaning = SplitSquat.of(RepPlan.clean(), RepPlan.clean().bottom(20, 9, 40));
    RawTrack track = TrackMaker.film(leaning).track();
    SetResult hidden = measured(changed(track, t -> true, p -> armsSure(p, 0.1)));
    SetResult shown = measured(changed(track, t -> true, p -> armsSure(p, 0.95)));
    for (RepResult rep : hidden.reps()) {
      assertThat(rep.at(Measure.TRUNK_LEAN))
          .isInstanceOfSatisfying(
              Reading.NotMeasured.class,
              not -> assertThat(not.gap()).isEqualTo(Gap.SHOULDERS_HIDDEN));
      assertThat(rep.at(Measure.HIP_FLEXION)).isInstanceOf(Reading.NotMeasured.class);
      assertThat(rep.at(Measure.SHIN)).isEqualTo(shown.reps().get(rep.rep() - 1).at(Measure.SHIN));
      assertThat(rep.flags()).extracting(Flag::kind).doesNotContain(FlagKind.LEAN_GROWS);
    }
    assertThat(shown.reps().get(1).flags()).extracting(Flag::kind).contains(FlagKind.LEAN_GROWS);
  }

  @Test
  void aRepInDamagedPicturesIsNotJudged() {
    RawTrack track = TrackMaker.film(THREE).track();
    SplitSquat.Truth second = THREE.truth(1, 175);
    SetResult set =
        measured(
            track,
            ClipObservations.none()
                .withDoubtful(List.of(new DoubtfulSpan(second.startS(), second.bottomEndS()))));
    RepResult rep = set.reps().get(1);
    // Nothing was asked, so there is no verdict; why it is not judged is told all the same.
    assertThat(rep.verdict()).isEmpty();
    assertThat(rep.judgement().notJudged()).contains(RepJudgement.NotJudged.DAMAGED_PICTURES);
    assertThat(rep.flags()).isEmpty();
    assertThat(set.reps().get(0).judgement().notJudged()).isEmpty();
  }

  @Test
  void aFewDamagedPicturesAtTheBottomWidenThePlusMinus() {
    RawTrack track = TrackMaker.film(THREE).track();
    double at = lowered(1);
    SetResult sound = measured(track);
    SetResult doubtful =
        measured(
            track,
            ClipObservations.none().withDoubtful(List.of(new DoubtfulSpan(at - 0.3, at + 0.3))));
    assertThat(plusMinus(doubtful, 1)).isGreaterThan(1.2 * plusMinus(sound, 1));
    assertThat(plusMinus(doubtful, 0)).isEqualTo(plusMinus(sound, 0));
    assertThat(doubtful.reps().get(1).judgement().notJudged()).isEmpty();
  }

  private static double plusMinus(SetResult set, int rep) {
    return set.reps().get(rep).at(Measure.SHIN).measured().orElseThrow().plusMinus();
  }
}
