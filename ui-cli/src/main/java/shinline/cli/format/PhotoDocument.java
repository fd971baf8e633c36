package shinline.cli.format;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.text.Cautions;
import shinline.cli.text.JudgementWords;
import shinline.cli.text.PhotoWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRefusal;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;
import shinline.metrics.result.Verdict;

/**
 * {@code shinline-result/1} of a still picture: {@code posture} in place of {@code reps} and {@code
 * set}.
 *
 * @param posture empty when nothing was measured
 */
public record PhotoDocument(
    String schema,
    ResultDocument.Clip clip,
    ResultSetUp setup,
    ResultTarget target,
    Optional<Posture> posture,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<ResultDocument.Refusal> notMeasured,
    List<String> cautions) {

  /**
   * What was measured.
   *
   * @param notMeasured key of each empty reading → why
   * @param image name of the drawn picture
   */
  public record Posture(
      Optional<Reading.Measured> shinDeg,
      Optional<Reading.Measured> kneePastToeCm,
      Optional<Reading.Measured> kneePastToeFootPct,
      Optional<Reading.Measured> trunkLeanDeg,
      Optional<Reading.Measured> thighDeg,
      Optional<Reading.Measured> kneeFlexionDeg,
      Optional<Reading.Measured> hipFlexionDeg,
      Optional<Reading.Measured> rearKneeHeightCm,
      Optional<Reading.Measured> hipTravelCm,
      Optional<Reading.Measured> hipTravelLegPct,
      Map<String, String> notMeasured,
      Optional<Verdict> verdict,
      List<String> reasons,
      List<ResultRep.Fault> flags,
      Optional<String> image) {

    static Posture of(PostureResult posture, Optional<String> image) {
      Map<String, String> gaps = new LinkedHashMap<>();
      for (Measure measure : Measure.values()) {
        if (posture.at(measure) instanceof Reading.NotMeasured not) {
          gaps.put(measure.jsonName(), Words.of(not.gap(), "reason"));
        }
      }
      return new Posture(
          posture.at(Measure.SHIN).measured(),
          posture.at(Measure.KNEE_PAST_TOE).measured(),
          posture.at(Measure.KNEE_PAST_TOE_FOOT).measured(),
          posture.at(Measure.TRUNK_LEAN).measured(),
          posture.at(Measure.THIGH).measured(),
          posture.at(Measure.KNEE_FLEXION).measured(),
          posture.at(Measure.HIP_FLEXION).measured(),
          posture.at(Measure.REAR_KNEE_HEIGHT).measured(),
          posture.at(Measure.HIP_TRAVEL).measured(),
          posture.at(Measure.HIP_TRAVEL_LEG).measured(),
          gaps,
          posture.verdict(),
          JudgementWords.reasons(posture.judgement()),
          posture.flags().stream().map(f -> ResultRep.Fault.of(f, image)).toList(),
          image);
    }
  }

  static PhotoDocument of(PhotoReport.Measured report, Optional<String> image) {
    return new PhotoDocument(
        ResultDocument.SCHEMA,
        ResultDocument.Clip.of(report.photo()),
        ResultSetUp.of(report),
        ResultTarget.of(report.posture().target()),
        Optional.of(Posture.of(report.posture(), image)),
        Optional.empty(),
        Cautions.all());
  }

  static PhotoDocument of(PhotoReport.NotMeasured report) {
    SetRefusal why = report.why();
    return new PhotoDocument(
        ResultDocument.SCHEMA,
        ResultDocument.Clip.of(report.photo()),
        ResultSetUp.of(report),
        ResultTarget.of(report.target()),
        Optional.empty(),
        Optional.of(
            new ResultDocument.Refusal(why.kind(), PhotoWords.reason(why), PhotoWords.advice(why))),
        Cautions.all());
  }
}
