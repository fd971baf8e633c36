package shinline.cli.check;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.analysis.SetRequest;
import shinline.vision.clip.ClipLimits;
import shinline.vision.clip.ClipPart;
import shinline.vision.observation.DiscWanted;
import shinline.vision.pose.PoseModel;

/**
 * What the coach asked for.
 *
 * @param request what is asked of the set
 * @param model which pose model looks at the frames
 * @param captureFps frames a second at which a slow-motion clip was filmed; empty when the file's
 *     own times are the true ones
 * @param part the part of the clip that is the set
 * @param disc a disc of known size to look for in the picture
 * @param limits what is refused as too much
 */
public record CheckOptions(
    SetRequest request,
    PoseModel model,
    OptionalDouble captureFps,
    ClipPart part,
    Optional<DiscWanted> disc,
    ClipLimits limits) {

  /** Within the usual limits. */
  public CheckOptions(
      SetRequest request,
      PoseModel model,
      OptionalDouble captureFps,
      ClipPart part,
      Optional<DiscWanted> disc) {
    this(request, model, captureFps, part, disc, ClipLimits.USUAL);
  }
}
