package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.BackgroundRoll;
import shinline.vision.scene.PersonBox;
import shinline.vision.scene.RoomFrame;
import shinline.vision.scene.RoomPicture;
import shinline.vision.scene.RoomSegments;
import shinline.vision.scene.Similarity;
import shinline.vision.scene.UprightEstimate;

/** Takes a few frames of the room, spread over the clip, and reads the vertical from them. */
public final class RoomObserver {
  private static final int LOOKS = 5;

  /** Between looks when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 60;

  private final List<Kept> kept = new ArrayList<>();
  private final Executor beside;
  private final int every;
  private int nextIndex;
  private int looks;

  /** A frame's lines and the number of its look, by which the camera's move is told. */
  private record Kept(
      int look, CompletableFuture<RoomSegments> segments, Optional<PersonBox> athlete) {}

  /**
   * @param expectedFrames frames the clip promises; 0 when it does not say
   * @param beside searches a frame for lines, which takes as long as some looks of the pose model
   */
  public RoomObserver(int expectedFrames, Executor beside) {
    this.beside = beside;
    every = expectedFrames > 0 ? Math.max(1, expectedFrames / (LOOKS + 1)) : FRAMES_BETWEEN;
  }

  /** Told of every look; the picture is not needed any more when it returns. */
  public void look(int index, Mat bgrUpright, PoseSighting sighting) {
    int look = looks++;
    if (index < nextIndex || kept.size() >= LOOKS) {
      return;
    }
    nextIndex = index + every;
    RoomPicture room = RoomPicture.of(bgrUpright);
    kept.add(
        new Kept(
            look,
            CompletableFuture.supplyAsync(() -> segments(room), beside),
            PoseShape.box(sighting)));
  }

  private static RoomSegments segments(RoomPicture picture) {
    try (picture) {
      return picture.segments();
    }
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
            .map(k -> new RoomFrame(k.segments().join(), k.athlete(), moves.get(k.look())))
            .toList();
    return new BackgroundRoll().estimate(frames).fold(Optional::of, unsure -> Optional.empty());
  }
}
