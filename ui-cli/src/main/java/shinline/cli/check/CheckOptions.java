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
 * @param barDiscM diameter of the discs of a bar on the back, metres
 * @param pictures whether pictures of the set will be drawn, so that frames are worth keeping
 */
public record CheckOptions(
    SetRequest request,
    PoseModel model,
    OptionalDouble captureFps,
    ClipPart part,
    Optional<DiscWanted> disc,
    ClipLimits limits,
    double barDiscM,
    boolean pictures) {

  /** Competition discs; iron plates need not be as large (IWF rules). */
  public static final double BAR_DISC_M = 0.45;

  /** Within the usual limits, with competition discs where there is a bar, and no pictures. */
  public CheckOptions(
      SetRequest request,
      PoseModel model,
      OptionalDouble captureFps,
      ClipPart part,
      Optional<DiscWanted> disc) {
    this(request, model, captureFps, part, disc, ClipLimits.USUAL, BAR_DISC_M, false);
  }

  /** The same with other limits. */
  public CheckOptions within(ClipLimits other) {
    return new CheckOptions(request, model, captureFps, part, disc, other, barDiscM, pictures);
  }

  /** The same, for a set of which pictures will be drawn. */
  public CheckOptions withPictures() {
    return new CheckOptions(request, model, captureFps, part, disc, limits, barDiscM, true);
  }
}
