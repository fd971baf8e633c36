package shinline.cli.finding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import shinline.vision.clip.FileDigest;

/**
 * Digests of clips; a file of the same size and time is not read twice, however long one watches.
 */
public final class ClipDigests {
  private final Map<String, String> known = new HashMap<>();

  String of(Path clip) throws IOException {
    String seen = clip + "\n" + Files.size(clip) + "\n" + Files.getLastModifiedTime(clip);
    String digest = known.get(seen);
    if (digest == null) {
      digest = FileDigest.of(clip).sha256();
      known.put(seen, digest);
    }
    return digest;
  }
}
