package shinline.vision.clip;

/**
 * Reads from a packet of an H.264 film whether other pictures are decoded from its own: each slice
 * says so in the two bits after the first of its header (nal_ref_idc, ITU-T H.264 7.4.1).
 */
final class ReferenceMark {
  private static final int FIRST_SLICE_TYPE = 1;
  private static final int LAST_SLICE_TYPE = 5;

  /** Bytes that tell a unit's length; 0 in a stream whose units begin with a start code. */
  private final int lengthBytes;

  /**
   * @param extradata the film's decoder configuration: MP4's begins with version 1 and tells the
   *     size of a length in its fifth byte
   */
  ReferenceMark(byte[] extradata) {
    lengthBytes = extradata.length > 4 && extradata[0] == 1 ? (extradata[4] & 3) + 1 : 0;
  }

  /** Whether it is sure that no other picture is decoded from this one. */
  boolean unreferenced(byte[] packet) {
    if (lengthBytes == 0) {
      return false;
    }
    long at = 0;
    while (at + lengthBytes < packet.length) {
      long length = 0;
      for (int i = 0; i < lengthBytes; i++) {
        length = length << 8 | packet[(int) at + i] & 0xFF;
      }
      int header = packet[(int) at + lengthBytes] & 0xFF;
      int type = header & 0x1F;
      if (type >= FIRST_SLICE_TYPE && type <= LAST_SLICE_TYPE) {
        return (header >> 5 & 3) == 0;
      }
      at += lengthBytes + length;
    }
    return false;
  }
}
