package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.analysis.SetRefusal.PlainSetRefusal;
import shinline.metrics.bar.BarPath;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.cleaning.TrackCleaning;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.JointCentreCorrection;
import shinline.metrics.fault.RepEvidence;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.PlausibleTrack;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawTrack;
import shinline.metrics.view.ArmReach;
import shinline.metrics.view.Attitude;
import shinline.metrics.view.SideView;

/** The whole way from a raw track to a measured and judged set. */
public final class SetAnalysis {
  private final Calibration calibration;

  /**
   * @param calibration of the pose model that saw the tracks
   */
  public SetAnalysis(Calibration calibration) {
    this.calibration = calibration;
  }

  /**
   * A track that is ready for the correction of its joint centres.
   *
   * @param track cleaned, in the picture
   * @param view what the picture makes of the athlete's side plane
   */
  public record Landmarks(CleanTrack track, ViewGeometry view) {}

  /** What the correction would be given; empty when the legs cannot be told apart. */
  public Optional<Landmarks> landmarks(RawTrack raw, SetRequest request, ClipObservations seen) {
    return raw.poses().size() < calibration.value(CalibrationKey.GATE_LEAST_LOOKS)
        ? Optional.empty()
        : new LegIdentity(calibration)
            .resolve(raw, request.overrides().legs())
            .fold(
                resolved ->
                    Optional.of(
                        landmarks(
                            PlausibleTrack.of(resolved.track(), BodyLimits.DEFAULT).track(),
                            attitude(raw, resolved.track(), request, seen))),
                unresolved -> Optional.empty());
  }

  private Attitude attitude(
      RawTrack raw, LegTrack legs, SetRequest request, ClipObservations seen) {
    return Attitude.of(
        seen.ofCamera(request.overrides()),
        ShoulderSight.of(raw, calibration).believed(raw),
        legs,
        calibration);
  }

  private Landmarks landmarks(LegTrack legs, Attitude attitude) {
    return new Landmarks(new TrackCleaning(calibration).clean(legs), attitude.view());
  }

  /** Measures and judges the set a track shows. */
  public AnalysisOutcome measure(RawTrack raw, SetRequest request, ClipObservations seen) {
    return found(raw, request, seen)
        .fold(
            set -> new AnalysisOutcome.Measured(set.measuring().result()),
            AnalysisOutcome.NotMeasured::new);
  }

  /** What the faults of each rep are judged by; nothing where no set can be measured. */
  public List<RepEvidence> evidence(RawTrack raw, SetRequest request, ClipObservations seen) {
    return found(raw, request, seen).fold(set -> set.measuring().evidence(), not -> List.of());
  }

  /** Whether there is a set to measure. */
  private sealed interface Found {
    default <T> T fold(Function<Set, T> set, Function<SetRefusal, T> not) {
      return this instanceof Set s ? set.apply(s) : not.apply(((Nothing) this).why());
    }
  }

  private record Set(SetMeasuring measuring) implements Found {}

  private record Nothing(SetRefusal why) implements Found {}

  private Found found(RawTrack raw, SetRequest request, ClipObservations seen) {
    if (raw.poses().isEmpty()) {
      return new Nothing(PlainSetRefusal.NOBODY_FOUND);
    }
    List<RawPose> found = raw.poses().stream().filter(p -> !p.nobody()).toList();
    if (found.size() < calibration.value(CalibrationKey.GATE_LEAST_FOUND) * raw.poses().size()) {
      return new Nothing(
          found.isEmpty() ? PlainSetRefusal.NOBODY_FOUND : PlainSetRefusal.SELDOM_FOUND);
    }
    if (found.size() < calibration.value(CalibrationKey.GATE_LEAST_LOOKS)) {
      return new Nothing(PlainSetRefusal.CLIP_TOO_SHORT);
    }
    ShoulderSight shoulders = ShoulderSight.of(raw, calibration);
    double yawDeg = SideView.yawDeg(shoulders.believed(raw), calibration);
    double refusedDeg = calibration.value(CalibrationKey.SIDE_VIEW_REFUSED);
    if (yawDeg > refusedDeg) {
      return new Nothing(new SetRefusal.OffSide(yawDeg, refusedDeg));
    }
    return new LegIdentity(calibration)
        .resolve(raw, request.overrides().legs())
        .fold(
            resolved ->
                found(
                    resolved.track(),
                    shoulders,
                    ArmReach.of(raw, resolved.track().facing().side(), calibration),
                    attitude(raw, resolved.track(), request, seen),
                    request,
                    seen),
            unresolved -> new Nothing(new SetRefusal.LegsAlike(unresolved.doubt())));
  }

  private Found found(
      LegTrack raw,
      ShoulderSight shoulders,
      ArmReach arms,
      Attitude attitude,
      SetRequest request,
      ClipObservations seen) {
    PlausibleTrack plausible = PlausibleTrack.of(raw, BodyLimits.DEFAULT);
    LegTrack legs = plausible.track();
    SetSight sight = new SetSight(raw, plausible.implausible(), shoulders, seen.doubtful());
    Landmarks landmarks = landmarks(legs, attitude);
    ViewGeometry view = landmarks.view();
    CleanTrack corrected =
        new JointCentreCorrection(CorrectionTable.of(calibration))
            .correct(landmarks.track().toSagittalPlane(view));
    Optional<Body> maybe = Body.of(corrected, view, shoulders, arms, calibration);
    if (maybe.isEmpty()) {
      return new Nothing(PlainSetRefusal.NEVER_WHOLE);
    }
    Optional<BarPath> bar =
        seen.bar()
            .flatMap(
                track ->
                    BarPath.of(track, maybe.get().kinematics().grid(), legs.facing().side(), view));
    Body body =
        bar.map(path -> maybe.get().steadied(path, scale(maybe.get(), request, seen).metresPerPx()))
            .orElseGet(maybe::get);
    Movements movements = Movements.of(body);
    if (movements.reps().isEmpty()) {
      return new Nothing(
          new SetRefusal.NoRep(
              movements.notCounted().stream().findFirst().map(NotCounted::reason)));
    }
    Scale scale = scale(body, request, seen);
    CameraSway sway = CameraSway.of(seen.hold(), body);
    return new Set(
        new SetMeasuring(legs, body, sight, scale, attitude, sway, request, seen, bar, movements));
  }

  private static Scale scale(Body body, SetRequest request, ClipObservations seen) {
    return Scale.of(request.scale(), seen.disc(), body);
  }
}
