package shinline.cli.check;

import java.nio.file.Path;

/** Opens a clip, follows the athlete through every frame, and measures the set. */
public final class ClipCheck implements ClipChecker {
  @Override
  public ClipReport check(Path clip, CheckOptions options, Progress progress) {
    return new ClipReport.Unreadable(
        String.valueOf(clip.getFileName()), "reading clips is not built yet", "wait");
  }
}
