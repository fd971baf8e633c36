package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is next for an athlete.
 *
 * @param prescription empty when the athlete has to stop
 * @param because the rules that decided, in order
 * @param missing what the athlete lacks to go on
 * @param earliest first day of the next raise, when only time is lacking
 * @param goodUntil last day of the prescription
 * @param maximum the three-rep maximum, where the load rests on one
 */
public record Advice(
    LocalDate asOf,
    Decision decision,
    Optional<Prescription> prescription,
    List<Because> because,
    List<Missing> missing,
    Optional<LocalDate> earliest,
    LocalDate goodUntil,
    Optional<ThreeRepMaximum> maximum) {

  public Advice {
    because = List.copyOf(because);
    missing = List.copyOf(missing);
  }
}
