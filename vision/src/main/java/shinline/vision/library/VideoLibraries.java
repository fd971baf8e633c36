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

/**
 * The native libraries a clip is read with, as they are found on this computer.
 *
 * @param ffmpeg version of FFmpeg
 * @param openCv version of OpenCV
 */
public record VideoLibraries(String ffmpeg, String openCv) {

  /**
   * Loads all of them, as reading a clip would.
   *
   * @throws LinkageError when one of them does not run here
   */
  public static VideoLibraries load() {
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
