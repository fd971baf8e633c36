package shinline.metrics.analysis;

import java.util.List;
import shinline.metrics.analysis.SetRefusal.PlainSetRefusal;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.cleaning.StillCleaning;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawTrack;

/**
 * The whole way from many looks at one still picture to a measured and judged posture: the same as
 * a set's, but for what needs a movement.
 */
public final class PostureAnalysis {
  private final Calibration calibration;

  /**
   * @param calibration of the pose model that looked
   */
  public PostureAnalysis(Calibration calibration) {
    this.calibration = calibration;
  }

  /**
   * Measures and judges a posture.
   *
   * @param looks at one and the same picture, each in another way, at even times
   */
  public PostureOutcome measure(RawTrack looks, SetRequest request, ClipObservations seen) {
    List<RawPose> found = looks.poses().stream().filter(p -> !p.nobody()).toList();
    if (found.isEmpty()) {
      return refused(PlainSetRefusal.NOBODY_FOUND);
    }
    if (2 * found.size() < looks.poses().size()) {
      return refused(PlainSetRefusal.SELDOM_FOUND);
    }
    return new AthleteReading(calibration, StillCleaning::clean)
        .of(looks, request, seen)
        .fold(athlete -> measured(athlete, request, seen), PostureAnalysis::refused);
  }

  private static PostureOutcome measured(
      AthleteReading.Athlete athlete, SetRequest request, ClipObservations seen) {
    Body body = athlete.body();
    Scale scale = Scale.of(request.scale(), seen.disc(), body);
    return new PostureOutcome.Measured(
        new PostureMeasuring(athlete.legs(), body, athlete.sight(), scale, athlete.attitude())
            .result(request.target()));
  }

  private static PostureOutcome refused(SetRefusal why) {
    return new PostureOutcome.NotMeasured(why);
  }
}
