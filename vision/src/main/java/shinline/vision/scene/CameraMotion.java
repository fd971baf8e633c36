package shinline.vision.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;
import org.hipparchus.stat.descriptive.rank.Median;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;

/**
 * Follows the room through a clip, frame by frame.
 *
 * <p>Corners of the background (the athlete's body is left out) are followed from a key frame into
 * every frame by pyramidal Lucas-Kanade (Bouguet 2001) and a similarity is fitted by RANSAC with a
 * fixed seed. Every frame is compared with the key frame, not with its neighbour, so that errors do
 * not add up; a new key frame is taken only when too little of the old one is left in view.
 *
 * <p>One copy of the shrunk key frame and four numbers a frame are kept. Not for two threads at
 * once.
 */
public final class CameraMotion implements AutoCloseable {
  private final List<FrameMotion> motions = new ArrayList<>();
  private final Mat grey = new Mat();
  private final Mat small = new Mat();
  private Optional<KeyFrame> key = Optional.empty();
  private Similarity keyToReference = Similarity.IDENTITY;
  private Similarity last = Similarity.IDENTITY;
  private int cols;
  private int rows;

  /**
   * Compares the next frame with the reference (the first frame that shows enough of the room).
   *
   * @param frame upright, 8-bit BGR or grey; stays the caller's; all frames of one size
   * @param athlete where the athlete is in this frame: one box, or better one for each part of the
   *     body, which leaves more of the room; none when unknown
   * @throws IllegalArgumentException when the size changes
   */
  public FrameMotion add(Mat frame, List<PersonBox> athlete) {
    if (cols == 0) {
      cols = frame.cols();
      rows = frame.rows();
    } else if (frame.cols() != cols || frame.rows() != rows) {
      throw new IllegalArgumentException(
          "frame is " + frame.cols() + "x" + frame.rows() + ", the first was " + cols + "x" + rows);
    }
    shrink(frame);
    double factor = (double) small.cols() / cols;
    List<PersonBox> body = athlete.stream().map(b -> b.scaled(factor)).toList();
    FrameMotion motion = key.isEmpty() ? anchorFirst(body) : follow(key.get(), body);
    motions.add(motion);
    return motion;
  }

  private FrameMotion anchorFirst(List<PersonBox> body) {
    KeyFrame candidate = KeyFrame.of(small, body);
    if (candidate.size() < CameraMotionParameters.FEWEST_POINTS) {
      candidate.close();
      return new FrameMotion.Lost();
    }
    key = Optional.of(candidate);
    return new FrameMotion.Followed(Similarity.IDENTITY, candidate.size());
  }

  private FrameMotion follow(KeyFrame from, List<PersonBox> body) {
    Optional<KeyFrame.Match> match = from.match(small, body, last);
    if (match.isEmpty()) {
      return new FrameMotion.Lost();
    }
    Similarity toKey = match.get().toKey();
    last = toKey;
    Similarity toReference = keyToReference.after(toKey);
    if (match.get().points() < CameraMotionParameters.ANCHOR_SHARE * from.size()) {
      anchorAgain(from, body, toReference);
    }
    return new FrameMotion.Followed(
        toReference.enlarged((double) cols / small.cols(), (double) rows / small.rows()),
        match.get().points());
  }

  private void anchorAgain(KeyFrame old, List<PersonBox> body, Similarity toReference) {
    KeyFrame candidate = KeyFrame.of(small, body);
    // Taken only when it shows more than is left of the old one: a bare wall is no better anchor.
    if (candidate.size() < Math.max(CameraMotionParameters.FEWEST_POINTS, old.size() / 2)) {
      candidate.close();
      return;
    }
    old.close();
    key = Optional.of(candidate);
    keyToReference = toReference;
    last = Similarity.IDENTITY;
  }

  /**
   * Grey first, then halved by plain averages as long as it goes, and only the rest resampled: a
   * fraction of the cost of one step from the large picture in colour.
   */
  private void shrink(Mat frame) {
    double factor =
        Math.min(1, CameraMotionParameters.WORK_WIDTH_PX / (double) Math.max(cols, rows));
    int smallCols = (int) Math.round(cols * factor);
    int smallRows = (int) Math.round(rows * factor);
    if (frame.channels() == 1) {
      frame.copyTo(grey);
    } else {
      opencv_imgproc.cvtColor(frame, grey, opencv_imgproc.COLOR_BGR2GRAY);
    }
    while (grey.cols() % 2 == 0 && grey.rows() % 2 == 0 && grey.cols() >= 2 * smallCols) {
      resize(grey, grey.cols() / 2, grey.rows() / 2, opencv_imgproc.INTER_AREA);
      opencv_core.swap(grey, small);
    }
    resize(grey, smallCols, smallRows, opencv_imgproc.INTER_LINEAR);
  }

  private void resize(Mat from, int toCols, int toRows, int how) {
    try (Size size = new Size(toCols, toRows)) {
      opencv_imgproc.resize(from, small, size, 0, 0, how);
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
    if (followed.isEmpty()
        || followed.size() < CameraMotionParameters.FOLLOWED_SHARE * motions.size()) {
      return new Steadiness.Unsure(followed.size(), motions.size());
    }
    double amplitude = amplitude(followed);
    return amplitude < CameraMotionParameters.STEADY_SHARE * Math.max(cols, rows)
        ? new Steadiness.Steady()
        : new Steadiness.Moving(amplitude);
  }

  /**
   * One move a frame, from that frame to the middle view: what the camera would have shown had it
   * stood still in its middle place and turn. A hand that holds a phone level wavers about level,
   * so the middle view is more nearly level than any one frame. Identity throughout when the camera
   * was still or it cannot be told; a lost frame takes its move from its neighbours.
   */
  public List<Similarity> toMiddleView() {
    boolean moving = steadiness().fold(steady -> false, m -> true, unsure -> false);
    List<Similarity> moves = toFirst(moving);
    if (!moving) {
      return moves;
    }
    Similarity fromFirst = middle(moves).inverse();
    return moves.stream().map(fromFirst::after).toList();
  }

  /** The middle turn, zoom and place, each on its own, about the centre of the picture. */
  private Similarity middle(List<Similarity> moves) {
    double cx = (cols - 1) / 2.0;
    double cy = (rows - 1) / 2.0;
    double turn = Math.toRadians(median(moves, Similarity::rotationDeg));
    double zoom = median(moves, Similarity::scale);
    double a = zoom * Math.cos(turn);
    double b = zoom * Math.sin(turn);
    return new Similarity(
        a,
        b,
        median(moves, m -> m.x(cx, cy)) - a * cx + b * cy,
        median(moves, m -> m.y(cx, cy)) - b * cx - a * cy);
  }

  private static double median(List<Similarity> moves, ToDoubleFunction<Similarity> of) {
    return new Median().evaluate(moves.stream().mapToDouble(of).toArray());
  }

  private List<Similarity> toFirst(boolean moving) {
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
      double middleX = new Median().evaluate(xs);
      double middleY = new Median().evaluate(ys);
      for (int i = 0; i < n; i++) {
        double dx = xs[i] - middleX;
        double dy = ys[i] - middleY;
        stray[i] += (dx * dx + dy * dy) / 4;
      }
    }
    return Math.sqrt(new Percentile(95).withEstimationType(EstimationType.R_2).evaluate(stray));
  }

  /** Gives the pictures kept back; motions already returned stay good. */
  @Override
  public void close() {
    key.ifPresent(KeyFrame::close);
    grey.close();
    small.close();
  }
}
