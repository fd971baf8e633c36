package shinline.vision.conversion;

import shinline.vision.conversion.TfliteModel.Tensor;

/** Reorders the axes of stored weights: result axis i is source axis {@code order[i]}. */
final class AxisOrder {
  private AxisOrder() {}

  static byte[] reorder(Tensor tensor, int[] order) {
    int[] shape = tensor.shape();
    int width = tensor.type().bytes;
    int[] strides = new int[shape.length];
    int stride = width;
    for (int axis = shape.length - 1; axis >= 0; axis--) {
      strides[axis] = stride;
      stride *= shape[axis];
    }
    byte[] result = new byte[stride];
    int[] index = new int[shape.length];
    for (int target = 0; target < result.length; target += width) {
      int source = 0;
      for (int axis = 0; axis < order.length; axis++) {
        source += index[axis] * strides[order[axis]];
      }
      System.arraycopy(tensor.data(), source, result, target, width);
      for (int axis = order.length - 1; axis >= 0; axis--) {
        if (++index[axis] < shape[order[axis]]) {
          break;
        }
        index[axis] = 0;
      }
    }
    return result;
  }

  static int[] permuted(int[] shape, int[] order) {
    int[] result = new int[order.length];
    for (int i = 0; i < order.length; i++) {
      result[i] = shape[order[i]];
    }
    return result;
  }
}
