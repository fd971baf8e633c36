package shinline.cli.check;

import java.nio.file.Path;
import shinline.cli.outcome.PhotoReport;

/** Measures one still picture. The seam between commands and the work. */
@FunctionalInterface
public interface PhotoChecker {

  /**
   * @param photo a picture file
   */
  PhotoReport check(Path photo, PhotoOptions options);
}
