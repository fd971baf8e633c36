package shinline.vision.pose;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.hipparchus.stat.descriptive.rank.Median;

/** How long one person's segments were in the last believed looks; the middle of them. */
final class OwnLengths {
  /** Three seconds of looks: a person who walks nearer to the camera grows. */
  private static final int KEPT = 45;

  /** Fewer looks do not tell. */
  private static final int FEWEST = 6;

  private final Map<BodySegment, Deque<Double>> lengths = new EnumMap<>(BodySegment.class);

  OwnLengths() {
    for (BodySegment segment : BodySegment.values()) {
      lengths.put(segment, new ArrayDeque<>());
    }
  }

  /** Adds a look that is believed: of each pair the longer one, which is less foreshortened. */
  void add(BodyPose pose) {
    for (BodySegment segment : BodySegment.values()) {
      Deque<Double> of = of(segment);
      of.addLast(
          Math.max(pose.length(segment, BodySide.LEFT), pose.length(segment, BodySide.RIGHT)));
      if (of.size() > KEPT) {
        of.removeFirst();
      }
    }
  }

  /** The middle length, pixels; empty until there are enough looks. */
  OptionalDouble px(BodySegment segment) {
    Deque<Double> of = of(segment);
    if (of.size() < FEWEST) {
      return OptionalDouble.empty();
    }
    // Of an even number the shortest, the most foreshortened, is left out: the middle is then the
    // length of one look, and the pose gate needs no length in between.
    double[] px =
        of.stream().mapToDouble(Double::doubleValue).sorted().skip(1 - of.size() % 2).toArray();
    return OptionalDouble.of(new Median().evaluate(px));
  }

  /** Standing height by the legs, pixels; empty until there are enough looks. */
  OptionalDouble staturePx() {
    OptionalDouble thigh = px(BodySegment.THIGH);
    OptionalDouble shank = px(BodySegment.SHANK);
    return thigh.isEmpty() || shank.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            (thigh.getAsDouble() + shank.getAsDouble())
                / (BodySegment.THIGH.ofStature() + BodySegment.SHANK.ofStature()));
  }

  /** Forgets all. */
  void clear() {
    lengths.values().forEach(Deque::clear);
  }

  private Deque<Double> of(BodySegment segment) {
    return Objects.requireNonNull(lengths.get(segment));
  }
}
