package shinline.vision.clip;

import static org.bytedeco.opencv.global.opencv_core.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import org.bytedeco.opencv.opencv_core.Mat;
import org.jspecify.annotations.Nullable;
import shinline.vision.clip.ClipEnding.StopCause;

/**
 * Decodes ahead of its caller, so that decoding and the caller's own work share two cores. A fixed
 * set of buffers goes round between the two threads: no picture is copied, and memory stays flat.
 */
final class ReadAheadClip implements Clip {

  /**
   * Pictures decoded ahead: enough to even out key frames, which take longest to decode, and frames
   * that are looked at again and again. They are made into pictures of their own at once: where a
   * film is damaged, what the decoder patches up depends on which of its own pictures are free.
   */
  private static final int BUFFERS = 16;

  /** What the buffers may hold together; fewer are used for very large pictures. */
  private static final long MAX_BUFFER_BYTES = 100L << 20;

  /** Fewest buffers with which the two threads do not wait for each other all the time. */
  private static final int MIN_BUFFERS = 4;

  private final Clip inner;
  private final BlockingQueue<Mat> empty;
  private final BlockingQueue<Delivery> filled;
  private final List<Mat> buffers = new ArrayList<>();
  private final Thread thread;
  private @Nullable Mat lent;
  private @Nullable Last last;
  private int framesRead;
  private boolean closed;

  /** Takes over {@code inner}, which is closed with this clip. */
  ReadAheadClip(Clip inner) {
    this.inner = inner;
    long pictureBytes = 3L * inner.info().widthPx() * inner.info().heightPx();
    int count = (int) Math.min(BUFFERS, Math.max(MIN_BUFFERS, MAX_BUFFER_BYTES / pictureBytes));
    this.empty = new ArrayBlockingQueue<>(count);
    // One place more than there are buffers: the ending always finds room, so the thread ends.
    this.filled = new ArrayBlockingQueue<>(count + 1);
    for (int i = 0; i < count; i++) {
      Mat buffer = new Mat();
      buffers.add(buffer);
      empty.add(buffer);
    }
    this.thread = new Thread(this::decode, "clip-read-ahead");
    thread.setDaemon(true);
    thread.start();
  }

  private void decode() {
    int decoded = 0;
    try {
      while (true) {
        Mat buffer = empty.take();
        Optional<Frame> frame = inner.nextInto(buffer);
        if (frame.isEmpty()) {
          filled.add(new Last(inner.ending(), inner.times()));
          return;
        }
        filled.add(new Picture(frame.get()));
        decoded++;
      }
    } catch (InterruptedException e) {
      filled.add(stopped(decoded, StopCause.CALLED_OFF));
    } catch (RuntimeException | Error e) {
      filled.add(stopped(decoded, StopCause.LIBRARY_FAILED));
    }
  }

  private static Last stopped(int framesRead, StopCause cause) {
    return new Last(new ClipEnding.Stopped(framesRead, cause), new FrameTimes());
  }

  @Override
  public ClipInfo info() {
    return inner.info();
  }

  @Override
  public Optional<Frame> next() {
    return take();
  }

  @Override
  public Optional<Frame> nextInto(Mat image) {
    return take()
        .map(
            frame -> {
              // Swapping hands the picture over without copying its pixels.
              swap(frame.image(), image);
              return new Frame(frame.index(), frame.timeS(), image);
            });
  }

  private Optional<Frame> take() {
    if (closed) {
      throw new IllegalStateException("the clip is closed");
    }
    if (last != null) {
      return Optional.empty();
    }
    if (lent != null) {
      empty.add(lent);
      lent = null;
    }
    try {
      Delivery delivery = filled.take();
      if (delivery instanceof Picture picture) {
        lent = picture.frame().image();
        framesRead++;
        return Optional.of(picture.frame());
      }
      last = (Last) delivery;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      last = stopped(framesRead, StopCause.CALLED_OFF);
    }
    return Optional.empty();
  }

  @Override
  public ClipEnding ending() {
    return last().ending();
  }

  @Override
  public FrameTimes times() {
    return last().times();
  }

  private Last last() {
    if (last == null) {
      throw new IllegalStateException("the clip has not been read to its end");
    }
    return last;
  }

  @Override
  public List<DoubtfulPictures> doubtful() {
    // Stopped while the other thread still had the film: nothing is known then.
    return last().ending() instanceof ClipEnding.Stopped ? List.of() : inner.doubtful();
  }

  @Override
  public void close() {
    if (closed) {
      return;
    }
    closed = true;
    thread.interrupt();
    boolean interrupted = false;
    // The thread is at most one picture away from its next look at the queue. Its buffers and the
    // file must not be freed before it is done with them.
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    inner.close();
    buffers.forEach(Mat::close);
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  /** What the decoding thread hands over. */
  private sealed interface Delivery {}

  private record Picture(Frame frame) implements Delivery {}

  private record Last(ClipEnding ending, FrameTimes times) implements Delivery {}
}
