package shinline.cli.speed;

import java.nio.file.Path;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FrameGrabber;

/**
 * Decodes every picture of a clip and converts none, like {@code ffmpeg -f null}. Not through the
 * program's own reader, which does not decode pictures that nobody wants.
 *
 * @param wallS seconds from opening the file to its last picture, FFmpeg being loaded
 * @param pictures decoded
 * @param heightPx of the shorter side
 * @param fps pictures a second the file says it has
 * @param playsS seconds the file says it plays
 */
record DecodeAlone(double wallS, int pictures, int heightPx, double fps, double playsS) {

  /**
   * @param threads of the decoder, 1 or more
   */
  static DecodeAlone read(Path file, int threads) throws FrameGrabber.Exception {
    FFmpegFrameGrabber.tryLoad();
    avutil.av_log_set_level(avutil.AV_LOG_QUIET);
    long start = System.nanoTime();
    try (FFmpegFrameGrabber film = new FFmpegFrameGrabber(file.toFile())) {
      film.setVideoOption("threads", String.valueOf(threads));
      film.start();
      int pictures = 0;
      while (film.grabFrame(
              /* doAudio= */ false,
              /* doVideo= */ true,
              /* doProcessing= */ false,
              /* keyFrames= */ false)
          != null) {
        pictures++;
      }
      return new DecodeAlone(
          (System.nanoTime() - start) / 1e9,
          pictures,
          Math.min(film.getImageWidth(), film.getImageHeight()),
          film.getVideoFrameRate(),
          film.getLengthInTime() / 1e6);
    }
  }
}
