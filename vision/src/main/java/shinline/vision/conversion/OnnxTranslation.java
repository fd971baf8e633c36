package shinline.vision.conversion;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shinline.vision.conversion.OnnxGraph.ElementType;
import shinline.vision.conversion.TfliteModel.NumberType;
import shinline.vision.conversion.TfliteModel.Operator;
import shinline.vision.conversion.TfliteModel.Tensor;

/**
 * Translates the TFLite operators of the pose models to ONNX.
 *
 * <p>Pictures inside the graph go from NHWC to NCHW, the order ONNX Runtime computes in; the input
 * is NCHW as well, while the outputs keep TFLite's shapes. Only what the asked-for outputs need is
 * written: leaving segmentation out more than halves the time of an inference. An operator or an
 * option these models do not use is refused, not guessed.
 */
final class OnnxTranslation {
  private static final int ADD = 0;
  private static final int CONCATENATION = 2;
  private static final int CONV_2D = 3;
  private static final int DEPTHWISE_CONV_2D = 4;
  private static final int DEPTH_TO_SPACE = 5;
  private static final int DEQUANTIZE = 6;
  private static final int LOGISTIC = 14;
  private static final int MAX_POOL_2D = 17;
  private static final int RESHAPE = 22;
  private static final int RESIZE_BILINEAR = 23;
  private static final int PAD = 34;
  private static final int DENSIFY = 124;

  private static final int[] TO_NCHW = {0, 3, 1, 2};
  private static final int[] TO_NHWC = {0, 2, 3, 1};
  private static final int[] DEPTHWISE_TO_ONNX = {3, 0, 1, 2};

  /** TFLite's numbers for a fused activation and a padding scheme. */
  private static final int NO_ACTIVATION = 0;

  private static final int RELU6 = 3;
  private static final int SAME = 0;

  private final TfliteModel model;
  private final OnnxGraph graph = new OnnxGraph();

  /** Stored weights by tensor index, dense; the type may be 16 bits wide. */
  private final Map<Integer, Tensor> weights = new HashMap<>();

  private OnnxTranslation(TfliteModel model) {
    this.model = model;
    for (int i = 0; i < model.tensors().size(); i++) {
      if (model.tensors().get(i).data().length > 0) {
        weights.put(i, model.tensors().get(i));
      }
    }
  }

  /**
   * Translates a model.
   *
   * @param outputNames the outputs to keep, in the order the ONNX model shall have them
   * @return the bytes of an ONNX file
   */
  static byte[] translate(TfliteModel model, List<String> outputNames) {
    return new OnnxTranslation(model).run(outputNames);
  }

  private byte[] run(List<String> outputNames) {
    List<Integer> outputs = new ArrayList<>();
    for (String name : outputNames) {
      outputs.add(outputIndex(name));
    }
    graph.input(name(model.input()), AxisOrder.permuted(shape(model.input()), TO_NCHW));
    for (Operator operator : needed(outputs)) {
      translate(operator);
    }
    for (int i = 0; i < outputNames.size(); i++) {
      int tensor = outputs.get(i);
      graph.node("Identity", List.of(inTfliteOrder(tensor)), outputNames.get(i), Map.of());
      graph.output(outputNames.get(i), shape(tensor));
    }
    return graph.toByteArray();
  }

  private int outputIndex(String name) {
    for (int index : model.outputs()) {
      if (model.tensors().get(index).name().equals(name)) {
        return index;
      }
    }
    throw new IllegalArgumentException("The model has no output '" + name + "'");
  }

  /** The operators on the way to the given tensors, in running order. */
  private List<Operator> needed(List<Integer> outputs) {
    Set<Integer> wanted = new HashSet<>(outputs);
    List<Operator> kept = new ArrayList<>();
    for (int i = model.operators().size() - 1; i >= 0; i--) {
      Operator operator = model.operators().get(i);
      if (wanted.contains(operator.outputs()[0])) {
        kept.add(0, operator);
        for (int input : operator.inputs()) {
          wanted.add(input);
        }
      }
    }
    return kept;
  }

  private void translate(Operator op) {
    switch (op.code()) {
      case DENSIFY -> {
        Tensor packed = weight(op.inputs()[0]);
        keepWeight(op, packed, SparseWeights.dense(packed));
      }
      // Stays 16 bits wide in the file; a Cast widens it when the model is loaded.
      case DEQUANTIZE -> keepWeight(op, weight(op.inputs()[0]), weight(op.inputs()[0]).data());
      case CONV_2D -> convolution(op, TO_NCHW, 1, 3);
      case DEPTHWISE_CONV_2D ->
          convolution(op, DEPTHWISE_TO_ONNX, channels(shape(op.outputs()[0])), 4);
      case ADD -> activated(op, "Add", twoComputed(op), Map.of(), choice(op, 0));
      case CONCATENATION -> concatenation(op);
      case DEPTH_TO_SPACE ->
          plain(op, "DepthToSpace", Map.of("blocksize", number(op, 0), "mode", "DCR"));
      case LOGISTIC -> plain(op, "Sigmoid", Map.of());
      case MAX_POOL_2D -> maxPool(op);
      case RESHAPE -> reshape(op);
      case RESIZE_BILINEAR -> resize(op);
      case PAD -> pad(op);
      default ->
          throw new IllegalArgumentException("TFLite operator " + op.code() + " is not supported");
    }
  }

  private void keepWeight(Operator op, Tensor source, byte[] dense) {
    int output = op.outputs()[0];
    Tensor named = model.tensors().get(output);
    weights.put(
        output, new Tensor(named.name(), named.shape(), source.type(), dense, source.sparsity()));
  }

  private void convolution(Operator op, int[] weightOrder, int group, int activationField) {
    Tensor kernel = weight(op.inputs()[1]);
    int[] kernelShape = AxisOrder.permuted(kernel.shape(), weightOrder);
    int[] strides = {number(op, 2), number(op, 1)};
    int dilationField = activationField + 1;
    if (dilated(op, dilationField) || dilated(op, dilationField + 1)) {
      throw new IllegalArgumentException("Dilated convolutions are not supported");
    }
    int[] size = {kernelShape[2], kernelShape[3]};
    List<String> inputs =
        List.of(
            name(op.inputs()[0]),
            floatWeight(kernel, kernelShape, weightOrder),
            floatWeight(weight(op.inputs()[2]), weight(op.inputs()[2]).shape(), new int[] {0}));
    Map<String, Object> attributes =
        Map.of(
            "group",
            group,
            "kernel_shape",
            size,
            "strides",
            strides,
            "pads",
            pads(op, shape(op.inputs()[0]), size, strides));
    activated(op, "Conv", inputs, attributes, choice(op, activationField));
  }

  /**
   * TFLite's padding as ONNX's {top, left, bottom, right}. With SAME the output has ⌈input /
   * stride⌉ cells and an odd cell of padding goes to the bottom and right.
   */
  private int[] pads(Operator op, int[] nhwc, int[] kernel, int[] strides) {
    int[] pads = new int[4];
    if (choice(op, 0) == SAME) {
      for (int axis = 0; axis < 2; axis++) {
        int in = nhwc[1 + axis];
        int cells = (in + strides[axis] - 1) / strides[axis];
        int total = Math.max(0, (cells - 1) * strides[axis] + kernel[axis] - in);
        pads[axis] = total / 2;
        pads[2 + axis] = total - total / 2;
      }
    }
    return pads;
  }

  private void maxPool(Operator op) {
    int[] strides = {number(op, 2), number(op, 1)};
    int[] size = {number(op, 4), number(op, 3)};
    int[] pads = pads(op, shape(op.inputs()[0]), size, strides);
    activated(
        op,
        "MaxPool",
        List.of(name(op.inputs()[0])),
        Map.of("kernel_shape", size, "strides", strides, "pads", pads),
        choice(op, 5));
  }

  private void concatenation(Operator op) {
    int axis = number(op, 0);
    int rank = shape(op.outputs()[0]).length;
    int tfliteAxis = axis < 0 ? axis + rank : axis;
    // The order that leads back to NHWC says where each NHWC axis stands in NCHW.
    int onnxAxis = rank == 4 ? TO_NHWC[tfliteAxis] : tfliteAxis;
    List<String> inputs = new ArrayList<>();
    for (int input : op.inputs()) {
      inputs.add(name(input));
    }
    activated(op, "Concat", inputs, Map.of("axis", onnxAxis), choice(op, 1));
  }

  private void reshape(Operator op) {
    int output = op.outputs()[0];
    int[] shape = shape(output);
    if (shape.length == 4) {
      throw new IllegalArgumentException("A reshape to a picture is not supported");
    }
    String sizes = graph.integers(name(output) + "/shape", shape);
    graph.node("Reshape", List.of(inTfliteOrder(op.inputs()[0]), sizes), name(output), Map.of());
  }

  private void resize(Operator op) {
    if (choice(op, 2) != 0 || choice(op, 3) == 0) {
      throw new IllegalArgumentException("Only half-pixel centres are supported in a resize");
    }
    int[] shape = AxisOrder.permuted(shape(op.outputs()[0]), TO_NCHW);
    String sizes = graph.integers(name(op.outputs()[0]) + "/sizes", shape);
    graph.node(
        "Resize",
        List.of(name(op.inputs()[0]), "", "", sizes),
        name(op.outputs()[0]),
        Map.of("mode", "linear", "coordinate_transformation_mode", "half_pixel"));
  }

  private void pad(Operator op) {
    ByteBuffer raw = ByteBuffer.wrap(weight(op.inputs()[1]).data()).order(ByteOrder.LITTLE_ENDIAN);
    int[] pads = new int[8];
    for (int i = 0; i < 4; i++) {
      pads[i] = raw.getInt(8 * TO_NCHW[i]);
      pads[4 + i] = raw.getInt(8 * TO_NCHW[i] + 4);
    }
    String amounts = graph.integers(name(op.outputs()[0]) + "/pads", pads);
    graph.node("Pad", List.of(name(op.inputs()[0]), amounts), name(op.outputs()[0]), Map.of());
  }

  private void plain(Operator op, String onnxOperator, Map<String, Object> attributes) {
    graph.node(onnxOperator, List.of(name(op.inputs()[0])), name(op.outputs()[0]), attributes);
  }

  /** Adds a node and, where the TFLite operator fuses one, its activation behind it. */
  private void activated(
      Operator op,
      String onnxOperator,
      List<String> inputs,
      Map<String, Object> attributes,
      int activation) {
    String output = name(op.outputs()[0]);
    if (activation == NO_ACTIVATION) {
      graph.node(onnxOperator, inputs, output, attributes);
    } else if (activation == RELU6) {
      String linear = output + "/linear";
      graph.node(onnxOperator, inputs, linear, attributes);
      String last = onnxOperator.equals("Conv") ? linear : unchanged(linear, op);
      List<String> clip = List.of(last, graph.scalar("zero", 0), graph.scalar("six", 6));
      graph.node("Clip", clip, output, Map.of());
    } else {
      throw new IllegalArgumentException("Activation " + activation + " is not supported");
    }
  }

  /**
   * A picture's values as they are, through a convolution of one weight a channel: ONNX Runtime
   * clips in the same pass as it convolves, but anywhere else not without rearranging the whole
   * picture before and after, which took 3 % of the larger model's time.
   */
  private String unchanged(String value, Operator op) {
    int[] nhwc = shape(op.outputs()[0]);
    if (nhwc.length != 4) {
      return value;
    }
    int channels = channels(nhwc);
    String same = value + "/same";
    graph.node(
        "Conv",
        List.of(value, graph.ones(channels)),
        same,
        Map.of("group", channels, "kernel_shape", new int[] {1, 1}));
    return same;
  }

  private List<String> twoComputed(Operator op) {
    if (weights.containsKey(op.inputs()[0]) || weights.containsKey(op.inputs()[1])) {
      throw new IllegalArgumentException("Adding a stored constant is not supported");
    }
    return List.of(name(op.inputs()[0]), name(op.inputs()[1]));
  }

  /** Writes a weight with its axes reordered; gives the name of its 32-bit value. */
  private String floatWeight(Tensor weight, int[] onnxShape, int[] order) {
    byte[] data = AxisOrder.reorder(weight, order);
    if (weight.type() == NumberType.FLOAT32) {
      return graph.constant(weight.name(), ElementType.FLOAT32, onnxShape, data);
    }
    String wide = weight.name() + "/float32";
    graph.constant(weight.name(), ElementType.FLOAT16, onnxShape, data);
    graph.node("Cast", List.of(weight.name()), wide, Map.of("to", ElementType.FLOAT32.number));
    return wide;
  }

  /** The name of a tensor's value in NHWC where it is a picture, with a Transpose if need be. */
  private String inTfliteOrder(int tensor) {
    if (shape(tensor).length != 4) {
      return name(tensor);
    }
    String turned = name(tensor) + "/nhwc";
    graph.node("Transpose", List.of(name(tensor)), turned, Map.of("perm", TO_NHWC));
    return turned;
  }

  private Tensor weight(int tensor) {
    Tensor weight = weights.get(tensor);
    if (weight == null) {
      throw new IllegalArgumentException("Tensor '" + name(tensor) + "' is not a stored weight");
    }
    return weight;
  }

  private int[] shape(int tensor) {
    return model.tensors().get(tensor).shape();
  }

  private static int channels(int[] nhwc) {
    return nhwc[3];
  }

  /** Name of a computed value; a prefix keeps the outputs' own names free for the outputs. */
  private String name(int tensor) {
    return "t" + tensor + ":" + model.tensors().get(tensor).name();
  }

  /** An option that is an enum or a truth value: one byte wide, 0 when absent. */
  private static int choice(Operator op, int field) {
    return op.options().map(table -> table.int8(field, 0)).orElse(0);
  }

  /** An option that is a number, 0 when absent. */
  private static int number(Operator op, int field) {
    return op.options().map(table -> table.int32(field, 0)).orElse(0);
  }

  private static boolean dilated(Operator op, int field) {
    return op.options().map(table -> table.int32(field, 1) != 1).orElse(false);
  }
}
