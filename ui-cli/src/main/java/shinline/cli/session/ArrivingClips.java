package shinline.cli.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Clips that are being copied into a folder: one is whole when two looks in turn see no change. */
final class ArrivingClips {
  private final SessionFolder folder;
  private Map<Path, String> seen = new HashMap<>();

  ArrivingClips(SessionFolder folder) {
    this.folder = folder;
  }

  /** Clips that did not change since the last look, by name. */
  List<Path> look() {
    Map<Path, String> now = new HashMap<>();
    List<Path> whole = new ArrayList<>();
    for (Path clip : folder.clips()) {
      String state = state(clip);
      now.put(clip, state);
      if (!state.isEmpty() && state.equals(seen.get(clip))) {
        whole.add(clip);
      }
    }
    seen = now;
    return whole;
  }

  /** Size and time; empty for a file that is empty or gone again. */
  static String state(Path file) {
    try {
      long size = Files.size(file);
      return size == 0 ? "" : size + " " + Files.getLastModifiedTime(file);
    } catch (IOException gone) {
      return "";
    }
  }
}
