package shinline.cli.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.observation.KeptPicture;
import shinline.vision.observation.KeptPictures;

/** Frames of which the first reading kept all that a picture needs. */
final class KeptFrames {
  private final Optional<KeptPictures> kept;
  private final SetScene scene;
  private final Optional<HeadBlur> blur;

  /**
   * @param kept empty where nothing was
   * @param blur where the head is to be covered
   */
  KeptFrames(Optional<KeptPictures> kept, SetScene scene, Optional<HeadBlur> blur) {
    this.kept = kept;
    this.scene = scene;
    this.blur = blur;
  }

  /**
   * An upright frame, true to the film in the part that a picture of it shows.
   *
   * @return the caller's to draw on; empty when it has to be read again
   */
  Optional<BufferedImage> picture(int frame, double timeS) {
    return kept.flatMap(k -> k.of(frame)).filter(part -> holds(part, timeS)).map(this::placed);
  }

  private boolean holds(KeptPicture part, double timeS) {
    Rectangle there = new Rectangle(part.leftPx(), part.topPx(), part.widthPx(), part.heightPx());
    Rectangle frame = new Rectangle(scene.widthPx(), scene.heightPx());
    return frame.contains(there)
        && there.contains(Crop.around(scene, scene.poseInFrame(timeS)).box())
        && blur.map(b -> b.reach(timeS).intersection(frame))
            .filter(head -> !head.isEmpty() && !there.contains(head))
            .isEmpty();
  }

  /**
   * In its place, so that what draws on frames need not know that there is only a part. On an image
   * of its own: others are drawn at the same time.
   */
  private BufferedImage placed(KeptPicture part) {
    BufferedImage whole =
        new BufferedImage(scene.widthPx(), scene.heightPx(), BufferedImage.TYPE_3BYTE_BGR);
    try (Mat picture = part.picture()) {
      FrameImage.place(picture, whole, part.leftPx(), part.topPx());
    }
    return whole;
  }
}
