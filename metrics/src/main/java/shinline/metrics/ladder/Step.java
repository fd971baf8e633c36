package shinline.metrics.ladder;

import java.util.List;

/**
 * One step of the ladder.
 *
 * @param id as written on record
 * @param what in words
 * @param targets levels in the order they are trained, at least one
 * @param schemes sets and reps, the first unless the coach asks for another, at least one
 * @param tempo lowering-hold-drive, in the trade's notation
 * @param notes the coach's words, shown with a prescription
 */
public record Step(
    String id,
    String what,
    List<String> targets,
    List<Scheme> schemes,
    String tempo,
    StepLoad load,
    Leaving leaving,
    List<String> notes) {

  public Step {
    targets = List.copyOf(targets);
    schemes = List.copyOf(schemes);
    notes = List.copyOf(notes);
    if (targets.isEmpty() || schemes.isEmpty()) {
      throw new IllegalArgumentException("step " + id + " without targets or schemes");
    }
  }

  public String firstTarget() {
    return targets.get(0);
  }

  public String lastTarget() {
    return targets.get(targets.size() - 1);
  }

  public Scheme firstScheme() {
    return schemes.get(0);
  }

  public boolean isLoaded() {
    return !(load instanceof StepLoad.Unloaded);
  }
}
