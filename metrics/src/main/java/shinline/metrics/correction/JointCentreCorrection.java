package shinline.metrics.correction;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.correction.CorrectionTable.Part;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.BodyPoint;

/**
 * Moves landmarks to the joint centres. The model puts hips and shoulders too far forward and
 * ankles too high, in the same way for every athlete seen so far; {@link CorrectionTable} holds how
 * far.
 */
public final class JointCentreCorrection {
  private final CorrectionTable table;

  public JointCentreCorrection(CorrectionTable table) {
    this.table = table;
  }

  /** The corrected track; frames in which a segment was not seen keep its points as they are. */
  public CleanTrack correct(CleanTrack track) {
    int n = track.grid().size();
    double size = size(track);
    Shift hip = new Shift(n);
    Shift rearHip = new Shift(n);
    Shift shoulder = new Shift(n);
    Shift knee = new Shift(n);
    Shift ankle = new Shift(n);
    Shift toe = new Shift(n);
    Shift heel = new Shift(n);
    Shift rearKnee = new Shift(n);
    CleanPath frontHip = track.path(BodyPoint.FRONT_HIP);
    CleanPath otherHip = track.path(BodyPoint.REAR_HIP);
    CleanPath near = track.path(BodyPoint.NEAR_SHOULDER);
    CleanPath far = track.path(BodyPoint.FAR_SHOULDER);
    CleanPath frontKnee = track.path(BodyPoint.FRONT_KNEE);
    CleanPath frontAnkle = track.path(BodyPoint.FRONT_ANKLE);
    SegmentAxis picture = SegmentAxis.PICTURE;
    OptionalDouble[] bends = bends(track);
    for (int i = 0; i < n; i++) {
      toe.add(i, picture, table.at(Part.FRONT_TOE), size);
      heel.add(i, picture, table.at(Part.FRONT_HEEL), size);
      rearKnee.add(i, picture, table.at(Part.REAR_KNEE), size);
      if (frontKnee.seen(i) && frontAnkle.seen(i)) {
        SegmentAxis shank = SegmentAxis.from(frontAnkle.at(i), frontKnee.at(i));
        knee.add(i, shank, table.at(Part.FRONT_KNEE), size);
        ankle.add(i, shank, table.at(Part.FRONT_ANKLE), size);
      }
      Optional<SegmentAxis> seenTrunk = trunk(track, i);
      if (seenTrunk.isPresent()) {
        SegmentAxis trunk = seenTrunk.get();
        shoulder.add(i, trunk, table.at(Part.SHOULDER), size);
        hip.add(i, trunk, table.at(Part.FRONT_HIP), size);
        double bend = bends[i].orElse(0);
        hip.add(i, trunk, table.at(Part.FRONT_HIP_BEND), size * bend);
        rearHip.add(i, trunk, table.at(Part.HIP_BEND), 2 * size * bend);
        // Mid-hip has its own correction; the rear hip moves so that the middle comes out right.
        rearHip.add(i, trunk, table.at(Part.HIP), 2 * size);
        rearHip.x[i] -= hip.x[i];
        rearHip.y[i] -= hip.y[i];
      }
    }
    Map<BodyPoint, CleanPath> moved = new EnumMap<>(BodyPoint.class);
    moved.put(BodyPoint.FRONT_HIP, hip.of(frontHip));
    moved.put(BodyPoint.REAR_HIP, rearHip.of(otherHip));
    moved.put(BodyPoint.NEAR_SHOULDER, shoulder.of(near));
    moved.put(BodyPoint.FAR_SHOULDER, shoulder.of(far));
    moved.put(BodyPoint.FRONT_KNEE, knee.of(frontKnee));
    moved.put(BodyPoint.FRONT_ANKLE, ankle.of(frontAnkle));
    moved.put(BodyPoint.FRONT_TOE, toe.of(track.path(BodyPoint.FRONT_TOE)));
    moved.put(BodyPoint.FRONT_HEEL, heel.of(track.path(BodyPoint.FRONT_HEEL)));
    moved.put(BodyPoint.REAR_KNEE, rearKnee.of(track.path(BodyPoint.REAR_KNEE)));
    return track.with(moved);
  }

  /**
   * How far the front hip is bent, radians; where the knee was not seen, between its neighbours,
   * since a hip must not jump when a knee is lost. Empty in a track that never shows all of it.
   */
  private static OptionalDouble[] bends(CleanTrack track) {
    CleanPath hip = track.path(BodyPoint.FRONT_HIP);
    CleanPath knee = track.path(BodyPoint.FRONT_KNEE);
    OptionalDouble[] bends = new OptionalDouble[track.grid().size()];
    Arrays.fill(bends, OptionalDouble.empty());
    int last = -1;
    for (int i = 0; i < bends.length; i++) {
      Optional<SegmentAxis> trunk = trunk(track, i);
      if (trunk.isEmpty() || !knee.seen(i)) {
        continue;
      }
      double bend = trunk.get().bend(SegmentAxis.from(knee.at(i), hip.at(i)));
      bends[i] = OptionalDouble.of(bend);
      for (int k = last + 1; k < i; k++) {
        double before = last < 0 ? bend : bends[last].orElse(bend);
        double share = last < 0 ? 1 : (double) (k - last) / (i - last);
        bends[k] = OptionalDouble.of(before + share * (bend - before));
      }
      last = i;
    }
    if (last >= 0) {
      Arrays.fill(bends, last + 1, bends.length, bends[last]);
    }
    return bends;
  }

  /** Empty where a hip or a shoulder was not seen. */
  private static Optional<SegmentAxis> trunk(CleanTrack track, int i) {
    CleanPath frontHip = track.path(BodyPoint.FRONT_HIP);
    CleanPath rearHip = track.path(BodyPoint.REAR_HIP);
    CleanPath near = track.path(BodyPoint.NEAR_SHOULDER);
    CleanPath far = track.path(BodyPoint.FAR_SHOULDER);
    return frontHip.seen(i) && rearHip.seen(i) && near.seen(i) && far.seen(i)
        ? Optional.of(
            SegmentAxis.from(frontHip.at(i).middle(rearHip.at(i)), near.at(i).middle(far.at(i))))
        : Optional.empty();
  }

  /** Trunk, front thigh and front shank together, pixels; a part never seen counts as nothing. */
  static double size(CleanTrack track) {
    return track.length(BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE).orElse(0)
        + track.length(BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE).orElse(0)
        + track.trunkLength().orElse(0);
  }

  /** Offsets of one point, one a grid time. */
  private static final class Shift {
    private final double[] x;
    private final double[] y;

    Shift(int n) {
      x = new double[n];
      y = new double[n];
    }

    void add(int i, SegmentAxis up, Offset offset, double size) {
      Point way = up.way(offset);
      x[i] += size * way.x();
      y[i] += size * way.y();
    }

    CleanPath of(CleanPath path) {
      return path.moved(x, y);
    }
  }
}
