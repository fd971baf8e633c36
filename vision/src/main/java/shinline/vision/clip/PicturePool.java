package shinline.vision.clip;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * Pictures that go round between threads: memory is given to each once, however long the clip is.
 */
public final class PicturePool implements AutoCloseable {
  private final List<Mat> all = new ArrayList<>();
  private final Deque<Mat> free = new ArrayDeque<>();

  /** A picture to write into; a new one when none is free. */
  public synchronized Mat take() {
    if (free.isEmpty()) {
      Mat made = new Mat();
      all.add(made);
      return made;
    }
    return free.pop();
  }

  /** Nobody reads this picture any more. */
  public synchronized void give(Mat picture) {
    free.push(picture);
  }

  /** Frees all, those not given back included. */
  @Override
  public synchronized void close() {
    all.forEach(Mat::close);
    all.clear();
    free.clear();
  }
}
