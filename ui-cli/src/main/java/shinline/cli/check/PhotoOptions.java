package shinline.cli.check;

import java.util.Optional;
import shinline.metrics.analysis.SetRequest;
import shinline.vision.observation.DiscWanted;
import shinline.vision.pose.PoseModel;

/**
 * What the coach asked for of a still picture.
 *
 * @param request what is asked of the posture
 * @param model which pose model looks
 * @param disc a disc of known size to look for in the picture
 * @param mostPixels pixels of a picture that is not refused, at most
 */
public record PhotoOptions(
    SetRequest request, PoseModel model, Optional<DiscWanted> disc, long mostPixels) {}
