package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.BackgroundRoll;
import shinline.vision.scene.PersonBox;
import shinline.vision.scene.RoomFrame;
import shinline.vision.scene.Similarity;
import shinline.vision.scene.UprightEstimate;

/** Keeps a few frames of the room, spread over the clip, and reads the vertical from them. */
public final class RoomObserver implements AutoCloseable {
  private static final int LOOKS = 5;

  /** Between looks when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 60;

  private final List<Kept> kept = new ArrayList<>();
  private final int every;
  private int nextIndex;
  private int looks;

  /** A frame and the number of its look, by which the camera's move is told. */
  private record Kept(int look, Mat picture, Optional<PersonBox> athlete) {}

  /**
   * @param expectedFrames frames the clip promises; 0 when it does not say
   */
  public RoomObserver(int expectedFrames) {
    every = expectedFrames > 0 ? Math.max(1, expectedFrames / (LOOKS + 1)) : FRAMES_BETWEEN;
  }

  /** Told of every look; takes a copy of the picture when its turn has come. */
  public void look(int index, Mat bgrUpright, PoseSighting sighting) {
    int look = looks++;
    if (index < nextIndex || kept.size() >= LOOKS) {
      return;
    }
    nextIndex = index + every;
    kept.add(new Kept(look, bgrUpright.clone(), PoseShape.box(sighting)));
  }

  /**
   * The camera's roll, and how uprights and level lines converge, when the room tells it.
   *
   * @param moves one a look: brings a point of its frame to the still view, whose roll is told
   */
  public Optional<UprightEstimate.Found> uprights(List<Similarity> moves) {
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    List<RoomFrame> frames =
        kept.stream()
            .map(k -> new RoomFrame(k.picture(), k.athlete(), moves.get(k.look())))
            .toList();
    return new BackgroundRoll().estimate(frames).fold(Optional::of, unsure -> Optional.empty());
  }

  @Override
  public void close() {
    kept.forEach(k -> k.picture().close());
  }
}
