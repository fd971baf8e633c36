package shinline.cli.text;

import java.util.List;

/** What every report must say about itself, whatever it found. */
public final class Cautions {
  private Cautions() {}

  /** What one camera at the side cannot show. */
  public static List<String> limits() {
    return List.of(
        "One camera at the side cannot see a knee caving inward, or the bones of the spine.",
        "A note on the back comes from its outline, at the bottom against standing: look there"
            + " yourself, it does not measure the spine.");
  }

  /** For the athlete's safety. */
  public static List<String> safety() {
    return List.of(
        "These are estimates from one camera: not a diagnosis, and not a clearance to train.",
        "Stay in a comfortable range without pain; if it hurts, stop and see a clinician.",
        "Raise load and knee travel little by little. Use safety bars or a spotter for heavy"
            + " sets.",
        "A knee ahead of the toes is not an error in itself; it puts more of the load on the knee"
            + " and the patellar tendon.",
        "Local rules and qualified supervision come first.");
  }
}
