package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.analysis.AnalysisOutcome.Kind;
import shinline.metrics.analysis.AnalysisOutcome.NotMeasured;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.cleaning.CleaningParameters;
import shinline.metrics.cleaning.TrackCleaning;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.JointCentreCorrection;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.reps.Rep;
import shinline.metrics.reps.RepFinder;
import shinline.metrics.reps.RepParameters;
import shinline.metrics.reps.RepSearch;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.LegIdentityParameters;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawTrack;
import shinline.metrics.view.SideView;

/** The whole way from a raw track to a measured and judged set. */
public final class SetAnalysis {
  /** Fewer looks than this cannot hold a rep. */
  private static final int LEAST_POSES = 8;

  /** Share of the looks in which the athlete must have been found. */
  private static final double LEAST_FOUND = 0.3;

  private static final String FILM =
      "film from the side, the whole body in view, the phone level and at hip height";

  private SetAnalysis() {}

  /**
   * A track that is ready for the correction of its joint centres.
   *
   * @param track cleaned, in the picture
   * @param view what the picture makes of the athlete's side plane
   */
  public record Landmarks(CleanTrack track, ViewGeometry view) {}

  /** What the correction would be given; empty when the legs cannot be told apart. */
  public static Optional<Landmarks> landmarks(
      RawTrack raw, SetRequest request, ClipObservations seen) {
    double yawDeg = SideView.yawDeg(raw);
    return raw.poses().size() < LEAST_POSES
        ? Optional.empty()
        : new LegIdentity(LegIdentityParameters.DEFAULT)
            .resolve(raw)
            .fold(
                resolved ->
                    Optional.of(landmarks(resolved.track(), Vertical.of(request, seen), yawDeg)),
                unresolved -> Optional.empty());
  }

  private static Landmarks landmarks(LegTrack legs, Vertical vertical, double yawDeg) {
    return new Landmarks(
        new TrackCleaning(CleaningParameters.DEFAULT).clean(legs),
        vertical.view(legs.facing().side(), SideView.toldDeg(yawDeg)));
  }

  /** Measures and judges the set a track shows. */
  public static AnalysisOutcome of(RawTrack raw, SetRequest request, ClipObservations seen) {
    return of(raw, request, seen, CorrectionTable.DEFAULT);
  }

  /** The same with other offsets, to try a fit on clips it has not seen. */
  public static AnalysisOutcome of(
      RawTrack raw, SetRequest request, ClipObservations seen, CorrectionTable offsets) {
    if (raw.poses().isEmpty()) {
      return not(Kind.NOBODY, "nobody was found in the clip", FILM);
    }
    List<RawPose> found = raw.poses().stream().filter(p -> !p.nobody()).toList();
    if (found.size() < LEAST_FOUND * raw.poses().size()) {
      return found.isEmpty()
          ? not(Kind.NOBODY, "nobody was found in the clip", FILM)
          : not(Kind.NOBODY, "the athlete was found in too few frames", FILM);
    }
    if (found.size() < LEAST_POSES) {
      return not(Kind.TOO_SHORT, "the clip is too short to hold a rep", "film the whole set");
    }
    double yawDeg = SideView.yawDeg(raw);
    if (yawDeg > SideView.REFUSED_DEG) {
      return not(
          Kind.NOT_SIDE_VIEW,
          "this is not a side view: the camera is about "
              + Math.round(yawDeg)
              + "° off, and at most "
              + Math.round(SideView.REFUSED_DEG)
              + "° can be measured",
          FILM);
    }
    return new LegIdentity(LegIdentityParameters.DEFAULT)
        .resolve(raw)
        .fold(
            resolved -> measure(resolved.track(), yawDeg, request, seen, offsets),
            unresolved ->
                not(
                    Kind.LEGS_UNRESOLVED,
                    "the front and the rear leg cannot be told apart: " + unresolved.reason(),
                    "make sure it is a split squat seen from the side, both feet in view"));
  }

  private static AnalysisOutcome measure(
      LegTrack legs,
      double yawDeg,
      SetRequest request,
      ClipObservations seen,
      CorrectionTable offsets) {
    Vertical vertical = Vertical.of(request, seen);
    Landmarks landmarks = landmarks(legs, vertical, yawDeg);
    ViewGeometry view = landmarks.view();
    CleanTrack corrected =
        new JointCentreCorrection(offsets).correct(landmarks.track().toSagittalPlane(view));
    Optional<Body> maybe = Body.of(corrected);
    if (maybe.isEmpty()) {
      return not(Kind.LEGS_UNRESOLVED, "hip, knee, ankle and foot were never seen together", FILM);
    }
    Body body = maybe.get();
    RepSearch search =
        new RepFinder(RepParameters.DEFAULT).find(body.kinematics().hipY(), body.scale().legPx());
    List<Rep> reps = search.reps().stream().filter(r -> splitThroughout(r, corrected)).toList();
    if (reps.isEmpty()) {
      String why =
          search.notCounted().isEmpty()
              ? "the hips never go down and come up again"
              : search.notCounted().get(0).reason().words();
      return not(
          Kind.NO_REP, "no rep was found: " + why, "film the whole set, from standing to standing");
    }
    Scale scale = Scale.of(request.scale(), seen.disc(), body);
    CameraSway sway = CameraSway.of(seen.hold(), body);
    return new AnalysisOutcome.Measured(
        new SetMeasuring(legs, body, scale, vertical, view, sway, request, seen, reps).result());
  }

  /** Picking up weights or sitting down is no rep: the front foot has to be where it is planted. */
  private static boolean splitThroughout(Rep rep, CleanTrack track) {
    var ankle = track.path(shinline.metrics.track.BodyPoint.FRONT_ANKLE);
    int inside = 0;
    int seen = 0;
    for (int i = 0; i < track.grid().size(); i++) {
      double t = track.grid().timeS(i);
      if (t >= rep.times().startS() && t <= rep.times().endS()) {
        inside++;
        seen += ankle.seen(i) ? 1 : 0;
      }
    }
    return seen >= 0.5 * inside;
  }

  static AnalysisOutcome not(Kind kind, String reason, String advice) {
    return new NotMeasured(kind, reason, advice);
  }
}
