package shinline.vision.pose;

import java.util.ArrayList;
import java.util.List;

/**
 * The fixed points the detector's boxes are measured from: for each layer's stride a grid of cell
 * centres, two anchors a cell and layer, layers of equal stride together.
 */
final class DetectorAnchors {
  static final int INPUT_SIDE = 224;
  private static final int[] STRIDES = {8, 16, 32};
  private static final int[] ANCHORS_PER_CELL = {2, 2, 6};

  /** One anchor centre, 0…1 across and down the detector's input. */
  record Anchor(double u, double v) {}

  private DetectorAnchors() {}

  /** All 2254 anchors, in the order of the model's rows. */
  static Anchor[] all() {
    List<Anchor> anchors = new ArrayList<>();
    for (int layer = 0; layer < STRIDES.length; layer++) {
      int cells = INPUT_SIDE / STRIDES[layer];
      for (int row = 0; row < cells; row++) {
        for (int column = 0; column < cells; column++) {
          for (int i = 0; i < ANCHORS_PER_CELL[layer]; i++) {
            anchors.add(new Anchor((column + 0.5) / cells, (row + 0.5) / cells));
          }
        }
      }
    }
    return anchors.toArray(new Anchor[0]);
  }
}
