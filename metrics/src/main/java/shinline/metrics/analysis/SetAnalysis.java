package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.analysis.SetRefusal.PlainSetRefusal;
import shinline.metrics.bar.BarPath;
import shinline.metrics.bar.BarTrack;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.cleaning.TrackCleaning;
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
import shinline.metrics.view.Attitude;

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
                resolved -> Optional.of(landmarks(raw, resolved.track(), request, seen)),
                unresolved -> Optional.empty());
  }

  private Landmarks landmarks(
      RawTrack raw, LegTrack legs, SetRequest request, ClipObservations seen) {
    Attitude attitude =
        Attitude.of(
            seen.ofCamera(request.overrides()),
            ShoulderSight.of(raw, calibration).believed(raw),
            legs,
            calibration);
    LegTrack plausible = PlausibleTrack.of(legs, BodyLimits.DEFAULT).track();
    return new Landmarks(new TrackCleaning(calibration).clean(plausible), attitude.view());
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
    return new AthleteReading(calibration, new TrackCleaning(calibration)::clean)
        .of(raw, request, seen)
        .fold(athlete -> found(athlete, request, seen), Nothing::new);
  }

  private static Found found(
      AthleteReading.Athlete athlete, SetRequest request, ClipObservations seen) {
    // A bar changes the height of the hips over the clip, not the lengths that tell the scale.
    Scale scale = Scale.of(request.scale(), seen.disc(), athlete.body());
    Optional<BarPath> bar = seen.bar().flatMap(track -> bar(track, athlete));
    Body body =
        bar.map(path -> athlete.body().steadied(path, scale.metresPerPx())).orElse(athlete.body());
    Movements movements = Movements.of(body);
    if (movements.reps().isEmpty()) {
      return new Nothing(
          new SetRefusal.NoRep(
              movements.notCounted().stream().findFirst().map(NotCounted::reason)));
    }
    CameraSway sway = CameraSway.of(seen.hold(), body);
    return new Set(
        new SetMeasuring(
            athlete.legs(),
            body,
            athlete.sight(),
            scale,
            athlete.attitude(),
            sway,
            request,
            seen,
            bar,
            movements));
  }

  private static Optional<BarPath> bar(BarTrack track, AthleteReading.Athlete athlete) {
    return BarPath.of(
        track,
        athlete.body().kinematics().grid(),
        athlete.legs().facing().side(),
        athlete.attitude().view());
  }
}
