package shinline.cli.check;

import java.nio.file.Path;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.vision.clip.ClipLimits;

/** Measures one clip. The seam between commands and the work. */
@FunctionalInterface
public interface ClipChecker {

  /**
   * @param clip a video file
   * @param progress told of every frame
   */
  ClipReport check(Path clip, CheckOptions options, Progress progress);

  /** The same with other limits, whatever the options say. */
  default ClipChecker within(ClipLimits limits) {
    return (clip, options, progress) -> check(clip, options.within(limits), progress);
  }
}
