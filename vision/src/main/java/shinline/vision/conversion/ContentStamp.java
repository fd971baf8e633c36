package shinline.vision.conversion;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** A fingerprint of the files in some folders, from which a build step sees that it is current. */
final class ContentStamp {
  private ContentStamp() {}

  /** SHA-256 over names and contents, in name order; a folder that is not there counts as empty. */
  static String of(List<Path> folders) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (Stream<Path> files = Files.list(folder)) {
          for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
            digest.update(String.valueOf(file.getFileName()).getBytes(StandardCharsets.UTF_8));
            digest.update(Files.readAllBytes(file));
          }
        }
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
