package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_FLAG_DISCARD;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.global.avutil;

/**
 * Reads a film's packets, in the order of decoding, so far ahead of the decoder that {@link
 * Foresight} knows what is shown next.
 */
final class UpcomingPackets implements AutoCloseable {
  /** Reads in a row that may fail before the rest of the film is given up. */
  private static final int MAX_FAILED_READS = 1000;

  /**
   * Packets read ahead. What can be passed over is shown right after it is decoded, but for a few
   * pictures that may yet come between.
   */
  private static final int AHEAD = Foresight.MOST_HELD_BACK + 4;

  private final AVFormatContext format;
  private final int stream;
  private final ReferenceMark marks;
  private final Foresight foresight;
  private final Deque<AVPacket> read = new ArrayDeque<>();
  private boolean ended;

  UpcomingPackets(AVFormatContext format, int stream, ReferenceMark marks, Foresight foresight) {
    this.format = format;
    this.stream = stream;
    this.marks = marks;
    this.foresight = foresight;
  }

  /**
   * @return the film's next packet, to be freed by the caller; empty when there is none left
   */
  Optional<AVPacket> next() {
    while (!ended && read.size() <= (foresight.givenUp() ? 0 : AHEAD)) {
      readOne();
    }
    return Optional.ofNullable(read.poll());
  }

  private void readOne() {
    AVPacket packet = av_packet_alloc();
    int failures = 0;
    while (failures < MAX_FAILED_READS) {
      int got = av_read_frame(format, packet);
      if (got == avutil.AVERROR_EOF) {
        break;
      }
      if (got < 0) {
        failures++;
      } else if (packet.stream_index() == stream) {
        read.add(packet);
        foresee(packet);
        return;
      } else {
        av_packet_unref(packet);
      }
    }
    av_packet_free(packet);
    ended = true;
    foresight.ended();
  }

  private void foresee(AVPacket packet) {
    if (foresight.givenUp()) {
      return;
    }
    if (packet.pts() == AV_NOPTS_VALUE) {
      foresight.giveUp();
    } else if (isShown(packet)) {
      foresight.read(packet.pts(), marks.unreferenced(packet));
    }
  }

  /** Whether its picture is to be shown, at the packet's own time. */
  static boolean isShown(AVPacket packet) {
    return (packet.flags() & AV_PKT_FLAG_DISCARD) == 0 && packet.pts() != AV_NOPTS_VALUE;
  }

  /** Forgets what was read, when the film is to be read on from elsewhere. */
  void clear() {
    read.forEach(packet -> av_packet_free(packet));
    read.clear();
    ended = false;
  }

  @Override
  public void close() {
    clear();
  }
}
