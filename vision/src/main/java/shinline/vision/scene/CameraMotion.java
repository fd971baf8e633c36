package shinline.vision.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;

/**
 * Follows the room through a clip, frame by frame, against the first frame.
 *
 * <p>Corners of the background (the athlete's box is left out) are followed from a key frame into
 * every frame by pyramidal Lucas-Kanade (Bouguet 2001) and a similarity is fitted by RANSAC with a
 * fixed seed. Every frame is compared with the key frame, not with its neighbour, so that errors do
 * not add up; a new key frame is taken only when too little of the old one is left in view.
 *
 * <p>One copy of the shrunk key frame and four numbers a frame are kept. Not for two threads at
 * once.
 */
public final class CameraMotion implements AutoCloseable {
  private final CameraMotionParameters parameters;
  private final List<FrameMotion> motions = new ArrayList<>();
  private final Mat grey = new Mat();
  private final Mat small = new Mat();
  private Optional<KeyFrame> key = Optional.empty();
  private Similarity keyToReference = Similarity.IDENTITY;
  private Similarity last = Similarity.IDENTITY;
  private int cols;
  private int rows;

  /** Starts with no frame. */
  public CameraMotion(CameraMotionParameters parameters) {
    this.parameters = parameters;
  }

  /**
   * Compares the next frame with the reference (the first frame that shows enough of the room).
   *
   * @param frame upright, 8-bit BGR or grey; stays the caller's; all frames of one size
   * @param athlete where the athlete is in this frame, if known
   * @throws IllegalArgumentException when the size changes
   */
  public FrameMotion add(Mat frame, Optional<PersonBox> athlete) {
    if (cols == 0) {
      cols = frame.cols();
      rows = frame.rows();
    } else if (frame.cols() != cols || frame.rows() != rows) {
      throw new IllegalArgumentException(
          "frame is " + frame.cols() + "x" + frame.rows() + ", the first was " + cols + "x" + rows);
    }
    shrink(frame);
    Optional<PersonBox> box = athlete.map(b -> b.scaled((double) small.cols() / cols));
    FrameMotion motion = key.isEmpty() ? anchorFirst(box) : follow(key.get(), box);
    motions.add(motion);
    return motion;
  }

  private FrameMotion anchorFirst(Optional<PersonBox> box) {
    KeyFrame candidate = KeyFrame.of(small, box, parameters);
    if (candidate.size() < parameters.fewestPoints()) {
      candidate.close();
      return new FrameMotion.Lost(
          "the background shows only " + candidate.size() + " points that can be followed");
    }
    key = Optional.of(candidate);
    return new FrameMotion.Followed(Similarity.IDENTITY, candidate.size());
  }

  private FrameMotion follow(KeyFrame from, Optional<PersonBox> box) {
    Optional<KeyFrame.Match> match = from.match(small, box, last, parameters);
    if (match.isEmpty()) {
      return new FrameMotion.Lost("too few background points agree on one camera move");
    }
    Similarity toKey = match.get().toKey();
    last = toKey;
    Similarity toReference = keyToReference.after(toKey);
    if (match.get().points() < parameters.anchorShare() * from.size()) {
      anchorAgain(from, box, toReference);
    }
    return new FrameMotion.Followed(
        toReference.enlarged((double) cols / small.cols(), (double) rows / small.rows()),
        match.get().points());
  }

  private void anchorAgain(KeyFrame old, Optional<PersonBox> box, Similarity toReference) {
    KeyFrame candidate = KeyFrame.of(small, box, parameters);
    // Taken only when it shows more than is left of the old one: a bare wall is no better anchor.
    if (candidate.size() < Math.max(parameters.fewestPoints(), old.size() / 2)) {
      candidate.close();
      return;
    }
    old.close();
    key = Optional.of(candidate);
    keyToReference = toReference;
    last = Similarity.IDENTITY;
  }

  /** Grey first, and a large frame in two steps: a quarter of the cost of one step in colour. */
  private void shrink(Mat frame) {
    double factor = Math.min(1, parameters.workWidthPx() / (double) Math.max(cols, rows));
    try (Size size = new Size((int) Math.round(cols * factor), (int) Math.round(rows * factor));
        Mat half = new Mat()) {
      if (frame.channels() == 1) {
        frame.copyTo(grey);
      } else {
        opencv_imgproc.cvtColor(frame, grey, opencv_imgproc.COLOR_BGR2GRAY);
      }
      if (cols % 2 == 0 && rows % 2 == 0 && size.width() * 4 <= cols) {
        try (Size halfSize = new Size(cols / 2, rows / 2)) {
          opencv_imgproc.resize(grey, half, halfSize, 0, 0, opencv_imgproc.INTER_AREA);
        }
        opencv_imgproc.resize(half, small, size, 0, 0, opencv_imgproc.INTER_AREA);
      } else {
        opencv_imgproc.resize(grey, small, size, 0, 0, opencv_imgproc.INTER_AREA);
      }
    }
  }

  /** Whether the camera stood still over the frames so far. */
  public Steadiness steadiness() {
    List<Similarity> followed = new ArrayList<>();
    for (FrameMotion motion : motions) {
      motion
          .<Optional<Similarity>>fold(f -> Optional.of(f.toReference()), lost -> Optional.empty())
          .ifPresent(followed::add);
    }
    if (followed.isEmpty() || followed.size() < parameters.followedShare() * motions.size()) {
      return new Steadiness.Unsure(
          "the background could be followed in "
              + followed.size()
              + " of "
              + motions.size()
              + " frames");
    }
    double amplitude = amplitude(followed);
    return amplitude < parameters.steadyShare() * Math.max(cols, rows)
        ? new Steadiness.Steady()
        : new Steadiness.Moving(amplitude);
  }

  /**
   * One move a frame, from that frame to the reference. Identity throughout when the camera was
   * still or it cannot be told; a lost frame takes its move from its neighbours.
   */
  public List<Similarity> toReference() {
    boolean moving = steadiness().fold(steady -> false, m -> true, unsure -> false);
    List<Similarity> moves = new ArrayList<>(motions.size());
    int before = -1;
    for (int i = 0; i < motions.size(); i++) {
      Optional<Similarity> own =
          motions.get(i).fold(f -> Optional.of(f.toReference()), lost -> Optional.empty());
      if (!moving || own.isEmpty()) {
        moves.add(Similarity.IDENTITY);
        continue;
      }
      moves.add(own.get());
      Similarity earlier = before < 0 ? own.get() : moves.get(before);
      for (int j = before + 1; j < i; j++) {
        moves.set(j, earlier.toward(own.get(), (double) (j - before) / (i - before)));
      }
      before = i;
    }
    for (int j = before + 1; moving && j < moves.size(); j++) {
      moves.set(j, moves.get(before));
    }
    return List.copyOf(moves);
  }

  /** 95th percentile of how far four places of the picture stray from their median place. */
  private double amplitude(List<Similarity> moves) {
    int n = moves.size();
    double[] stray = new double[n];
    for (int corner = 0; corner < 4; corner++) {
      double x = cols * (corner % 2 == 0 ? 0.2 : 0.8);
      double y = rows * (corner < 2 ? 0.2 : 0.8);
      double[] xs = moves.stream().mapToDouble(m -> m.x(x, y)).toArray();
      double[] ys = moves.stream().mapToDouble(m -> m.y(x, y)).toArray();
      double middleX = median(xs);
      double middleY = median(ys);
      for (int i = 0; i < n; i++) {
        double dx = xs[i] - middleX;
        double dy = ys[i] - middleY;
        stray[i] += (dx * dx + dy * dy) / 4;
      }
    }
    Arrays.sort(stray);
    return Math.sqrt(stray[(int) Math.min(n - 1, Math.ceil(0.95 * n) - 1)]);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /** Gives the pictures kept back; motions already returned stay good. */
  @Override
  public void close() {
    key.ifPresent(KeyFrame::close);
    grey.close();
    small.close();
  }
}
