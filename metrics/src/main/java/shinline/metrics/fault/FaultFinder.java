package shinline.metrics.fault;

import java.util.List;
import java.util.stream.Stream;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.target.TempoTarget;

/**
 * Points at faults: each rep against fixed limits and against the set's own first reps.
 * Definitions, sources and blind spots are in docs/measures.md.
 */
public final class FaultFinder {
  private final Calibration calibration;
  private final TempoTarget tempo;
  private final double tempoMarginS;
  private final double pitchDeg;

  /**
   * @param tempoMarginS an asked-for time may be missed by as much, seconds
   * @param pitchDeg how far the camera looked down, minus for up
   */
  public FaultFinder(
      Calibration calibration, TempoTarget tempo, double tempoMarginS, double pitchDeg) {
    this.calibration = calibration;
    this.tempo = tempo;
    this.tempoMarginS = tempoMarginS;
    this.pitchDeg = pitchDeg;
  }

  /** Faults of each rep, in the order of the reps; those of a rep in the order of their kinds. */
  public List<List<Fault>> find(List<RepEvidence> reps) {
    SetEvidence set = new SetEvidence(reps, calibration, tempo, tempoMarginS, pitchDeg);
    return reps.stream()
        .map(rep -> Stream.of(FlagKind.values()).flatMap(kind -> kind.of(rep, set)).toList())
        .toList();
  }
}
