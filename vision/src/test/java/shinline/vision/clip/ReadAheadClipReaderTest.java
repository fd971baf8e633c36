package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;

final class ReadAheadClipReaderTest extends ClipReaderContract {
  @Override
  ClipReader reader() {
    return ClipReader.standard();
  }

  @Test
  void anErrorInTheThreadBecomesTheEnding() {
    try (Clip clip = new ReadAheadClip(new BreakingClip(3))) {
      for (int n = 0; n < 3; n++) {
        assertThat(clip.next()).isPresent();
      }
      assertThat(clip.next()).isEmpty();
      assertThat(clip.ending())
          .isInstanceOfSatisfying(
              ClipEnding.Stopped.class, stopped -> assertThat(stopped.framesRead()).isEqualTo(3));
    }
  }

  @Test
  void anInterruptedCallerGetsAnEnding() {
    try (Clip clip = new ReadAheadClip(new BreakingClip(0))) {
      Thread.currentThread().interrupt();
      assertThat(clip.next()).isEmpty();
      assertThat(clip.ending()).isInstanceOf(ClipEnding.Stopped.class);
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
  }

  /** Gives some pictures, then breaks as no clip should. */
  private static final class BreakingClip implements Clip {
    private final int pictures;
    private int given;

    BreakingClip(int pictures) {
      this.pictures = pictures;
    }

    @Override
    public ClipInfo info() {
      return new ClipInfo(16, 16, 0, pictures, 1, 1, "none", 8, 1, 30, OptionalDouble.empty());
    }

    @Override
    public Optional<Frame> next() {
      throw new UnsupportedOperationException();
    }

    @Override
    public Optional<Frame> nextInto(Mat image) {
      if (given == pictures) {
        throw new IllegalArgumentException("broken");
      }
      given++;
      return Optional.of(new Frame(given - 1, given / 30.0, image));
    }

    @Override
    public List<DoubtfulPictures> doubtful() {
      return List.of();
    }

    @Override
    public ClipEnding ending() {
      throw new IllegalStateException();
    }

    @Override
    public FrameTimes times() {
      throw new IllegalStateException();
    }

    @Override
    public void close() {}
  }
}
