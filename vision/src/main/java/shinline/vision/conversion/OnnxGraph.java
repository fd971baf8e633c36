package shinline.vision.conversion;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * An ONNX model under construction; field numbers after the public {@code onnx.proto}. Written as
 * IR version 7 with operator set 13. The same calls give the same bytes.
 */
final class OnnxGraph {
  private static final int IR_VERSION = 7;
  private static final int OPERATOR_SET = 13;

  /** ONNX's numbers for element types. */
  enum ElementType {
    FLOAT32(1),
    INT64(7),
    FLOAT16(10);

    final int number;

    ElementType(int number) {
      this.number = number;
    }
  }

  private final ProtoWriter graph = new ProtoWriter().text(2, "pose");
  private final Set<String> names = new HashSet<>();

  /** Adds a node unless its output is there already; attributes are Integer, String or int[]. */
  void node(String operator, List<String> inputs, String output, Map<String, Object> attributes) {
    if (!names.add(output)) {
      return;
    }
    ProtoWriter node = new ProtoWriter();
    inputs.forEach(input -> node.text(1, input));
    node.text(2, output).text(3, output).text(4, operator);
    // Sorted, since the order of a Map.of changes from run to run.
    new TreeMap<>(attributes).forEach((name, value) -> node.message(5, attribute(name, value)));
    graph.message(1, node);
  }

  private static ProtoWriter attribute(String name, Object value) {
    ProtoWriter attribute = new ProtoWriter().text(1, name);
    if (value instanceof Integer i) {
      return attribute.integer(3, i).integer(20, 2);
    } else if (value instanceof String s) {
      return attribute.text(4, s).integer(20, 3);
    } else if (value instanceof int[] list) {
      for (int i : list) {
        attribute.integer(8, i);
      }
      return attribute.integer(20, 7);
    }
    throw new IllegalArgumentException("Attribute " + name + " has an unsupported type");
  }

  /** Adds a constant unless one of that name is there already; returns its name. */
  String constant(String name, ElementType type, int[] shape, byte[] littleEndian) {
    if (names.add(name)) {
      ProtoWriter tensor = new ProtoWriter();
      for (int size : shape) {
        tensor.integer(1, size);
      }
      graph.message(5, tensor.integer(2, type.number).text(8, name).bytes(9, littleEndian));
    }
    return name;
  }

  /** Adds a one-dimensional constant of whole numbers. */
  String integers(String name, int... values) {
    ByteBuffer raw = ByteBuffer.allocate(8 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    for (int value : values) {
      raw.putLong(value);
    }
    return constant(name, ElementType.INT64, new int[] {values.length}, raw.array());
  }

  /** Adds a scalar constant. */
  String scalar(String name, float value) {
    ByteBuffer raw = ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putFloat(value);
    return constant(name, ElementType.FLOAT32, new int[0], raw.array());
  }

  /** Adds a kernel that leaves each of so many channels as it is. */
  String ones(int channels) {
    ByteBuffer raw = ByteBuffer.allocate(4 * channels).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < channels; i++) {
      raw.putFloat(1);
    }
    int[] shape = {channels, 1, 1, 1};
    return constant("ones" + channels, ElementType.FLOAT32, shape, raw.array());
  }

  void input(String name, int[] shape) {
    graph.message(11, floatValue(name, shape));
  }

  void output(String name, int[] shape) {
    graph.message(12, floatValue(name, shape));
  }

  private static ProtoWriter floatValue(String name, int[] shape) {
    ProtoWriter dimensions = new ProtoWriter();
    for (int size : shape) {
      dimensions.message(1, new ProtoWriter().integer(1, size));
    }
    ProtoWriter tensor =
        new ProtoWriter().integer(1, ElementType.FLOAT32.number).message(2, dimensions);
    return new ProtoWriter().text(1, name).message(2, new ProtoWriter().message(1, tensor));
  }

  /** The finished model. */
  byte[] toByteArray() {
    ProtoWriter operatorSet = new ProtoWriter().text(1, "").integer(2, OPERATOR_SET);
    return new ProtoWriter()
        .integer(1, IR_VERSION)
        .text(2, "shinline")
        .message(7, graph)
        .message(8, operatorSet)
        .toByteArray();
  }
}
