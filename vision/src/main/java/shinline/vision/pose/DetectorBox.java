package shinline.vision.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One box of the detector before it is placed in the frame; everything 0…1 over the detector's
 * input.
 *
 * @param values left, top, right, bottom, then x and y of mid-hip and of the scale point
 */
record DetectorBox(double[] values, double score) {
  static final int VALUES = 8;

  /** Boxes that share more than this part of their union show one person. */
  private static final double SAME_PERSON_OVERLAP = 0.3;

  /**
   * Weighted non-maximum suppression: boxes of one person become their mean, weighted by score,
   * under the best one's score. Best first.
   */
  static List<DetectorBox> onePerPerson(List<DetectorBox> boxes) {
    List<DetectorBox> left = new ArrayList<>(boxes);
    left.sort(Comparator.comparingDouble(DetectorBox::score).reversed());
    List<DetectorBox> people = new ArrayList<>();
    while (!left.isEmpty()) {
      DetectorBox best = left.get(0);
      List<DetectorBox> same = new ArrayList<>();
      left.removeIf(
          box -> (box == best || overlap(best, box) > SAME_PERSON_OVERLAP) && same.add(box));
      people.add(mean(same, best.score()));
    }
    return people;
  }

  private static DetectorBox mean(List<DetectorBox> boxes, double score) {
    double[] mean = new double[VALUES];
    double total = boxes.stream().mapToDouble(DetectorBox::score).sum();
    for (DetectorBox box : boxes) {
      for (int i = 0; i < VALUES; i++) {
        mean[i] += box.values[i] * box.score / total;
      }
    }
    return new DetectorBox(mean, score);
  }

  /** Shared area over the area of both together. */
  private static double overlap(DetectorBox a, DetectorBox b) {
    double width = Math.min(a.values[2], b.values[2]) - Math.max(a.values[0], b.values[0]);
    double height = Math.min(a.values[3], b.values[3]) - Math.max(a.values[1], b.values[1]);
    double shared = Math.max(0, width) * Math.max(0, height);
    return shared / (a.area() + b.area() - shared);
  }

  private double area() {
    return (values[2] - values[0]) * (values[3] - values[1]);
  }
}
