package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;

import java.nio.ByteBuffer;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;

/**
 * Reads from a packet of an H.264 film whether other pictures are decoded from its own: each slice
 * says so in the two bits after the first of its header (nal_ref_idc, ITU-T H.264 7.4.1).
 */
final class ReferenceMark {
  private static final int FIRST_SLICE_TYPE = 1;
  private static final int LAST_SLICE_TYPE = 5;

  /** Within so many bytes of a packet its first slice begins. */
  private static final int START_BYTES = 4096;

  /** Bytes that tell a unit's length; 0 in a stream whose units begin with a start code. */
  private final int lengthBytes;

  /**
   * @param extradata the film's decoder configuration: MP4's begins with version 1 and tells the
   *     size of a length in its fifth byte
   */
  ReferenceMark(byte[] extradata) {
    lengthBytes = extradata.length > 4 && extradata[0] == 1 ? (extradata[4] & 3) + 1 : 0;
  }

  /**
   * Not readable but in H.264, where alone "refers to" is plain: HEVC marks what its own temporal
   * layer does not refer to.
   */
  static ReferenceMark of(AVCodecContext codec) {
    boolean plain = codec.codec_id() == AV_CODEC_ID_H264;
    byte[] extradata = new byte[plain ? Math.max(0, codec.extradata_size()) : 0];
    if (extradata.length > 0) {
      codec.extradata().get(extradata);
    }
    return new ReferenceMark(extradata);
  }

  /** Whether a packet tells its mark; if not, none is ever unreferenced. */
  boolean readable() {
    return lengthBytes > 0;
  }

  /** Whether no other picture is decoded from a packet's own. */
  boolean unreferenced(AVPacket packet) {
    if (lengthBytes == 0) {
      return false;
    }
    // The slice comes first, but for a few small units before it.
    byte[] start = new byte[Math.min(packet.size(), START_BYTES)];
    packet.data().get(start);
    return unreferenced(start);
  }

  /** Whether no other picture is decoded from this one, by the first slice of its packet. */
  boolean unreferenced(byte[] start) {
    if (lengthBytes == 0) {
      return false;
    }
    ByteBuffer packet = ByteBuffer.wrap(start);
    long at = 0;
    while (at + lengthBytes < packet.limit()) {
      int header = header(packet, at);
      if (isSlice(header)) {
        return mark(header) == 0;
      }
      at += lengthBytes + length(packet, at);
    }
    return false;
  }

  /**
   * Whether no other picture is decoded from this one, by all slices of its packet, whose units
   * follow one another to its very end: those of a packet overwritten by something else do not.
   */
  boolean whollyUnreferenced(ByteBuffer packet) {
    if (lengthBytes == 0) {
      return false;
    }
    boolean slices = false;
    long at = 0;
    while (at + lengthBytes < packet.limit()) {
      int header = header(packet, at);
      long length = length(packet, at);
      if (length == 0 || isSlice(header) && mark(header) != 0) {
        return false;
      }
      slices |= isSlice(header);
      at += lengthBytes + length;
    }
    return slices && at == packet.limit();
  }

  private long length(ByteBuffer packet, long at) {
    long length = 0;
    for (int i = 0; i < lengthBytes; i++) {
      length = length << 8 | packet.get((int) at + i) & 0xFF;
    }
    return length;
  }

  private int header(ByteBuffer packet, long at) {
    return packet.get((int) at + lengthBytes) & 0xFF;
  }

  private static boolean isSlice(int header) {
    int type = header & 0x1F;
    return type >= FIRST_SLICE_TYPE && type <= LAST_SLICE_TYPE;
  }

  private static int mark(int header) {
    return header >> 5 & 3;
  }
}
