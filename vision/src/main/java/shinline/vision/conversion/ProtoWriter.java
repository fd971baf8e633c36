package shinline.vision.conversion;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Writes one Protocol Buffers message: varints and length-delimited fields. */
final class ProtoWriter {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private void varint(long value) {
    long rest = value;
    while ((rest & ~0x7FL) != 0) {
      out.write((int) (rest & 0x7F) | 0x80);
      rest >>>= 7;
    }
    out.write((int) rest);
  }

  ProtoWriter integer(int field, long value) {
    varint((long) field << 3);
    varint(value);
    return this;
  }

  ProtoWriter bytes(int field, byte[] value) {
    varint((long) field << 3 | 2);
    varint(value.length);
    out.writeBytes(value);
    return this;
  }

  ProtoWriter text(int field, String value) {
    return bytes(field, value.getBytes(StandardCharsets.UTF_8));
  }

  ProtoWriter message(int field, ProtoWriter value) {
    return bytes(field, value.toByteArray());
  }

  byte[] toByteArray() {
    return out.toByteArray();
  }
}
