package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avutil.av_free;
import static org.bytedeco.ffmpeg.global.avutil.av_sha_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_sha_final;
import static org.bytedeco.ffmpeg.global.avutil.av_sha_init;
import static org.bytedeco.ffmpeg.global.avutil.av_sha_update;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.bytedeco.ffmpeg.avutil.AVSHA;

/**
 * The identity of a file's bytes, by which a clip is known again under another name.
 *
 * @param sha256 64 lower-case hexadecimal digits
 */
public record FileDigest(String sha256) {
  private static final int CHUNK_BYTES = 1 << 16;
  private static final int BITS = 256;

  /**
   * Reads the whole file once.
   *
   * @throws IOException when the file cannot be read
   */
  public static FileDigest of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return of(in);
    }
  }

  /**
   * Reads a stream to its end.
   *
   * @throws IOException when it cannot be read
   */
  public static FileDigest of(InputStream in) throws IOException {
    MessageDigest digest = newDigest();
    read(in, (chunk, n) -> digest.update(chunk, 0, n));
    return new FileDigest(HexFormat.of().formatHex(digest.digest()));
  }

  /**
   * The same of a film, by the video library's own arithmetic, which is loaded anyway and several
   * times as fast for a file of a hundred megabytes.
   *
   * @throws IOException when the file cannot be read
   */
  public static FileDigest ofFilm(Path file) throws IOException {
    AVSHA state = av_sha_alloc();
    try (InputStream in = Files.newInputStream(file)) {
      av_sha_init(state, BITS);
      read(in, (chunk, n) -> av_sha_update(state, chunk, n));
      byte[] digest = new byte[BITS / Byte.SIZE];
      av_sha_final(state, digest);
      return new FileDigest(HexFormat.of().formatHex(digest));
    } finally {
      av_free(state);
    }
  }

  /** Takes the first bytes of a chunk in. */
  @FunctionalInterface
  private interface Intake {
    void take(byte[] chunk, int bytes);
  }

  private static void read(InputStream in, Intake intake) throws IOException {
    byte[] chunk = new byte[CHUNK_BYTES];
    for (int n = in.read(chunk); n >= 0; n = in.read(chunk)) {
      intake.take(chunk, n);
    }
  }

  private static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java platform has SHA-256", e);
    }
  }
}
