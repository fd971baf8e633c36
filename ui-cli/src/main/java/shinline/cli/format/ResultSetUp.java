package shinline.cli.format;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.annotation.JsonSerialize;
import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.text.SetUpWords;
import shinline.metrics.result.SetUp;
import shinline.metrics.track.Side;
import shinline.metrics.track.ToldLegs;
import shinline.metrics.view.Attitude;
import shinline.vision.clip.ClipPart;

/**
 * How the set was filmed; empty is what could not be told.
 *
 * @param cameraMotion only when the camera did not plainly stand still
 * @param overrides what the coach told and the clip was not asked for
 */
public record ResultSetUp(
    Optional<Side> facing,
    Optional<Side> frontLeg,
    Optional<Boolean> frontLegNearCamera,
    Optional<SetUp.RearFoot> rearFoot,
    Optional<Double> rollDeg,
    Optional<Attitude.Source> rollSource,
    Optional<Double> pitchDeg,
    Optional<Attitude.Source> pitchSource,
    Optional<Double> yawDeg,
    @JsonSerialize(contentUsing = RoundedNumber.OfScale.class) Optional<Double> scaleCmPerPx,
    Optional<SetUp.ScaleSource> scaleSource,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<SetUp.CameraHold> cameraMotion,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Overrides> overrides,
    String poseModel,
    List<String> warnings) {

  /** Empty where the clip was asked. */
  public record Overrides(
      Optional<Side> frontLeg,
      Optional<Side> facing,
      Optional<Double> fromS,
      Optional<Double> toS) {}

  static ResultSetUp of(ClipReport.Measured report) {
    ToldLegs told =
        report.footage().map(f -> f.request().overrides().legs()).orElse(ToldLegs.NOTHING);
    ClipPart part = report.footage().map(ClipReport.Footage::part).orElse(ClipPart.WHOLE);
    SetUp setUp = report.set().setUp();
    return of(
        Optional.of(setUp),
        Optional.of(
            new Overrides(
                told.frontLeg(),
                told.facing(),
                Optional.of(part.fromS()).filter(s -> s > 0),
                Optional.of(part.toS()).filter(Double::isFinite))),
        report.clip().poseModel().word(),
        SetUpWords.warnings(setUp, report.warnings()));
  }

  static ResultSetUp of(ClipReport.NotMeasured report) {
    return of(
        Optional.empty(), Optional.empty(), report.clip().poseModel().word(), report.warnings());
  }

  static ResultSetUp of(PhotoReport.Measured report) {
    ToldLegs told = report.overrides().legs();
    SetUp setUp = report.posture().setUp();
    return of(
        Optional.of(setUp),
        Optional.of(
            new Overrides(told.frontLeg(), told.facing(), Optional.empty(), Optional.empty())),
        report.photo().poseModel().word(),
        SetUpWords.warnings(setUp, report.warnings()));
  }

  static ResultSetUp of(PhotoReport.NotMeasured report) {
    return of(
        Optional.empty(), Optional.empty(), report.photo().poseModel().word(), report.warnings());
  }

  private static ResultSetUp of(
      Optional<SetUp> known, Optional<Overrides> told, String poseModel, List<String> warnings) {
    Optional<SetUp.Camera> camera = known.map(SetUp::camera);
    return new ResultSetUp(
        known.map(SetUp::facing),
        known.map(SetUp::frontLeg),
        known.map(SetUp::frontLegNearCamera),
        known.map(SetUp::rearFoot),
        camera.map(SetUp.Camera::rollDeg),
        camera.map(SetUp.Camera::rollSource),
        camera.map(SetUp.Camera::pitchDeg),
        camera.map(SetUp.Camera::pitchSource),
        camera.flatMap(SetUp.Camera::yawDeg),
        known.flatMap(SetUp::cmPerPx),
        known.map(SetUp::scaleSource),
        known.map(SetUp::cameraHold).filter(hold -> hold != SetUp.CameraHold.STILL),
        told,
        poseModel,
        warnings);
  }
}
