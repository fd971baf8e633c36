package shinline.vision.observation;

import java.nio.ByteBuffer;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.opencv.global.opencv_imgcodecs;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.Patch;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;

/**
 * Keeps of frames that were looked at the part with the athlete, as a JPEG in memory. Which frames
 * make a picture is known only when the set is measured, and to decode them again costs a film with
 * few key pictures most of its decoding.
 *
 * <p>Kept is no more than a given number of bytes. Most pictures are of the lower part of a rep:
 * when the bytes are reached, frames of an athlete who stands are let go, and kept no more. When
 * they are reached again, nothing more is kept: a stretch that has to be decoded again costs the
 * same for one frame of it as for all, so one stretch that is whole is worth more than many with
 * gaps.
 */
public final class KeptPictures {
  /** A set of eight at 1080 rows, full of grain; small beside the pose model. */
  private static final long MOST_BYTES = 40L << 20;

  /** Grain and edges stay as the film has them; what is drawn on is compressed harder. */
  private static final int QUALITY = 92;

  /** Films are compressed in blocks of so many pixels; on their edges the least is lost. */
  private static final int BLOCK = 16;

  /** Shares of stature (Drillis and Contini 1966). */
  private static final double TRUNK = 0.288;

  private static final double THIGH = 0.245;
  private static final double SHANK = 0.246;

  /**
   * Hips over the lower ankle: someone who stands straight has 0.49 of stature, in a split stance
   * 0.40 to 0.45, and half as much at the bottom.
   */
  private static final double STANDS = 0.38;

  /** What a picture shows around the joints, and as much again as cleaning may move them. */
  private static final double ABOVE = 0.24;

  private static final double BESIDE = 0.3;
  private static final double BELOW = 0.13;

  /** A picture is not cut narrower than 0.7 of its height. */
  private static final double LEAST_WIDE = 0.75;

  /** The points that are drawn; hands reach out and come back. */
  private static final Set<BodyLandmark> DRAWN = drawn();

  private final Map<Integer, KeptPicture> low = new HashMap<>();
  private final Map<Integer, KeptPicture> standing = new HashMap<>();
  private final long mostBytes;
  private long bytes;
  private boolean lowOnly;
  private boolean full;

  /** As much as suits a laptop. */
  public KeptPictures() {
    this(MOST_BYTES);
  }

  /**
   * @param mostBytes that all kept parts take together
   */
  KeptPictures(long mostBytes) {
    this.mostBytes = mostBytes;
  }

  private static Set<BodyLandmark> drawn() {
    Set<BodyLandmark> drawn =
        EnumSet.of(
            BodyLandmark.LEFT_EAR,
            BodyLandmark.RIGHT_EAR,
            BodyLandmark.LEFT_SHOULDER,
            BodyLandmark.RIGHT_SHOULDER);
    drawn.addAll(EnumSet.range(BodyLandmark.LEFT_HIP, BodyLandmark.RIGHT_FOOT_INDEX));
    return Collections.unmodifiableSet(drawn);
  }

  /**
   * Told of every look, in their order.
   *
   * @param frame index of the frame in the clip
   */
  public void look(int frame, Mat bgrUpright, PeopleInView people) {
    if (!full) {
      people
          .ofMover()
          .pose()
          .filter(found -> !lowOnly || isLow(found))
          .ifPresent(found -> keep(frame, bgrUpright, found));
    }
  }

  /**
   * What is kept of a frame; empty when it was not looked at, nobody was seen, or after the end.
   */
  public Optional<KeptPicture> of(int frame) {
    return Optional.ofNullable(low.get(frame)).or(() -> Optional.ofNullable(standing.get(frame)));
  }

  private static boolean isLow(PoseSighting.Found found) {
    double anklePx =
        Math.max(found.at(BodyLandmark.LEFT_ANKLE).y(), found.at(BodyLandmark.RIGHT_ANKLE).y());
    return anklePx - PoseShape.hipRowPx(found) < STANDS * staturePx(found);
  }

  private void keep(int frame, Mat picture, PoseSighting.Found found) {
    Patch patch = room(found);
    int left = Math.max(0, onBlock(patch.left()));
    int top = Math.max(0, onBlock(patch.top()));
    int width = Math.min(picture.cols(), onBlock(patch.right()) + BLOCK) - left;
    int height = Math.min(picture.rows(), onBlock(patch.bottom()) + BLOCK) - top;
    if (width <= 0 || height <= 0) {
      return;
    }
    KeptPicture part =
        new KeptPicture(left, top, width, height, jpeg(picture, left, top, width, height));
    boolean isLow = isLow(found);
    if (bytes + part.bytes() > mostBytes) {
      letGoOfStanding();
      full = bytes + part.bytes() > mostBytes;
    }
    if (!full && (isLow || !lowOnly)) {
      bytes += part.bytes();
      (isLow ? low : standing).put(frame, part);
    }
  }

  private void letGoOfStanding() {
    lowOnly = true;
    for (KeptPicture part : standing.values()) {
      bytes -= part.bytes();
    }
    standing.clear();
  }

  private static int onBlock(double px) {
    return (int) Math.floor(px / BLOCK) * BLOCK;
  }

  /** What a picture of the athlete can need. */
  private static Patch room(PoseSighting.Found found) {
    Patch body = Patch.around(found, DRAWN);
    double stature = staturePx(found);
    double top = body.top() - ABOVE * stature;
    double bottom = body.bottom() + BELOW * stature;
    double middle = (body.left() + body.right()) / 2;
    double half =
        Math.max(
            (body.right() - body.left()) / 2 + BESIDE * stature, LEAST_WIDE * (bottom - top) / 2);
    return new Patch(middle - half, top, middle + half, bottom);
  }

  /** Of the longest part in sight: what points at the camera looks short. */
  private static double staturePx(PoseSighting.Found found) {
    return DoubleStream.of(
            between(found, BodyLandmark.LEFT_HIP, BodyLandmark.LEFT_SHOULDER) / TRUNK,
            between(found, BodyLandmark.RIGHT_HIP, BodyLandmark.RIGHT_SHOULDER) / TRUNK,
            between(found, BodyLandmark.LEFT_HIP, BodyLandmark.LEFT_KNEE) / THIGH,
            between(found, BodyLandmark.RIGHT_HIP, BodyLandmark.RIGHT_KNEE) / THIGH,
            between(found, BodyLandmark.LEFT_KNEE, BodyLandmark.LEFT_ANKLE) / SHANK,
            between(found, BodyLandmark.RIGHT_KNEE, BodyLandmark.RIGHT_ANKLE) / SHANK)
        .max()
        .orElse(0);
  }

  private static double between(PoseSighting.Found found, BodyLandmark one, BodyLandmark other) {
    Keypoint a = found.at(one);
    Keypoint b = found.at(other);
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private static ByteBuffer jpeg(Mat picture, int left, int top, int width, int height) {
    try (Rect box = new Rect(left, top, width, height);
        Mat part = new Mat(picture, box);
        BytePointer file = new BytePointer();
        IntPointer how = new IntPointer(opencv_imgcodecs.IMWRITE_JPEG_QUALITY, QUALITY)) {
      opencv_imgcodecs.imencode(".jpg", part, file, how);
      return ByteBuffer.allocateDirect((int) file.limit()).put(file.asByteBuffer());
    }
  }
}
