package shinline.metrics.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.Warning;
import shinline.metrics.synthetic.RepPlan;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.synthetic.SplitSquat;
import shinline.metrics.synthetic.TrackMaker;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;
import shinline.metrics.track.ToldLegs;
import shinline.metrics.view.RoomSight;

/** One posture of the synthetic athlete, whose angles are known in closed form. */
class PostureAnalysisTest {
  private static final double STATURE_CM = 178;

  /** Looks at a picture; their number does not matter beyond eight. */
  private static final int LOOKS = 18;

  private static final double STEP_S = 1 / 15.0;

  /** What the offsets of the joint centres leave of the synthetic model's habit. */
  private static final double DEG = 1;

  private static final double CM = 1;

  /** The synthetic mirror counts columns from one less than the camera does: a pixel in 1920. */
  private static final double MIRROR = 1e-3;

  private static final SplitSquat MOTION = SplitSquat.of(RepPlan.clean(), RepPlan.clean());

  /** A room whose lines say that the camera was level and square to the wall. */
  private static final ClipObservations LEVEL =
      ClipObservations.none()
          .withRoom(
              Optional.of(
                  new RoomSight(
                      0,
                      0.25,
                      Optional.of(new RoomSight.Slope(0, 0.01)),
                      Optional.of(new RoomSight.Slope(0, 0.01)))));

  /** Looks at the bottom of the first rep, where nobody moves. */
  private static RawTrack looks(RawTrack film) {
    // Standing for a second, lowering for 2.4 s, then the hold of 1 s.
    return stillLooks(film, 3.5, 4.3);
  }

  private static RawTrack stillLooks(RawTrack film, double fromS, double toS) {
    List<RawPose> poses =
        film.poses().stream().filter(p -> p.timeS() >= fromS && p.timeS() <= toS).toList();
    List<RawPose> looks = new ArrayList<>();
    for (int i = 0; i < LOOKS; i++) {
      looks.add(new RawPose(0, i * STEP_S, poses.get(i).points()));
    }
    return new RawTrack(film.widthPx(), film.heightPx(), looks);
  }

  private static SetRequest request(Target target) {
    return SetRequest.of(target).withAthleteHeightM(STATURE_CM / 100);
  }

  private static PostureOutcome outcome(RawTrack looks, SetRequest request) {
    return new PostureAnalysis(ShippedCalibration.HEAVY).measure(looks, request, LEVEL);
  }

  private static PostureResult measured(RawTrack looks, SetRequest request) {
    return outcome(looks, request)
        .fold(
            PostureOutcome.Measured::posture,
            not -> {
              throw new AssertionError(not.why().toString());
            });
  }

  private static PostureResult measured(RawTrack looks) {
    return measured(looks, request(Target.none()));
  }

  private static Reading.Measured reading(PostureResult posture, Measure measure) {
    return posture.at(measure).measured().orElseThrow();
  }

  @Test
  void comesBackToTheClosedForm() {
    PostureResult posture = measured(looks(TrackMaker.film(MOTION).track()));
    Map<Measure, Double> truth = MOTION.truth(0, STATURE_CM).atBottom();
    int compared = 0;
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture() && truth.containsKey(measure)) {
        double slack = measure.jsonName().endsWith("Deg") ? DEG : CM;
        if (measure != Measure.KNEE_PAST_TOE_FOOT) {
          assertThat(reading(posture, measure).value())
              .as(measure.jsonName())
              .isCloseTo(truth.get(measure), within(slack));
          compared++;
        }
        assertThat(Math.abs(reading(posture, measure).value() - truth.get(measure)))
            .as(measure.jsonName())
            .isLessThan(reading(posture, measure).plusMinus());
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(6);
  }

  @ParameterizedTest
  @EnumSource
  void whatNeedsAMovementIsMissingAndWhatDoesNotIsThere(Measure measure) {
    PostureResult posture = measured(looks(TrackMaker.film(MOTION).track()));
    assertThat(posture.at(measure).measured().isPresent()).isEqualTo(measure.seenInOnePosture());
    if (!measure.seenInOnePosture()) {
      assertThat(posture.at(measure)).isEqualTo(Reading.missing(Gap.ONE_POSTURE));
    }
  }

  @Test
  void theMirrorImageGivesTheSame() {
    RawTrack looks = looks(TrackMaker.film(MOTION).noise(2, 5).track());
    PostureResult posture = measured(looks);
    PostureResult mirrored = measured(TrackMaker.mirrored(looks));
    assertThat(mirrored.setUp().facing()).isEqualTo(posture.setUp().facing().other());
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture()) {
        assertThat(reading(mirrored, measure).value())
            .as(measure.jsonName())
            .isCloseTo(reading(posture, measure).value(), within(MIRROR));
        assertThat(reading(mirrored, measure).plusMinus())
            .isCloseTo(reading(posture, measure).plusMinus(), within(MIRROR));
      }
    }
  }

  @Test
  void looksThatDisagreeAreLessSure() {
    PostureResult agree = measured(looks(TrackMaker.film(MOTION).noise(1, 5).track()));
    PostureResult disagree = measured(looks(TrackMaker.film(MOTION).noise(9, 5).track()));
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture()) {
        assertThat(reading(disagree, measure).plusMinus())
            .as(measure.jsonName())
            .isGreaterThan(reading(agree, measure).plusMinus());
        assertThat(reading(disagree, measure).plusMinusWithin())
            .isLessThan(reading(disagree, measure).plusMinus());
      }
    }
  }

  @Test
  void aFewOddLooksDoNotCount() {
    // Frames of the hold: from 3.5 s on at 30 a second.
    RawTrack odd =
        looks(TrackMaker.film(MOTION).kneeDoubted(i -> i == 107 || i == 112 || i == 117).track());
    assertThat(reading(measured(odd), Measure.SHIN).value())
        .isCloseTo(
            reading(measured(looks(TrackMaker.film(MOTION).track())), Measure.SHIN).value(),
            within(0.01));
  }

  @Test
  void aShinOffItsTargetIsFlaggedAndNothingElse() {
    PostureResult posture =
        measured(
            looks(TrackMaker.film(MOTION).track()), request(Target.preset(ShinPreset.UPRIGHT)));
    assertThat(posture.verdict()).contains(Verdict.MISS);
    assertThat(posture.flags()).extracting(Flag::kind).containsExactly(FlagKind.SHIN_OFF_TARGET);
    assertThat(posture.flags()).allMatch(f -> f.kind().seenInOnePosture());
  }

  @Test
  void whatNoPostureCanShowIsNotHeldAgainstIt() {
    TempoTarget.Phase two = new TempoTarget.Phase(2, 3);
    Target tempoOnly =
        new Target(
            Optional.empty(),
            DepthTarget.quarterRange(),
            new TempoTarget(Optional.of(two), Optional.of(two), Optional.empty(), Optional.of(two)),
            Optional.empty(),
            Target.Margin.standard());
    PostureResult posture = measured(looks(TrackMaker.film(MOTION).track()), request(tempoOnly));
    assertThat(posture.verdict()).isEmpty();
    assertThat(posture.target()).isEqualTo(tempoOnly);
  }

  @Test
  void namesAgainstTheHiddenKneeAreDoubtedUntilTheCoachTells() {
    RawTrack looks = looks(TrackMaker.film(MOTION).frontLegFar().exchanged(i -> true).track());
    assertThat(measured(looks).setUp().warnings()).anyMatch(w -> w instanceof Warning.LegsUnsure);
    PostureResult told =
        measured(looks, request(Target.none()).withLegs(ToldLegs.NOTHING.withFrontLeg(Side.LEFT)));
    assertThat(told.setUp().warnings()).noneMatch(w -> w instanceof Warning.LegsUnsure);
    assertThat(told.setUp().frontLeg()).isEqualTo(Side.LEFT);
    assertThat(reading(told, Measure.REAR_KNEE_HEIGHT).plusMinus())
        .isLessThan(reading(measured(looks), Measure.REAR_KNEE_HEIGHT).plusMinus());
  }

  @Test
  void saysWhyThereIsNothingToMeasure() {
    RawTrack nobody =
        new RawTrack(
            640, 480, Arrays.asList(new RawPose(0, 0, Map.of()), new RawPose(0, STEP_S, Map.of())));
    assertThat(kind(nobody)).isEqualTo(SetRefusal.Kind.NOBODY);
    assertThat(kind(new RawTrack(640, 480, List.of()))).isEqualTo(SetRefusal.Kind.NOBODY);
    assertThat(kind(looks(TrackMaker.film(MOTION).shouldersApart(0.2).track())))
        .isEqualTo(SetRefusal.Kind.NOT_SIDE_VIEW);
    assertThat(kind(looks(TrackMaker.film(MOTION).legsUnseen(i -> true).track())))
        .isEqualTo(SetRefusal.Kind.LEGS_UNRESOLVED);
  }

  private static SetRefusal.Kind kind(RawTrack looks) {
    return outcome(looks, request(Target.none()))
        .fold(
            measured -> {
              throw new AssertionError("measured");
            },
            not -> not.why().kind());
  }
}
