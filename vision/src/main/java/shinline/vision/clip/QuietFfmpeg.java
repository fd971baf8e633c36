package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.bytedeco.javacpp.BytePointer;

/** Loads FFmpeg and keeps it from writing to the coach's terminal. */
final class QuietFfmpeg {
  static {
    av_log_set_level(AV_LOG_QUIET);
  }

  private QuietFfmpeg() {}

  /** To be called before anything of FFmpeg's. */
  static void load() {}

  /**
   * The file's address in FFmpeg's terms: UTF-8 on every system, and marked as a file so that a
   * name with a colon is not taken for a network address.
   */
  static BytePointer address(Path file) {
    byte[] name = ("file:" + file.toAbsolutePath() + "\0").getBytes(StandardCharsets.UTF_8);
    return new BytePointer(name);
  }
}
