package shinline.vision.conversion;

import java.util.List;

/** Unpacks weights stored as compressed sparse rows on their last dimension. */
final class SparseWeights {
  private SparseWeights() {}

  /** The tensor's values with the zeros put back, in the tensor's own order and number type. */
  static byte[] dense(TfliteModel.Tensor tensor) {
    FlatTable sparsity = tensor.sparsity().orElseThrow();
    List<FlatTable> dimensions = sparsity.tables(2);
    int last = tensor.shape().length - 1;
    int[] order = sparsity.int32s(0);
    for (int i = 0; i < order.length; i++) {
      boolean sparse = i < dimensions.size() && dimensions.get(i).int8(0, 0) == 1;
      if (order[i] != i || dimensions.size() != last + 1 || sparse != (i == last)) {
        throw new IllegalArgumentException(
            "Weights '" + tensor.name() + "' are not sparse on their last dimension alone");
      }
    }
    int[] rowStarts = indices(dimensions.get(last), 2);
    int[] columns = indices(dimensions.get(last), 4);
    int width = tensor.type().bytes;
    int rowLength = tensor.shape()[last];
    byte[] dense = new byte[(rowStarts.length - 1) * rowLength * width];
    for (int row = 0; row + 1 < rowStarts.length; row++) {
      for (int k = rowStarts[row]; k < rowStarts[row + 1]; k++) {
        int target = (row * rowLength + columns[k]) * width;
        System.arraycopy(tensor.data(), k * width, dense, target, width);
      }
    }
    return dense;
  }

  /**
   * An index vector is a union: its kind in one field (32, 16 or 8 bits), the table in the next.
   */
  private static int[] indices(FlatTable dimension, int kindField) {
    int width =
        switch (dimension.int8(kindField, 0)) {
          case 1 -> 4;
          case 2 -> 2;
          case 3 -> 1;
          default -> throw new IllegalArgumentException("Unknown kind of sparse index");
        };
    return dimension.table(kindField + 1).orElseThrow().integers(0, width);
  }
}
