package shinline.vision.conversion;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A read-only view of one FlatBuffers table. Layout after the FlatBuffers "internals" document: a
 * table starts with a signed offset back to its vtable, which lists each field's offset, 0 when
 * absent.
 *
 * @param data the whole file, little-endian
 * @param position byte offset of the table
 */
record FlatTable(ByteBuffer data, int position) {

  /** The root table of a file. */
  static FlatTable root(ByteBuffer data) {
    return new FlatTable(data, data.getInt(0));
  }

  /** Byte offset of a field's value, 0 when the field is absent. */
  private int offset(int field) {
    int vtable = position - data.getInt(position);
    int slot = 4 + 2 * field;
    int size = Short.toUnsignedInt(data.getShort(vtable));
    int relative = slot < size ? Short.toUnsignedInt(data.getShort(vtable + slot)) : 0;
    return relative == 0 ? 0 : position + relative;
  }

  private int follow(int at) {
    return at + data.getInt(at);
  }

  int int32(int field, int whenAbsent) {
    int at = offset(field);
    return at == 0 ? whenAbsent : data.getInt(at);
  }

  int int8(int field, int whenAbsent) {
    int at = offset(field);
    return at == 0 ? whenAbsent : data.get(at);
  }

  String text(int field) {
    return new String(bytes(field), StandardCharsets.UTF_8);
  }

  Optional<FlatTable> table(int field) {
    int at = offset(field);
    return at == 0 ? Optional.empty() : Optional.of(new FlatTable(data, follow(at)));
  }

  List<FlatTable> tables(int field) {
    List<FlatTable> tables = new ArrayList<>();
    int at = offset(field);
    if (at != 0) {
      int vector = follow(at);
      for (int i = 0; i < data.getInt(vector); i++) {
        tables.add(new FlatTable(data, follow(vector + 4 + 4 * i)));
      }
    }
    return tables;
  }

  /** The raw bytes of a vector of single bytes (or of a string); empty when absent. */
  byte[] bytes(int field) {
    return vector(field, 1);
  }

  int[] int32s(int field) {
    return integers(field, Integer.BYTES);
  }

  /** A vector of integers of the given width in bytes, read as unsigned when below four. */
  int[] integers(int field, int width) {
    ByteBuffer raw = ByteBuffer.wrap(vector(field, width)).order(data.order());
    int[] values = new int[raw.capacity() / width];
    for (int i = 0; i < values.length; i++) {
      values[i] =
          switch (width) {
            case 1 -> Byte.toUnsignedInt(raw.get(i));
            case 2 -> Short.toUnsignedInt(raw.getShort(2 * i));
            default -> raw.getInt(4 * i);
          };
    }
    return values;
  }

  private byte[] vector(int field, int width) {
    int at = offset(field);
    if (at == 0) {
      return new byte[0];
    }
    int vector = follow(at);
    byte[] bytes = new byte[data.getInt(vector) * width];
    data.get(vector + 4, bytes);
    return bytes;
  }
}
