package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_DEFAULT;
import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_NONREF;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avcodec.AV_EF_EXPLODE;
import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_CORRUPT;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_flush_buffers;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_to_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BACKWARD;
import static org.bytedeco.ffmpeg.global.avformat.av_index_search_timestamp;
import static org.bytedeco.ffmpeg.global.avformat.av_seek_frame;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entry;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.AV_PICTURE_TYPE_B;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;
import static org.bytedeco.ffmpeg.presets.avutil.AVERROR_EAGAIN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.LongPredicate;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.PointerPointer;

/**
 * Walks a film's pictures in the order they are shown, passing over damaged ones. Uses FFmpeg's own
 * calls rather than JavaCV's frame grabber, which hides the packets' times and the decoder's
 * complaints: exactly what tells a damaged clip from a whole one.
 */
final class PictureDecoder implements AutoCloseable {

  /** How a film is gone through. */
  enum Travel {
    /** From one picture to the next. */
    WALKING,
    /** From one wanted picture to the next, by the film's index, until damage is met. */
    LEAPING
  }

  private final AVFormatContext format;
  private final int stream;
  private final ClipOptions options;
  private final FrameTally tally;
  private final Foresight foresight;
  private final UpcomingPackets packets;
  private final AVFrame picture = av_frame_alloc();
  private final ReferenceMark marks;
  private AVCodecContext codec;
  private Travel travel;
  private boolean draining;
  private long lastTick = AV_NOPTS_VALUE;

  /** Pictures that may be passed over between leaps, by their ticks. */
  private LongPredicate leaptOver = tick -> false;

  /** Pictures passed over that lie ahead of the last that came out. */
  private final PriorityQueue<Long> skipped = new PriorityQueue<>();

  /** Whether any picture was passed over on this walk. */
  private boolean hasSkipped;

  /** Pictures passed over right before the one that {@link #advance} moved to. */
  private final List<Long> passedOver = new ArrayList<>();

  /** Decoding time of the last packet that went into the decoder. */
  private long fedTick = Long.MIN_VALUE;

  /**
   * Latest time of the pictures that went into the decoder. Where pictures are decoded in another
   * order than they are shown, those that none refers to lie between earlier ones: one that says it
   * comes last may have a wrong time, and is not passed over.
   */
  private long latestTick = Long.MIN_VALUE;

  /** Time of the picture at which decoding began; unknown right after a leap. */
  private long beganTick = Long.MIN_VALUE;

  /** Whether damage was met since decoding began. */
  private boolean flawed;

  private PictureDecoder(
      AVFormatContext format,
      int stream,
      AVCodecContext codec,
      ClipOptions options,
      FrameTally tally,
      Foresight foresight,
      Travel travel) {
    this.format = format;
    this.stream = stream;
    this.codec = codec;
    this.options = options;
    this.tally = tally;
    this.travel = travel;
    this.foresight = foresight;
    marks = ReferenceMark.of(codec);
    packets = new UpcomingPackets(format, stream, marks, foresight);
    if (!marks.readable()) {
      foresight.giveUp();
    }
  }

  /**
   * Begins a film, and moves to its first good picture.
   *
   * @param format with the film's file open; freed with the decoder, and left alone when there is
   *     none
   * @param travel how the film is going to be gone through
   * @param foresight tells which pictures may be passed over on a walk; it is begun by who walks,
   *     after the first picture
   * @return empty when no picture can be decoded
   */
  static Optional<PictureDecoder> begin(
      AVFormatContext format,
      int stream,
      AVCodec coding,
      ClipOptions options,
      Travel travel,
      FrameTally tally,
      Foresight foresight) {
    Optional<AVCodecContext> codec = codec(format.streams(stream), coding, options, travel);
    if (codec.isEmpty()) {
      return Optional.empty();
    }
    PictureDecoder decoder =
        new PictureDecoder(format, stream, codec.get(), options, tally, foresight, travel);
    boolean begun = decoder.advance();
    if (travel == Travel.LEAPING && (!begun || decoder.flawed)) {
      begun = decoder.restart();
    }
    if (!begun) {
      decoder.releaseCodec();
    }
    return begun ? Optional.of(decoder) : Optional.empty();
  }

  private static Optional<AVCodecContext> codec(
      AVStream film, AVCodec coding, ClipOptions options, Travel travel) {
    AVCodecContext codec = avcodec_alloc_context3(coding);
    avcodec_parameters_to_context(codec, film.codecpar());
    codec.pkt_timebase(film.time_base());
    codec.thread_count(options.decodeThreads());
    // A picture in the middle of a film may be of another size than the film says.
    codec.max_pixels(options.limits().mostPixels());
    if (travel == Travel.LEAPING) {
      // Else damage is patched up from other pictures, which may have been passed over.
      codec.err_recognition(AV_EF_EXPLODE);
    }
    if (avcodec_open2(codec, coding, (PointerPointer<?>) null) < 0) {
      avcodec_free_context(codec);
      return Optional.empty();
    }
    return Optional.of(codec);
  }

  /**
   * Moves to the next good picture.
   *
   * @return whether there is one
   */
  boolean advance() {
    passedOver.clear();
    while (true) {
      av_frame_unref(picture);
      int got = avcodec_receive_frame(codec, picture);
      if (got == 0) {
        if (isGood(picture)) {
          long tick = tickOf(picture);
          foresight.cameOut(tick);
          countPassedOver(tick);
          lastTick = tick;
          tally.good(lastTick);
          if ((picture.flags() & AVFrame.AV_FRAME_FLAG_KEY) != 0) {
            tally.key(lastTick);
          }
          if (picture.pict_type() != AV_PICTURE_TYPE_B) {
            tally.anchor(lastTick);
          }
          return isWithinLimits();
        }
        foresight.giveUp();
        flawed |= picture.best_effort_timestamp() >= beganTick;
      } else if (got == AVERROR_EAGAIN() && !draining) {
        feed();
      } else if (got == avutil.AVERROR_EOF || draining) {
        foresight.cameToEnd();
        countPassedOver(Long.MAX_VALUE);
        return false;
      } else {
        foresight.giveUp();
        flawed = true;
      }
      // Any other complaint concerns one damaged packet: the next one may be good again. The
      // decoder answers "again" after it, so this ends.
    }
  }

  private boolean isWithinLimits() {
    boolean within = tally.breach().isEmpty();
    if (!within) {
      foresight.giveUp();
    }
    return within;
  }

  /** Counts the pictures passed over before a time as good ones: their packets were there. */
  private void countPassedOver(long tick) {
    while (!skipped.isEmpty() && skipped.peek() < tick) {
      long passed = skipped.remove();
      tally.good(passed);
      passedOver.add(passed);
    }
    isWithinLimits();
  }

  /**
   * Whether pictures were passed over of a film that has turned out to be damaged, or otherwise not
   * as foreseen. What {@link #advance} has told then is of no use, and the film is to be begun
   * again.
   */
  boolean mayHavePassedOverDamage() {
    return hasSkipped && foresight.givenUp();
  }

  /** Times of the pictures that {@link #advance} passed over on its way, rising. */
  List<Long> passedOver() {
    return passedOver;
  }

  /**
   * Whether {@link #leap} may be called: begun for it, and not begun again to be walked through.
   */
  boolean mayLeap() {
    return travel == Travel.LEAPING;
  }

  /**
   * Says which pictures nobody wants, until the film is begun again. Where no other picture refers
   * to one, it is not decoded.
   */
  void passOver(LongPredicate unwanted) {
    leaptOver = codec.codec_id() == AV_CODEC_ID_H264 ? unwanted : tick -> false;
  }

  /**
   * Moves on to a picture of the film, from the last key picture before it where that lies ahead.
   *
   * @param tick the picture's time, not before {@link #tick}
   * @return whether the very picture came out as it does when all before it are decoded; if not,
   *     the decoder is anywhere
   */
  boolean leap(long tick) {
    if (tick == lastTick) {
      return true;
    }
    AVStream film = format.streams(stream);
    int key = av_index_search_timestamp(film, tick, AVSEEK_FLAG_BACKWARD);
    if (key >= 0 && avformat_index_get_entry(film, key).timestamp() > fedTick) {
      if (av_seek_frame(format, stream, tick, AVSEEK_FLAG_BACKWARD) < 0) {
        return false;
      }
      avcodec_flush_buffers(codec);
      packets.clear();
      draining = false;
      lastTick = AV_NOPTS_VALUE;
      fedTick = Long.MIN_VALUE;
      beganTick = AV_NOPTS_VALUE;
    }
    while (advance() && lastTick <= tick) {
      if (lastTick == tick) {
        // Pictures shown before the one decoding began at may lean on others before it, and what
        // is patched up over damage may depend on pictures passed over.
        return beganTick != AV_NOPTS_VALUE && beganTick <= tick && !flawed;
      }
    }
    return false;
  }

  /**
   * Begins the film again, at its first good picture, to be walked through.
   *
   * @return whether there is one
   */
  boolean restart() {
    AVStream film = format.streams(stream);
    long first = avformat_index_get_entry(film, 0).timestamp();
    Optional<AVCodecContext> fresh = codec(film, codec.codec(), options, Travel.WALKING);
    if (fresh.isEmpty() || av_seek_frame(format, stream, first - 1, AVSEEK_FLAG_BACKWARD) < 0) {
      fresh.ifPresent(avcodec::avcodec_free_context);
      return false;
    }
    avcodec_free_context(codec);
    codec = fresh.get();
    tally.restart();
    travel = Travel.WALKING;
    packets.clear();
    skipped.clear();
    hasSkipped = false;
    foresight.giveUp();
    latestTick = Long.MIN_VALUE;
    leaptOver = tick -> false;
    draining = false;
    lastTick = AV_NOPTS_VALUE;
    return advance();
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
    Optional<AVPacket> next = packets.next();
    if (next.isEmpty()) {
      draining = true;
      avcodec_send_packet(codec, null);
      return;
    }
    AVPacket packet = next.get();
    try {
      send(packet);
    } finally {
      av_packet_free(packet);
    }
  }

  private void send(AVPacket packet) {
    boolean unreferenced = false;
    if (UpcomingPackets.isShown(packet)) {
      tally.promise(packet.pts());
      unreferenced = marks.unreferenced(packet);
      if (unreferenced) {
        tally.unreferenced(packet.pts());
      }
    }
    fedTick = packet.dts();
    if (beganTick == AV_NOPTS_VALUE) {
      beganTick = packet.pts();
    }
    boolean skip = leaptOver.test(packet.pts());
    boolean inPlace = codec.has_b_frames() == 0 || packet.pts() < latestTick;
    if (unreferenced && inPlace && foresight.unwanted(packet.pts()) && isSound(packet)) {
      foresight.passedOver(packet.pts());
      skipped.add(packet.pts());
      hasSkipped = true;
      skip = true;
    }
    latestTick = Math.max(latestTick, packet.pts());
    codec.skip_frame(skip ? AVDISCARD_NONREF : AVDISCARD_DEFAULT);
    if (avcodec_send_packet(codec, packet) < 0) {
      flawed = true;
      foresight.giveUp();
    }
  }

  /** Whether it is all there, as far as can be told without decoding it. */
  private boolean isSound(AVPacket packet) {
    return (packet.flags() & AV_PKT_FLAG_CORRUPT) == 0
        && marks.whollyUnreferenced(packet.data().capacity(packet.size()).asBuffer());
  }

  /** Frees all but the file. */
  private void releaseCodec() {
    packets.close();
    av_frame_free(picture);
    avcodec_free_context(codec);
  }

  @Override
  public void close() {
    releaseCodec();
    avformat_close_input(format);
  }
}
