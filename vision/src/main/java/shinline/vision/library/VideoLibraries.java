package shinline.vision.library;

import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.ffmpeg.global.swscale;
import org.bytedeco.javacpp.Loader;
import org.bytedeco.opencv.global.opencv_calib3d;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.global.opencv_video;
import org.jspecify.annotations.Nullable;

/**
 * The native libraries a clip is read with, as they are found on this computer.
 *
 * @param ffmpeg version of FFmpeg
 * @param openCv version of OpenCV
 */
public record VideoLibraries(String ffmpeg, String openCv) {
  private static @Nullable VideoLibraries loaded;

  /**
   * Loads all of them, unless they are. Of two threads that load libraries at once one may find
   * them half loaded: whoever may come first to anything of theirs asks here before, and waits
   * while another thread is at it.
   *
   * @throws LinkageError when one of them does not run here
   */
  public static synchronized VideoLibraries load() {
    VideoLibraries here = loaded;
    if (here == null) {
      here = loadAll();
      loaded = here;
    }
    return here;
  }

  private static VideoLibraries loadAll() {
    OpenCvParts.choose();
    Loader.load(avutil.class);
    Loader.load(avcodec.class);
    Loader.load(avformat.class);
    Loader.load(swscale.class);
    Loader.load(opencv_core.class);
    Loader.load(opencv_imgproc.class);
    Loader.load(opencv_calib3d.class);
    Loader.load(opencv_video.class);
    return new VideoLibraries(
        avutil.av_version_info().getString(),
        opencv_core.getVersionMajor()
            + "."
            + opencv_core.getVersionMinor()
            + "."
            + opencv_core.getVersionRevision());
  }
}
