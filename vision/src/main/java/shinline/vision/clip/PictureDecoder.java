package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_DISCARD;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;
import static org.bytedeco.ffmpeg.presets.avutil.AVERROR_EAGAIN;

import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avutil;

/**
 * Walks a film's pictures in the order they are shown, passing over damaged ones. Uses FFmpeg's own
 * calls rather than JavaCV's frame grabber, which hides the packets' times and the decoder's
 * complaints: exactly what tells a damaged clip from a whole one.
 */
final class PictureDecoder implements AutoCloseable {

  /** Reads in a row that may fail before the rest of the film is given up. */
  private static final int MAX_FAILED_READS = 1000;

  private final AVFormatContext format;
  private final AVCodecContext codec;
  private final int stream;
  private final FrameTally tally;
  private final AVPacket packet = av_packet_alloc();
  private final AVFrame picture = av_frame_alloc();
  private boolean draining;
  private long lastTick = AV_NOPTS_VALUE;

  /** Takes over {@code format} and {@code codec}: they are freed with this decoder. */
  PictureDecoder(AVFormatContext format, AVCodecContext codec, int stream, FrameTally tally) {
    this.format = format;
    this.codec = codec;
    this.stream = stream;
    this.tally = tally;
  }

  /**
   * Moves to the next good picture.
   *
   * @return whether there is one
   */
  boolean advance() {
    while (true) {
      av_frame_unref(picture);
      int got = avcodec_receive_frame(codec, picture);
      if (got == 0) {
        if (isGood(picture)) {
          lastTick = tickOf(picture);
          tally.good(lastTick);
          return true;
        }
      } else if (got == AVERROR_EAGAIN() && !draining) {
        feed();
      } else if (got == avutil.AVERROR_EOF || draining) {
        return false;
      }
      // Any other complaint concerns one damaged packet: the next one may be good again. The
      // decoder answers "again" after it, so this ends.
    }
  }

  /** The picture {@link #advance} moved to; overwritten by the next call. */
  AVFrame picture() {
    return picture;
  }

  /** Its time in the film's ticks, strictly rising. */
  long tick() {
    return lastTick;
  }

  /** A picture patched up from its neighbours would show a pose that never was. */
  private static boolean isGood(AVFrame picture) {
    return picture.decode_error_flags() == 0
        && (picture.flags() & AVFrame.AV_FRAME_FLAG_CORRUPT) == 0;
  }

  private long tickOf(AVFrame picture) {
    long tick = picture.best_effort_timestamp();
    if (lastTick == AV_NOPTS_VALUE) {
      return tick == AV_NOPTS_VALUE ? 0 : tick;
    }
    if (tick == AV_NOPTS_VALUE || tick <= lastTick) {
      // A film without usable times here: the picture's own length is the best there is.
      return lastTick + Math.max(1, picture.duration());
    }
    return tick;
  }

  private void feed() {
    int failures = 0;
    while (failures < MAX_FAILED_READS) {
      int read = av_read_frame(format, packet);
      if (read == avutil.AVERROR_EOF) {
        break;
      }
      if (read < 0) {
        failures++;
        continue;
      }
      boolean ours = packet.stream_index() == stream;
      if (ours) {
        if ((packet.flags() & AV_PKT_FLAG_DISCARD) == 0 && packet.pts() != AV_NOPTS_VALUE) {
          tally.promise(packet.pts());
        }
        avcodec_send_packet(codec, packet);
      }
      av_packet_unref(packet);
      if (ours) {
        return;
      }
    }
    draining = true;
    avcodec_send_packet(codec, null);
  }

  /** Frees all but the file, for an opening that fails and closes the file itself. */
  void releaseCodec() {
    av_packet_free(packet);
    av_frame_free(picture);
    avcodec_free_context(codec);
  }

  @Override
  public void close() {
    releaseCodec();
    avformat_close_input(format);
  }
}
