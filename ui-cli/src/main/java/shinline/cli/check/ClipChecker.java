package shinline.cli.check;

import java.nio.file.Path;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;

/** Measures one clip. The seam between commands and the work. */
@FunctionalInterface
public interface ClipChecker {

  /**
   * @param clip a video file
   * @param progress told of every frame
   */
  ClipReport check(Path clip, CheckOptions options, Progress progress);
}
