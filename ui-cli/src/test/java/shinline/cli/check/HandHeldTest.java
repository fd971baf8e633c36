package shinline.cli.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shinline.cli.check.ShakenReader.Holder;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.result.Measure;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.vision.pose.PoseModel;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

/** One rep of a sample clip, shaken by a known hand, through the whole check. */
class HandHeldTest {
  /** The first rep and a little more: sample-clips/plain1-bench-shallow.truth.json. */
  private static final double READ_S = 5;

  /** As much as two looks of the pose model at one pose differ. */
  private static final double ANGLE_DEG = 1.5;

  private static final double LENGTH_CM = 1.5;

  /** The project's own bound on a followed camera, half a pixel, and as much for the turn. */
  private static final double PLACE_PX = 1;

  private static final CheckOptions OPTIONS =
      new CheckOptions(
          SetRequest.plain().withAthleteHeightM(1.8),
          PoseModel.FULL,
          OptionalDouble.empty(),
          shinline.vision.clip.ClipPart.WHOLE,
          Optional.empty());

  private static final Path CLIP = Path.of("..", "sample-clips", "plain1-bench-shallow.mp4");

  private static final ShakenReader HAND = new ShakenReader(Holder.HAND, READ_S);
  private static final ShakenReader TRIPOD = new ShakenReader(Holder.TRIPOD, READ_S);

  private static ClipReport.Measured measured(ShakenReader reader) {
    return new ClipCheck(reader)
        .check(CLIP, OPTIONS, Progress.silent())
        .fold(
            m -> m,
            n -> {
              throw new AssertionError(n.why().toString());
            },
            u -> {
              throw new AssertionError(u.reason());
            });
  }

  private static double at(RepResult rep, Measure measure) {
    return rep.at(measure).measured().orElseThrow().value();
  }

  @Test
  void aHandHeldClipMeasuresWhatTheTripodMeasuredAndSaysSo() throws Exception {
    ClipReport.Measured hand = measured(HAND);
    ClipReport.Measured tripod = measured(TRIPOD);

    assertThat(hand.set().setUp().cameraHold()).isEqualTo(CameraHold.STEADIED);
    assertThat(hand.warnings()).anyMatch(w -> w.contains("hand-held"));
    assertThat(tripod.set().setUp().cameraHold()).isEqualTo(CameraHold.STILL);
    assertThat(tripod.warnings()).isEmpty();
    assertThat(tripod.camera()).isSameAs(CameraPath.still());
    RepResult shaken = hand.set().reps().get(0);
    RepResult still = tripod.set().reps().get(0);
    for (Measure measure : List.of(Measure.SHIN, Measure.TRUNK_LEAN, Measure.THIGH)) {
      assertThat(at(shaken, measure))
          .as(measure.jsonName())
          .isCloseTo(at(still, measure), within(ANGLE_DEG));
    }
    for (Measure measure : List.of(Measure.KNEE_PAST_TOE, Measure.REAR_KNEE_HEIGHT)) {
      assertThat(at(shaken, measure))
          .as(measure.jsonName())
          .isCloseTo(at(still, measure), within(LENGTH_CM));
    }
    stillViewLeadsBackToEveryFrame(hand);
  }

  private static void stillViewLeadsBackToEveryFrame(ClipReport.Measured hand)
      throws NoninvertibleTransformException {
    int w = hand.clip().widthPx();
    int h = hand.clip().heightPx();
    // A spot of the room beside the athlete, put into the still view by way of the first frame.
    Point2D spot = new Point2D.Double(0.8 * w, 0.7 * h);
    Point2D still = hand.camera().toFrame(0).inverseTransform(shaken(spot, 0, w, h), null);
    for (double t = 0; t < READ_S - 0.1; t += 0.1) {
      Point2D seen = hand.camera().inFrame(t, still.getX(), still.getY());
      assertThat(seen.distance(shaken(spot, t, w, h))).as("at %.1f s", t).isLessThan(PLACE_PX);
    }
  }

  private static Point2D shaken(Point2D spot, double timeS, int w, int h) {
    Similarity shake = HAND.shake(timeS, w, h);
    return new Point2D.Double(shake.x(spot.getX(), spot.getY()), shake.y(spot.getX(), spot.getY()));
  }
}
