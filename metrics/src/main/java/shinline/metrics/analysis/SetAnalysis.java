package shinline.metrics.analysis;

import shinline.metrics.track.RawTrack;

/** The whole way from a raw track to a measured and judged set. */
public final class SetAnalysis {
  private SetAnalysis() {}

  /** Measures and judges the set a track shows. */
  public static AnalysisOutcome of(RawTrack track, AnalysisOptions options) {
    return new AnalysisOutcome.NotMeasured(
        AnalysisOutcome.Kind.NO_REP, "no rep was found", "film the whole set");
  }
}
