package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_ALL;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_DATA_DISPLAYMATRIX;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_side_data_get;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_decoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_get_name;
import static org.bytedeco.ffmpeg.global.avformat.AV_DISPOSITION_ATTACHED_PIC;
import static org.bytedeco.ffmpeg.global.avformat.av_find_best_stream;
import static org.bytedeco.ffmpeg.global.avformat.av_find_input_format;
import static org.bytedeco.ffmpeg.global.avformat.av_guess_sample_aspect_ratio;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avformat.avformat_find_stream_info;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entries_count;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entry;
import static org.bytedeco.ffmpeg.global.avformat.avformat_open_input;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.AV_TIME_BASE;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_pix_fmt_desc_get;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIndexEntry;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.avutil.AVPixFmtDescriptor;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;
import shinline.vision.clip.ClipOpening.Opened;
import shinline.vision.clip.ClipOpening.Refused;
import shinline.vision.clip.PictureDecoder.Travel;

/**
 * Reads H.264, HEVC, VP9 and AV1 films in mp4, mov, mkv or webm files through FFmpeg. Pictures are
 * turned and stretched here, since FFmpeg hands them out as stored.
 */
public final class FfmpegClipReader implements ClipReader {

  /** The tag in which phones note the rate a slow-motion clip was filmed at. */
  private static final String CAPTURE_FPS_TAG = "com.android.capture.fps";

  /** Pixel shapes outside 1:4 … 4:1 are not from a camera but a mistake in the file. */
  private static final double MAX_PIXEL_ASPECT = 4;

  /** Slow motion is always a whole number of times; averages of a variable rate come this close. */
  private static final double WHOLE_FACTOR_TOLERANCE = 0.02;

  @Override
  public ClipOpening open(Path file, ClipOptions options, FrameChoice choice) {
    Optional<Refused> refusal = FileProbe.refusal(file);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    try {
      QuietFfmpeg.load();
      return openFilm(file, options, choice);
    } catch (LinkageError e) {
      return new Refused(PlainRefusal.NO_LIBRARY);
    } catch (RuntimeException | OutOfMemoryError e) {
      return new Refused(PlainRefusal.FIRST_PICTURE_FAILS);
    }
  }

  private static ClipOpening openFilm(Path file, ClipOptions options, FrameChoice choice) {
    // Told, not left to FFmpeg, which would go by the name of some files instead of their bytes.
    String container = FileProbe.container(file);
    AVFormatContext format = avformat_alloc_context();
    AVDictionary limits = new AVDictionary(null);
    // A film may name other files or addresses to fetch; nothing but the file itself is opened.
    av_dict_set(limits, "protocol_whitelist", "file", 0);
    av_dict_set(limits, "format_whitelist", container, 0);
    int opened;
    try (BytePointer address = QuietFfmpeg.address(file)) {
      opened = avformat_open_input(format, address, av_find_input_format(container), limits);
    } finally {
      av_dict_free(limits);
    }
    if (opened < 0) {
      // FFmpeg has freed the context itself.
      return new Refused(PlainRefusal.UNKNOWN_FORMAT);
    }
    boolean handedOn = false;
    try {
      ClipOpening opening = openStream(format, options, choice);
      handedOn = opening instanceof Opened;
      return opening;
    } finally {
      if (!handedOn) {
        avformat_close_input(format);
      }
    }
  }

  private static ClipOpening openStream(
      AVFormatContext format, ClipOptions options, FrameChoice choice) {
    avformat_find_stream_info(format, (PointerPointer<?>) null);
    int number = av_find_best_stream(format, AVMEDIA_TYPE_VIDEO, -1, -1, (AVCodec) null, 0);
    if (number < 0 || isCoverPicture(format.streams(number))) {
      boolean sound =
          av_find_best_stream(format, AVMEDIA_TYPE_AUDIO, -1, -1, (AVCodec) null, 0) >= 0;
      return new Refused(sound ? PlainRefusal.SOUND_ONLY : PlainRefusal.NO_VIDEO);
    }
    AVStream stream = format.streams(number);
    AVCodecParameters stored = stream.codecpar();
    String codecName = avcodec_get_name(stored.codec_id()).getString();
    AVCodec decoder = avcodec_find_decoder(stored.codec_id());
    if (decoder == null || decoder.isNull()) {
      return new Refused(new ClipRefusal.UnknownCodec(codecName));
    }
    if (stored.width() <= 0 || stored.height() <= 0) {
      return noPicture();
    }
    double pixelAspect = pixelAspect(format, stream);
    // Stretching only ever enlarges, so that no detail is lost.
    int width = (int) Math.round(stored.width() * Math.max(1, pixelAspect));
    int height = (int) Math.round(stored.height() / Math.min(1, pixelAspect));
    long mostPixels = options.limits().mostPixels();
    if ((long) width * height > mostPixels) {
      return new Refused(new ClipRefusal.TooLarge(width, height, mostPixels));
    }
    double playbackFps = ratio(stream.avg_frame_rate());
    double factor = 1;
    if (options.captureFps().isPresent()) {
      double captureFps = options.captureFps().getAsDouble();
      if (playbackFps <= 0) {
        return new Refused(PlainRefusal.NO_PLAYBACK_RATE);
      }
      factor = slowMotionFactor(captureFps, playbackFps);
      if (factor < 1) {
        return new Refused(new ClipRefusal.CaptureRateTooLow(captureFps, playbackFps));
      }
    }
    double secondsPerTick = ratio(stream.time_base()) / factor;
    Orientation orientation = orientation(stored).turnedMore(options.quarterTurnsMore());
    Promise promise = promise(format, stream, secondsPerTick, factor);
    double longestS = options.limits().longestS();
    if (promise.seconds() > longestS) {
      return new Refused(new ClipRefusal.TooLong(promise.seconds(), longestS));
    }
    ClipInfo info =
        new ClipInfo(
            orientation.swapsSides() ? height : width,
            orientation.swapsSides() ? width : height,
            orientation.clockwiseDeg(),
            promise.frames(),
            promise.seconds(),
            factor,
            codecName,
            bitsPerSample(stored),
            pixelAspect,
            playbackFps,
            captureFpsTag(format));
    return start(format, number, decoder, options, info, orientation, secondsPerTick, choice);
  }

  private static ClipOpening start(
      AVFormatContext format,
      int number,
      AVCodec decoder,
      ClipOptions options,
      ClipInfo info,
      Orientation orientation,
      double secondsPerTick,
      FrameChoice choice) {
    AVStream stream = format.streams(number);
    for (int other = 0; other < format.nb_streams(); other++) {
      if (other != number) {
        format.streams(other).discard(AVDISCARD_ALL);
      }
    }
    // Only mp4 and mov promise a number; the index they have it from is what leaping goes by.
    boolean allSeen = choice.known().map(k -> k.ofFrames() == info.expectedFrames()).orElse(false);
    Travel travel = allSeen && info.expectedFrames() > 0 ? Travel.LEAPING : Travel.WALKING;
    // From one leap to the next any time may pass.
    FrameTally tally =
        new FrameTally(
            secondsPerTick, travel == Travel.LEAPING ? ClipLimits.NONE : options.limits());
    // What is passed over must be gone back to when damage is met, which takes an index.
    Foresight foresight =
        choice
            .copy()
            .filter(copy -> info.expectedFrames() > 0)
            .map(copy -> new Foresight(copy, secondsPerTick))
            .orElseGet(Foresight::none);
    Optional<PictureDecoder> pictures =
        PictureDecoder.begin(format, number, decoder, options, travel, tally, foresight);
    if (pictures.isEmpty()) {
      return noPicture();
    }
    int storedWidth = orientation.swapsSides() ? info.heightPx() : info.widthPx();
    int storedHeight = orientation.swapsSides() ? info.widthPx() : info.heightPx();
    PictureConverter converter = new PictureConverter(storedWidth, storedHeight, orientation);
    return new Opened(
        new FfmpegClip(info, pictures.get(), converter, tally, secondsPerTick, choice, foresight));
  }

  private static Refused noPicture() {
    return new Refused(PlainRefusal.NO_PICTURE);
  }

  /** Sound files carry their cover as a film of one picture. */
  private static boolean isCoverPicture(AVStream stream) {
    return (stream.disposition() & AV_DISPOSITION_ATTACHED_PIC) != 0;
  }

  private static double pixelAspect(AVFormatContext format, AVStream stream) {
    double aspect = ratio(av_guess_sample_aspect_ratio(format, stream, null));
    boolean sensible = aspect >= 1 / MAX_PIXEL_ASPECT && aspect <= MAX_PIXEL_ASPECT;
    return sensible ? aspect : 1;
  }

  private static double slowMotionFactor(double captureFps, double playbackFps) {
    double factor = captureFps / playbackFps;
    long whole = Math.round(factor);
    boolean nearWhole = whole >= 1 && Math.abs(factor / whole - 1) <= WHOLE_FACTOR_TOLERANCE;
    return nearWhole ? whole : factor;
  }

  private static Orientation orientation(AVCodecParameters stored) {
    AVPacketSideData data =
        av_packet_side_data_get(
            stored.coded_side_data(), stored.nb_coded_side_data(), AV_PKT_DATA_DISPLAYMATRIX);
    if (data == null || data.isNull() || data.size() < 9L * Integer.BYTES) {
      return Orientation.UPRIGHT;
    }
    IntPointer matrix = new IntPointer(data.data());
    return Orientation.ofDisplayMatrix(matrix.get(0), matrix.get(1), matrix.get(3), matrix.get(4));
  }

  private static int bitsPerSample(AVCodecParameters stored) {
    AVPixFmtDescriptor descriptor = av_pix_fmt_desc_get(stored.format());
    return descriptor == null || descriptor.isNull() ? 8 : descriptor.comp(0).depth();
  }

  private static OptionalDouble captureFpsTag(AVFormatContext format) {
    AVDictionaryEntry entry = av_dict_get(format.metadata(), CAPTURE_FPS_TAG, null, 0);
    if (entry == null || entry.isNull()) {
      return OptionalDouble.empty();
    }
    try {
      double fps = Double.parseDouble(entry.value().getString().strip());
      return fps > 0 && fps < Double.MAX_VALUE ? OptionalDouble.of(fps) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * What the container says is inside: for mp4 and mov the index itself, less what the edit list
   * hides, since the frame count in their header ignores edit lists.
   */
  private static Promise promise(
      AVFormatContext format, AVStream stream, double secondsPerTick, double factor) {
    boolean wholeIndex = format.iformat().name().getString().contains("mov");
    int entries = wholeIndex ? avformat_index_get_entries_count(stream) : 0;
    int shown = 0;
    long first = 0;
    long last = 0;
    for (int i = 0; i < entries; i++) {
      AVIndexEntry entry = avformat_index_get_entry(stream, i);
      if ((entry.flags() & AVIndexEntry.AVINDEX_DISCARD_FRAME) == 0) {
        first = shown == 0 ? entry.timestamp() : first;
        last = entry.timestamp();
        shown++;
      }
    }
    if (shown > 1) {
      double stepTicks = (last - first) / (shown - 1.0);
      return new Promise(shown, (last - first + stepTicks) * secondsPerTick);
    }
    double seconds = 0;
    if (stream.duration() != AV_NOPTS_VALUE) {
      seconds = stream.duration() * secondsPerTick;
    } else if (format.duration() != AV_NOPTS_VALUE) {
      seconds = format.duration() / (double) AV_TIME_BASE / factor;
    }
    return new Promise(shown, Math.max(0, seconds));
  }

  private static double ratio(AVRational fraction) {
    return fraction.den() == 0 ? 0 : (double) fraction.num() / fraction.den();
  }

  /**
   * @param frames 0 when the container does not say
   * @param seconds 0 when the container does not say
   */
  private record Promise(int frames, double seconds) {}
}
