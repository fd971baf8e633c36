package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Units;
import shinline.metrics.fault.FlagKind;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.FrameStamp;

class KeptFramesTest {
  /** Grey levels, mean over a picture: two compressions differ in the finest detail. */
  private static final double ALIKE = 3;

  @TempDir private Path folder;
  private Path film;
  private final Set<Integer> readAgain = new TreeSet<>();
  private int openings;

  /** Notes what a second reading is asked for. */
  private final ClipReader reader =
      (file, options, choice) -> {
        openings++;
        IntStream.range(0, NoiseFilm.FRAMES)
            .filter(i -> choice.wants(new FrameStamp(i, NoiseFilm.timeS(i))))
            .forEach(readAgain::add);
        return ClipReader.standard().open(file, options, choice);
      };

  @BeforeEach
  void write() throws IOException {
    film = folder.resolve("set.mp4");
    NoiseFilm.write(film);
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void picturesOfKeptFramesAreThoseOfASecondReading(Face face) throws IOException {
    RepPictures again = pictures(StandingSet.measured(), face);
    assertThat(openings).isEqualTo(1);
    assertThat(readAgain).contains(StandingSet.FAULT_FRAME);
    RepPictures kept = pictures(KeptNoise.measured(film, frame -> true, 0), face);
    assertThat(openings).as("not opened for what was kept").isEqualTo(1);
    alike(kept, again);
  }

  @Test
  void onlyFramesThatWereNotKeptAreReadAgain() throws IOException {
    RepPictures again = pictures(StandingSet.measured(), Face.SHOWN);
    Set<Integer> all = Set.copyOf(readAgain);
    assertThat(all).hasSizeGreaterThan(1);
    readAgain.clear();
    RepPictures some =
        pictures(
            KeptNoise.measured(film, frame -> frame != StandingSet.FAULT_FRAME, 0), Face.SHOWN);
    assertThat(readAgain).containsExactly(StandingSet.FAULT_FRAME);
    alike(some, again);
  }

  @Test
  void aPartThatDoesNotHoldThePictureIsNotDrawnOn() throws IOException {
    RepPictures again = pictures(StandingSet.measured(), Face.SHOWN);
    Set<Integer> all = Set.copyOf(readAgain);
    readAgain.clear();
    RepPictures elsewhere = pictures(KeptNoise.measured(film, frame -> true, 180), Face.SHOWN);
    assertThat(readAgain).isEqualTo(all);
    alike(elsewhere, again);
  }

  /** Several are drawn at a time. */
  @Test
  void eachFrameHasAnImageOfItsOwn() throws IOException {
    ClipReport.Measured report = KeptNoise.measured(film, frame -> true, 0);
    KeptFrames frames = new KeptFrames(report.kept(), new SetScene(report), Optional.empty());
    int frame = StandingSet.FAULT_FRAME;
    BufferedImage one = frames.picture(frame, NoiseFilm.timeS(frame)).orElseThrow();
    int[] before = one.getRGB(0, 0, one.getWidth(), one.getHeight(), null, 0, one.getWidth());
    BufferedImage other = frames.picture(frame - 1, NoiseFilm.timeS(frame - 1)).orElseThrow();
    assertThat(other).isNotSameAs(one);
    assertThat(one.getRGB(0, 0, one.getWidth(), one.getHeight(), null, 0, one.getWidth()))
        .isEqualTo(before);
  }

  @Test
  void manyAtATimeAreDrawnAsOneAfterTheOther() throws Exception {
    ClipReport.Measured report = KeptNoise.measured(film, frame -> true, 0);
    ForkJoinPool one = new ForkJoinPool(1);
    ForkJoinPool many = new ForkJoinPool(8);
    try {
      RepPictures alone = one.submit(() -> pictures(report, Face.SHOWN)).get();
      RepPictures together = many.submit(() -> pictures(report, Face.SHOWN)).get();
      assertThat(together.all()).hasSameSizeAs(alone.all());
      for (int i = 0; i < alone.all().size(); i++) {
        assertThat(together.all().get(i).jpeg()).isEqualTo(alone.all().get(i).jpeg());
      }
    } finally {
      one.shutdown();
      many.shutdown();
    }
  }

  private RepPictures pictures(ClipReport.Measured report, Face face) {
    return ClipPictures.of(reader, film, report, OptionalDouble.empty(), Units.METRIC, face);
  }

  private static void alike(RepPictures some, RepPictures others) throws IOException {
    assertThat(some.all()).hasSameSizeAs(others.all());
    assertThat(some.bottom(1)).isPresent();
    assertThat(some.flag(1, FlagKind.HEEL_RISE)).isPresent();
    assertThat(some.moments()).hasSameSizeAs(others.moments());
    for (int i = 0; i < some.all().size(); i++) {
      alike(some.all().get(i), others.all().get(i));
    }
    for (int i = 0; i < some.moments().size(); i++) {
      assertThat(some.moments().get(i).when()).isEqualTo(others.moments().get(i).when());
      alike(some.moments().get(i).picture(), others.moments().get(i).picture());
    }
  }

  private static void alike(RepPicture one, RepPicture other) throws IOException {
    assertThat(List.of(one.rep(), one.flag(), one.altText()))
        .isEqualTo(List.of(other.rep(), other.flag(), other.altText()));
    BufferedImage a = ImageIO.read(new ByteArrayInputStream(one.jpeg()));
    BufferedImage b = ImageIO.read(new ByteArrayInputStream(other.jpeg()));
    assertThat(a.getWidth()).isEqualTo(b.getWidth());
    assertThat(a.getHeight()).isEqualTo(b.getHeight());
    long differences = 0;
    for (int y = 0; y < a.getHeight(); y++) {
      for (int x = 0; x < a.getWidth(); x++) {
        for (int shift = 0; shift < 24; shift += 8) {
          differences +=
              Math.abs((a.getRGB(x, y) >> shift & 0xFF) - (b.getRGB(x, y) >> shift & 0xFF));
        }
      }
    }
    assertThat(differences / (3.0 * a.getWidth() * a.getHeight())).isLessThan(ALIKE);
  }
}
