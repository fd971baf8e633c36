package shinline.cli.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of a text in UTF-8; that of a file is {@link shinline.vision.clip.FileDigest}. */
public final class TextDigest {
  private TextDigest() {}

  public static byte[] of(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** In 64 lower-case hexadecimal digits. */
  public static String hex(String text) {
    return HexFormat.of().formatHex(of(text));
  }
}
