package shinline.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.crossing.PoseShape;
import shinline.metrics.analysis.AnalysisOptions.BackgroundRoll;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.BackgroundRollParameters;
import shinline.vision.scene.PersonBox;
import shinline.vision.scene.RoomFrame;

/** Keeps a few frames of the room, spread over the clip, and reads the vertical from them. */
final class RoomWatch implements AutoCloseable {
  private static final int LOOKS = 5;

  /** Between looks when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 60;

  private final List<RoomFrame> frames = new ArrayList<>();
  private final int every;
  private int nextIndex;

  /**
   * @param expectedFrames frames the clip promises; 0 when it does not say
   */
  RoomWatch(int expectedFrames) {
    every = expectedFrames > 0 ? Math.max(1, expectedFrames / (LOOKS + 1)) : FRAMES_BETWEEN;
  }

  /** Takes a copy of the picture when its turn has come. */
  void look(int index, Mat bgrUpright, PoseSighting sighting) {
    if (index < nextIndex || frames.size() >= LOOKS) {
      return;
    }
    nextIndex = index + every;
    frames.add(new RoomFrame(bgrUpright.clone(), box(sighting)));
  }

  private static Optional<PersonBox> box(PoseSighting sighting) {
    return sighting.fold(found -> Optional.of(PoseShape.box(found)), nobody -> Optional.empty());
  }

  /** The camera's roll, when the room tells it. */
  Optional<BackgroundRoll> roll() {
    if (frames.isEmpty()) {
      return Optional.empty();
    }
    return new shinline.vision.scene.BackgroundRoll(BackgroundRollParameters.defaults())
        .estimate(frames)
        .fold(
            found -> Optional.of(new BackgroundRoll(found.rollDeg(), found.plusMinusDeg())),
            unsure -> Optional.empty());
  }

  @Override
  public void close() {
    frames.forEach(f -> f.picture().close());
  }
}
