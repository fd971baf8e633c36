package shinline.metrics.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.correction.CorrectionTable.Part;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.PolynomialFit;
import shinline.metrics.track.BodyPoint;

/**
 * Fits {@link CorrectionTable} to clips whose joint centres are known: least squares over every
 * frame, each clip with the same weight. Constant offsets are means; those of the hips grow with
 * the bend of the hip and are lines through them.
 *
 * <p>How far the toe lies ahead is not fitted but kept as it is: it was set on the distance of knee
 * and toe in the side plane, which the toe's place in the picture, on a foot that turns out, does
 * not tell.
 */
public final class OffsetFit {

  /** What each clip showed of each part, frame by frame. */
  private final List<Map<Part, List<Shown>>> clips = new ArrayList<>();

  private final double toeAhead;

  /** A landmark's way to its joint centre, at a bend of the hip. */
  private record Shown(double bendRad, Offset offset) {}

  /**
   * @param kept calibration that tells what is not fitted
   */
  public OffsetFit(Calibration kept) {
    toeAhead = kept.value(CalibrationKey.OFFSET_FRONT_TOE_AHEAD);
  }

  /**
   * @param landmarks cleaned and square, not corrected
   * @param centres the same frames' true joint centres on the same grid
   * @return this
   */
  public OffsetFit add(CleanTrack landmarks, CleanTrack centres) {
    Map<Part, List<Shown>> shown = new EnumMap<>(Part.class);
    double size = JointCentreCorrection.size(landmarks);
    for (int i = 0; size > 0 && i < landmarks.grid().size(); i++) {
      new Instant(landmarks, centres, i, size, shown).add();
    }
    clips.add(shown);
    return this;
  }

  /**
   * The offsets that bring the clips' landmarks nearest to their joint centres.
   *
   * @throws IllegalStateException when no clip showed one of the points
   */
  public CorrectionTable table() {
    Map<Part, Offset> table = new EnumMap<>(Part.class);
    line(table, Part.HIP, Part.HIP_BEND);
    line(table, Part.FRONT_HIP, Part.FRONT_HIP_BEND);
    for (Part part : Part.values()) {
      if (!table.containsKey(part)) {
        table.put(part, fitted(part, 0).get(0));
      }
    }
    table.computeIfPresent(Part.FRONT_TOE, (part, toe) -> new Offset(toe.along(), toeAhead));
    return new CorrectionTable(table);
  }

  private void line(Map<Part, Offset> table, Part part, Part bend) {
    List<Offset> line = fitted(part, 1);
    table.put(part, line.get(0));
    table.put(bend, line.get(1));
  }

  /** Coefficients of the polynomial of the bend; a clip counts once, however long it is. */
  private List<Offset> fitted(Part part, int degree) {
    List<Shown> all = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (Map<Part, List<Shown>> clip : clips) {
      List<Shown> of = clip.getOrDefault(part, List.of());
      all.addAll(of);
      weights.addAll(Collections.nCopies(of.size(), 1.0 / of.size()));
    }
    if (all.isEmpty()) {
      throw new IllegalStateException("no clip showed " + part);
    }
    double[] bends = numbers(all, Shown::bendRad);
    // A hip that stays as it is tells no slope.
    int told = Arrays.stream(bends).distinct().limit(2).count() > 1 ? degree : 0;
    PolynomialFit fit =
        new PolynomialFit(bends, weights.stream().mapToDouble(w -> w).toArray(), told);
    double[] along = fit.through(numbers(all, s -> s.offset().along()));
    double[] ahead = fit.through(numbers(all, s -> s.offset().ahead()));
    return IntStream.rangeClosed(0, degree)
        .mapToObj(k -> k > told ? new Offset(0, 0) : new Offset(along[k], ahead[k]))
        .toList();
  }

  private static double[] numbers(List<Shown> all, ToDoubleFunction<Shown> of) {
    return all.stream().mapToDouble(of).toArray();
  }

  /** What one frame shows. */
  private record Instant(
      CleanTrack landmarks, CleanTrack centres, int i, double size, Map<Part, List<Shown>> shown) {

    void add() {
      take(Part.FRONT_TOE, SegmentAxis.PICTURE, BodyPoint.FRONT_TOE);
      take(Part.FRONT_HEEL, SegmentAxis.PICTURE, BodyPoint.FRONT_HEEL);
      take(Part.REAR_KNEE, SegmentAxis.PICTURE, BodyPoint.REAR_KNEE);
      if (seen(BodyPoint.FRONT_KNEE, BodyPoint.FRONT_ANKLE)) {
        SegmentAxis shank = SegmentAxis.from(at(BodyPoint.FRONT_ANKLE), at(BodyPoint.FRONT_KNEE));
        take(Part.FRONT_KNEE, shank, BodyPoint.FRONT_KNEE);
        take(Part.FRONT_ANKLE, shank, BodyPoint.FRONT_ANKLE);
      }
      if (seen(
          BodyPoint.FRONT_HIP,
          BodyPoint.REAR_HIP,
          BodyPoint.NEAR_SHOULDER,
          BodyPoint.FAR_SHOULDER)) {
        SegmentAxis trunk =
            SegmentAxis.from(
                middle(landmarks, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP),
                middle(landmarks, BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER));
        takeMiddle(Part.SHOULDER, trunk, BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER, 0);
        if (seen(BodyPoint.FRONT_KNEE)) {
          double bend =
              trunk.bend(SegmentAxis.from(at(BodyPoint.FRONT_KNEE), at(BodyPoint.FRONT_HIP)));
          take(Part.FRONT_HIP, trunk, BodyPoint.FRONT_HIP, bend);
          takeMiddle(Part.HIP, trunk, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP, bend);
        }
      }
    }

    private boolean seen(BodyPoint... points) {
      for (BodyPoint point : points) {
        if (!landmarks.path(point).seen(i) || !centres.path(point).seen(i)) {
          return false;
        }
      }
      return true;
    }

    private Point at(BodyPoint point) {
      return landmarks.path(point).at(i);
    }

    private Point middle(CleanTrack track, BodyPoint a, BodyPoint b) {
      return track.path(a).at(i).middle(track.path(b).at(i));
    }

    private void take(Part part, SegmentAxis axis, BodyPoint point) {
      take(part, axis, point, 0);
    }

    private void take(Part part, SegmentAxis axis, BodyPoint point, double bendRad) {
      if (seen(point)) {
        take(part, axis, at(point), centres.path(point).at(i), bendRad);
      }
    }

    private void takeMiddle(Part part, SegmentAxis axis, BodyPoint a, BodyPoint b, double bendRad) {
      take(part, axis, middle(landmarks, a, b), middle(centres, a, b), bendRad);
    }

    private void take(Part part, SegmentAxis axis, Point from, Point to, double bendRad) {
      Offset offset = axis.offset((to.x() - from.x()) / size, (to.y() - from.y()) / size);
      shown.computeIfAbsent(part, p -> new ArrayList<>()).add(new Shown(bendRad, offset));
    }
  }
}
