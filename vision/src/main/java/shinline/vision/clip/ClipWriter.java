package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_GLOBAL_HEADER;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_rescale_ts;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_encoder_by_name;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_from_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_packet;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_frame;
import static org.bytedeco.ffmpeg.global.avformat.AVIO_FLAG_WRITE;
import static org.bytedeco.ffmpeg.global.avformat.av_interleaved_write_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_write_trailer;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_output_context2;
import static org.bytedeco.ffmpeg.global.avformat.avformat_free_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_new_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_write_header;
import static org.bytedeco.ffmpeg.global.avformat.avio_closep;
import static org.bytedeco.ffmpeg.global.avformat.avio_open;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_PRI_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_MPEG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_TRC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR24;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_make_writable;
import static org.bytedeco.ffmpeg.global.avutil.av_make_q;
import static org.bytedeco.ffmpeg.global.avutil.av_strdup;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BICUBIC;
import static org.bytedeco.ffmpeg.global.swscale.sws_freeContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_getCoefficients;
import static org.bytedeco.ffmpeg.global.swscale.sws_getContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_scale;
import static org.bytedeco.ffmpeg.global.swscale.sws_setColorspaceDetails;
import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.clip.WriterOpening.WriterRefusal;

/**
 * Writes pictures with their own times as an H.264 mp4 that phones play. A film that cannot be
 * finished is taken away; where it grows until it is whole is the caller's affair.
 */
public final class ClipWriter implements AutoCloseable {

  /**
   * H.264 encoder of the LGPL build. Asked for by name: a missing one would be replaced silently.
   */
  private static final String ENCODER = "libopenh264";

  /** The time base of broadcast films: 11 µs, and whole for 24, 25, 30, 50 and 60 a second. */
  private static final int TICKS_PER_SECOND = 90_000;

  /**
   * Bits a pixel and picture. Lines and figures drawn on a gym scene stay clean at this rate in the
   * baseline profile; 720p at 30 a second comes to 5.5 Mbit/s.
   */
  private static final double BITS_PER_PIXEL = 0.2;

  /** Less than this starves tiny pictures. */
  private static final long MIN_BIT_RATE = 400_000;

  private static final int KEY_FRAME_EVERY = 30;
  private static final int FIXED_ONE = 1 << 16;

  private final Path target;
  private final int width;
  private final int height;
  private final AVFormatContext format;
  private final AVCodecContext codec;
  private final AVStream stream;
  private final SwsContext scaler;
  private final AVFrame picture = av_frame_alloc();
  private final AVPacket packet = av_packet_alloc();
  private final PointerPointer<Mat> source = new PointerPointer<>(4);
  private final IntPointer sourceStride = new IntPointer(4L);
  private long lastTick = -1;
  private long stepTicks;
  private boolean failed;
  private boolean closed;

  private ClipWriter(
      Path target,
      int width,
      int height,
      AVFormatContext format,
      AVCodecContext codec,
      AVStream stream,
      double typicalFps) {
    this.target = target;
    this.width = width;
    this.height = height;
    this.format = format;
    this.codec = codec;
    this.stream = stream;
    this.stepTicks = Math.max(1, Math.round(TICKS_PER_SECOND / typicalFps));
    picture.width(codec.width());
    picture.height(codec.height());
    picture.format(AV_PIX_FMT_YUV420P);
    picture.colorspace(AVCOL_SPC_BT709);
    picture.color_range(AVCOL_RANGE_MPEG);
    av_frame_get_buffer(picture, 0);
    scaler =
        sws_getContext(
            width,
            height,
            AV_PIX_FMT_BGR24,
            codec.width(),
            codec.height(),
            AV_PIX_FMT_YUV420P,
            SWS_BICUBIC,
            null,
            null,
            (DoublePointer) null);
    IntPointer bt709 = sws_getCoefficients(AVCOL_SPC_BT709);
    sws_setColorspaceDetails(scaler, bt709, 1, bt709, 0, 0, FIXED_ONE, FIXED_ONE);
  }

  /**
   * Begins a clip.
   *
   * @param target the mp4 to write, in a place where nothing is yet
   * @param width pixels, 16…4096; an odd size is stretched by one pixel, as H.264 films are even
   * @param height likewise
   * @param typicalFps pictures a second, for the bit rate only; above 0
   * @throws IllegalArgumentException for sizes or rates that cannot be
   */
  public static WriterOpening open(Path target, int width, int height, double typicalFps) {
    return open(target, width, height, typicalFps, FilmNotes.NONE);
  }

  /**
   * Begins a clip that carries notes, as {@link #open(Path, int, int, double)} does.
   *
   * @param notes kept in the file as its title and comment
   */
  public static WriterOpening open(
      Path target, int width, int height, double typicalFps, FilmNotes notes) {
    if (width < 1 || height < 1 || !(typicalFps > 0) || typicalFps > TICKS_PER_SECOND) {
      throw new IllegalArgumentException(
          "no clip of " + width + " x " + height + " at " + typicalFps + " pictures a second");
    }
    try {
      QuietFfmpeg.load();
      return begin(target, width, height, typicalFps, notes);
    } catch (LinkageError e) {
      return new WriterOpening.Refused(WriterRefusal.NO_LIBRARY);
    }
  }

  private static WriterOpening begin(
      Path target, int width, int height, double typicalFps, FilmNotes notes) {
    AVCodec encoder = avcodec_find_encoder_by_name(ENCODER);
    if (encoder == null || encoder.isNull()) {
      return new WriterOpening.Refused(WriterRefusal.NO_ENCODER);
    }
    Path name = target.toAbsolutePath().getFileName();
    if (name == null || Files.isDirectory(target)) {
      return new WriterOpening.Refused(WriterRefusal.FOLDER);
    }
    AVCodecContext codec = avcodec_alloc_context3(encoder);
    codec.width(width + width % 2);
    codec.height(height + height % 2);
    codec.pix_fmt(AV_PIX_FMT_YUV420P);
    codec.time_base(av_make_q(1, TICKS_PER_SECOND));
    codec.framerate(av_make_q((int) Math.round(typicalFps * 1000), 1000));
    codec.bit_rate(
        Math.max(MIN_BIT_RATE, Math.round(BITS_PER_PIXEL * width * height * typicalFps)));
    codec.gop_size(KEY_FRAME_EVERY);
    // One thread: more would cut each picture into slices, and two runs must give equal files.
    codec.thread_count(1);
    codec.colorspace(AVCOL_SPC_BT709);
    codec.color_primaries(AVCOL_PRI_BT709);
    codec.color_trc(AVCOL_TRC_BT709);
    codec.color_range(AVCOL_RANGE_MPEG);
    codec.flags(codec.flags() | AV_CODEC_FLAG_GLOBAL_HEADER);
    if (avcodec_open2(codec, encoder, (PointerPointer<?>) null) < 0) {
      avcodec_free_context(codec);
      return new WriterOpening.Refused(WriterRefusal.PICTURE_SIZE);
    }
    AVFormatContext format = new AVFormatContext(null);
    avformat_alloc_output_context2(format, null, "mp4", null);
    format.metadata(dictionary(notes));
    AVStream stream = avformat_new_stream(format, null);
    avcodec_parameters_from_context(stream.codecpar(), codec);
    stream.time_base(codec.time_base());
    AVIOContext io = new AVIOContext(null);
    AVDictionary settings = new AVDictionary(null);
    // The index goes to the front, so that a phone can start playing before all has arrived.
    av_dict_set(settings, "movflags", "+faststart", 0);
    try (BytePointer address = QuietFfmpeg.address(target)) {
      boolean ready = avio_open(io, address, AVIO_FLAG_WRITE) >= 0;
      if (ready) {
        format.pb(io);
        // The muxer opens the file a second time to move the index; it asks the context for the
        // name.
        format.url(av_strdup(address));
        ready = avformat_write_header(format, settings) >= 0;
      }
      if (!ready) {
        if (format.pb() != null) {
          avio_closep(format.pb());
        }
        avformat_free_context(format);
        avcodec_free_context(codec);
        return new WriterOpening.Refused(WriterRefusal.NO_PLACE);
      }
    } finally {
      av_dict_free(settings);
    }
    return new WriterOpening.Ready(
        new ClipWriter(target, width, height, format, codec, stream, typicalFps));
  }

  /** Freed with the format that it is given to. */
  private static AVDictionary dictionary(FilmNotes notes) {
    AVDictionary dictionary = new AVDictionary(null);
    note(dictionary, "title", notes.title());
    note(dictionary, "comment", notes.comment());
    return dictionary;
  }

  private static void note(AVDictionary dictionary, String key, String text) {
    if (text.isEmpty()) {
      return;
    }
    try (BytePointer name = new BytePointer(key, StandardCharsets.UTF_8);
        BytePointer value = new BytePointer(text, StandardCharsets.UTF_8)) {
      av_dict_set(dictionary, name, value, 0);
    }
  }

  /**
   * Adds a picture.
   *
   * @param image BGR, 8 bits, of the size given at the opening; not changed
   * @param timeS seconds, rising; kept to 1/90000 s. The first one becomes the clip's beginning
   * @throws IllegalArgumentException for another size or type
   * @throws IOException when the encoder or the disk refuses; close the writer then
   */
  public void write(Mat image, double timeS) throws IOException {
    if (image.cols() != width || image.rows() != height || image.type() != CV_8UC3) {
      throw new IllegalArgumentException(
          "expected BGR "
              + width
              + " x "
              + height
              + ", got "
              + image.cols()
              + " x "
              + image.rows());
    }
    if (closed) {
      throw new IllegalStateException("the clip is closed");
    }
    // Two pictures within one tick: the later is moved on by one, as players need rising times.
    long tick = Math.max(Math.round(timeS * TICKS_PER_SECOND), lastTick + 1);
    if (lastTick >= 0) {
      stepTicks = tick - lastTick;
    }
    lastTick = tick;
    require(av_frame_make_writable(picture));
    source.put(0, image.data());
    sourceStride.put(0, (int) image.step());
    sws_scale(scaler, source, sourceStride, 0, height, picture.data(), picture.linesize());
    picture.pts(tick);
    require(avcodec_send_frame(codec, picture));
    drain();
  }

  private void drain() throws IOException {
    while (avcodec_receive_packet(codec, packet) == 0) {
      if (packet.duration() == 0) {
        packet.duration(stepTicks);
      }
      packet.stream_index(stream.index());
      av_packet_rescale_ts(packet, codec.time_base(), stream.time_base());
      require(av_interleaved_write_frame(format, packet));
    }
  }

  private void require(int result) throws IOException {
    if (result < 0) {
      failed = true;
      throw new ClipWriteException(result);
    }
  }

  /**
   * Finishes the clip; without any picture, or after a failed write, leaves no file behind.
   *
   * @throws IOException when the disk refuses
   */
  @Override
  public void close() throws IOException {
    if (closed) {
      return;
    }
    closed = true;
    boolean keep = !failed && lastTick >= 0;
    try {
      if (keep) {
        avcodec_send_frame(codec, null);
        drain();
        require(av_write_trailer(format));
      }
    } finally {
      release();
      if (failed || !keep) {
        Files.deleteIfExists(target);
      }
    }
  }

  private void release() {
    avio_closep(format.pb());
    avformat_free_context(format);
    avcodec_free_context(codec);
    av_frame_free(picture);
    av_packet_free(packet);
    sws_freeContext(scaler);
    source.close();
    sourceStride.close();
  }
}
