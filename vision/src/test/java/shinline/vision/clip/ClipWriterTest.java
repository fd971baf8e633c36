package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.bytedeco.opencv.global.opencv_core.NORM_L1;
import static org.bytedeco.opencv.global.opencv_core.norm;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.bytedeco.opencv.opencv_core.Mat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ClipWriterTest {

  /** Mean error of a colour value, of 255, that lossy coding at this rate may leave. */
  private static final double PICTURE_TOLERANCE = 12;

  @TempDir Path folder;

  private static Clip read(Path film) {
    return new FfmpegClipReader()
        .open(film, ClipOptions.defaults())
        .fold(
            ClipOpening.Opened::clip,
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }

  @Test
  void picturesAndTimesComeBack() throws IOException {
    double[] times = {0, 0.04, 0.05, 0.3, 0.3333, 2};
    Path film = TestFilm.moving(folder.resolve("a.mp4"), times);
    try (Clip clip = read(film)) {
      for (int n = 0; n < times.length; n++) {
        Frame frame = clip.next().orElseThrow();
        assertThat(frame.timeS()).isCloseTo(times[n], within(0.001));
        try (Mat drawn = TestFilm.moving(160, 120, n)) {
          double meanError = norm(frame.image(), drawn, NORM_L1, null) / (160 * 120 * 3);
          assertThat(meanError).isLessThan(PICTURE_TOLERANCE);
        }
      }
      assertThat(clip.next()).isEmpty();
      assertThat(clip.ending()).isEqualTo(new ClipEnding.Complete(times.length));
      assertThat(clip.info().codec()).isEqualTo("h264");
    }
  }

  @Test
  void indexComesFirstAndNothingElseIsLeft() throws IOException {
    Path film = TestFilm.quarters(folder.resolve("a.mp4"), 64, 48, 5);
    String bytes = Files.readString(film, StandardCharsets.ISO_8859_1);
    assertThat(bytes.indexOf("moov")).isLessThan(bytes.indexOf("mdat"));
    assertThat(names()).containsExactly("a.mp4");
  }

  @Test
  void notesAreInTheFile() throws IOException {
    Path film = folder.resolve("noted.mp4");
    WriterOpening opening =
        ClipWriter.open(film, 64, 48, 30, new FilmNotes("Café set", "Not a diagnosis."));
    try (ClipWriter writer =
            opening.fold(
                WriterOpening.Ready::writer,
                refused -> {
                  throw new AssertionError(refused.toString());
                });
        Mat picture = TestFilm.moving(64, 48, 0)) {
      writer.write(picture, 0);
    }
    // Names of the atoms: QuickTime File Format, user data (title and comment).
    String bytes = Files.readString(film, StandardCharsets.ISO_8859_1);
    String title =
        new String("Café set".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    assertThat(bytes.indexOf("\u00a9nam")).isPositive().isLessThan(bytes.indexOf(title));
    assertThat(bytes.indexOf("\u00a9cmt"))
        .isPositive()
        .isLessThan(bytes.indexOf("Not a diagnosis."));
  }

  @Test
  void sameFramesGiveTheSameFile() throws IOException {
    Path a = TestFilm.moving(folder.resolve("a.mp4"), TestFilm.evenTimes(10));
    Path b = TestFilm.moving(folder.resolve("b.mp4"), TestFilm.evenTimes(10));
    assertThat(FileDigest.of(a)).isEqualTo(FileDigest.of(b));
  }

  @Test
  void oddSizesAreMadeEven() throws IOException {
    Path film = TestFilm.quarters(folder.resolve("odd.mp4"), 33, 47, 3);
    try (Clip clip = read(film)) {
      assertThat(clip.info().widthPx()).isEqualTo(34);
      assertThat(clip.info().heightPx()).isEqualTo(48);
    }
  }

  @Test
  void equalTimesStillRise() throws IOException {
    Path film = TestFilm.moving(folder.resolve("a.mp4"), 0, 0.1, 0.1, 0.1, 0.2);
    try (Clip clip = read(film)) {
      double last = -1;
      for (int n = 0; n < 5; n++) {
        double time = clip.next().orElseThrow().timeS();
        assertThat(time).isGreaterThan(last);
        last = time;
      }
    }
  }

  @Test
  void withoutPicturesNoFileIsLeft() throws IOException {
    TestFilm.writer(folder.resolve("a.mp4"), 64, 48).close();
    assertThat(names()).isEmpty();
  }

  @Test
  void refusesFoldersThatAreNotThere() {
    assertThat(ClipWriter.open(folder.resolve("no").resolve("a.mp4"), 64, 48, 30))
        .isInstanceOf(WriterOpening.Refused.class);
    assertThat(ClipWriter.open(folder, 64, 48, 30)).isInstanceOf(WriterOpening.Refused.class);
  }

  @Test
  void refusesPicturesOfAnotherSize() throws IOException {
    try (ClipWriter writer = TestFilm.writer(folder.resolve("a.mp4"), 64, 48);
        Mat image = TestFilm.quarters(32, 48)) {
      assertThatThrownBy(() -> writer.write(image, 0))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("64 x 48");
    }
  }

  private java.util.List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
