package shinline.vision.conversion;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one graph of a TFLite file. Field numbers after TensorFlow Lite's public {@code schema.fbs},
 * version 3.
 *
 * @param tensors all tensors, in file order; operators refer to them by index
 * @param operators in an order in which they can be run
 * @param input index of the only input tensor
 * @param outputs indices of the output tensors
 */
record TfliteModel(List<Tensor> tensors, List<Operator> operators, int input, int[] outputs) {

  /** Kinds of number a weight is stored as. */
  enum NumberType {
    FLOAT32(4),
    FLOAT16(2),
    INT32(4);

    final int bytes;

    NumberType(int bytes) {
      this.bytes = bytes;
    }
  }

  /**
   * @param shape dimensions, NHWC when there are four
   * @param data stored values; empty for what the graph computes
   * @param sparsity how {@code data} is packed when it is not dense
   */
  record Tensor(
      String name, int[] shape, NumberType type, byte[] data, Optional<FlatTable> sparsity) {}

  /**
   * @param code builtin operator number
   * @param options the operator's own option table, if it has one
   */
  record Operator(int code, int[] inputs, int[] outputs, Optional<FlatTable> options) {}

  static TfliteModel read(byte[] file) {
    FlatTable model = FlatTable.root(ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN));
    List<FlatTable> codes = model.tables(1);
    List<FlatTable> buffers = model.tables(4);
    FlatTable graph = model.tables(2).get(0);

    List<Tensor> tensors = new ArrayList<>();
    for (FlatTable t : graph.tables(0)) {
      byte[] data = buffers.get(t.int32(2, 0)).bytes(0);
      NumberType type = NumberType.values()[t.int8(1, 0)];
      tensors.add(new Tensor(t.text(3), t.int32s(0), type, data, t.table(6)));
    }
    List<Operator> operators = new ArrayList<>();
    for (FlatTable o : graph.tables(3)) {
      FlatTable code = codes.get(o.int32(0, 0));
      // Numbers below 127 stand in the older byte field, larger ones in the newer; take either.
      int number = Math.max(code.int8(0, 0), code.int32(3, 0));
      operators.add(new Operator(number, o.int32s(1), o.int32s(2), o.table(4)));
    }
    return new TfliteModel(tensors, operators, graph.int32s(1)[0], graph.int32s(2));
  }
}
