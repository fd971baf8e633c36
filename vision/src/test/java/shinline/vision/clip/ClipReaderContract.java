package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every reader of clips does; each reader's test extends this. */
abstract class ClipReaderContract {
  private static final Path FIXTURES = Path.of("src/test/resources/shinline/vision/clip/fixtures");
  private static final Path TURNED = Path.of("../sample-clips/gym4-floor-portrait-rotated.mp4");

  @TempDir Path folder;

  abstract ClipReader reader();

  private record Seen(ClipInfo info, List<Double> times, List<Long> pictures, ClipEnding ending) {}

  private Seen readAll(Path file, ClipOptions options) {
    return reader()
        .open(file, options)
        .fold(
            opened -> {
              try (Clip clip = opened.clip()) {
                List<Double> times = new ArrayList<>();
                List<Long> pictures = new ArrayList<>();
                for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
                  assertThat(f.get().index()).isEqualTo(times.size());
                  assertThat(f.get().image().cols()).isEqualTo(clip.info().widthPx());
                  assertThat(f.get().image().rows()).isEqualTo(clip.info().heightPx());
                  times.add(f.get().timeS());
                  byte[] bytes =
                      new byte[(int) (f.get().image().total() * f.get().image().elemSize())];
                  f.get().image().data().get(bytes);
                  CRC32 crc = new CRC32();
                  crc.update(bytes);
                  pictures.add(crc.getValue());
                }
                return new Seen(clip.info(), times, pictures, clip.ending());
              }
            },
            refused -> {
              throw new AssertionError(refused.reason());
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"hevc8.mp4", "hevc10.mov", "bframes.mp4", "editlist.mp4"})
  void readsPhoneFormatsWithRisingTimesToTheEnd(String name) {
    Seen seen = readAll(FIXTURES.resolve(name), ClipOptions.defaults());
    assertThat(seen.times()).hasSizeGreaterThan(4).isSorted().doesNotHaveDuplicates();
    assertThat(seen.times().get(0)).isZero();
    assertThat(seen.ending()).isInstanceOf(ClipEnding.Complete.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"hevc10.mov", "bframes.mp4"})
  void readsTheSameTwice(String name) {
    Path file = FIXTURES.resolve(name);
    assertThat(readAll(file, ClipOptions.defaults()).pictures())
        .isEqualTo(readAll(file, ClipOptions.defaults()).pictures());
  }

  @Test
  void appliesTheFilesTurnAndTheOneAskedForOnTop() {
    reader()
        .open(TURNED, ClipOptions.defaults().turnedMore(2))
        .fold(
            opened -> {
              try (Clip clip = opened.clip()) {
                assertThat(clip.info().widthPx()).isEqualTo(540);
                assertThat(clip.info().heightPx()).isEqualTo(960);
                assertThat(clip.info().rotationDeg()).isEqualTo(90);
                Frame frame = clip.next().orElseThrow();
                assertThat(frame.image().rows()).isEqualTo(960);
              }
              return true;
            },
            refused -> {
              throw new AssertionError(refused.reason());
            });
  }

  @Test
  void slowMotionTimesAreDividedByTheFactor() {
    Path file = FIXTURES.resolve("bframes.mp4");
    Seen plain = readAll(file, ClipOptions.defaults());
    Seen slow = readAll(file, ClipOptions.defaults().capturedAt(8 * plain.info().playbackFps()));
    int last = plain.times().size() - 1;
    assertThat(slow.times().get(last)).isCloseTo(plain.times().get(last) / 8, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    // Microsecond times in the file.
    return org.assertj.core.api.Assertions.within(2e-6);
  }

  @Test
  void aClipCutShortIsNoticedOrRefused() throws IOException {
    byte[] whole = Files.readAllBytes(Path.of("../sample-clips/plain1-bench-shallow.mp4"));
    Path cut = folder.resolve("cut.mp4");
    Files.write(cut, Arrays.copyOf(whole, whole.length / 2));
    boolean noticed =
        reader()
            .open(cut, ClipOptions.defaults())
            .fold(
                opened -> {
                  try (Clip clip = opened.clip()) {
                    while (clip.next().isPresent()) {
                      // Read to the end.
                    }
                    return !(clip.ending() instanceof ClipEnding.Complete);
                  }
                },
                refused -> !refused.reason().isBlank() && !refused.advice().isBlank());
    assertThat(noticed).isTrue();
  }

  @Test
  void whatIsNoClipIsRefusedWithAReason() throws IOException {
    Path text = Files.writeString(folder.resolve("text.mp4"), "not a film");
    Path empty = Files.createFile(folder.resolve("empty.mp4"));
    for (Path file : List.of(text, empty, folder, folder.resolve("missing.mp4"))) {
      String reason =
          reader()
              .open(file, ClipOptions.defaults())
              .fold(
                  opened -> {
                    opened.clip().close();
                    return "";
                  },
                  refused -> refused.reason());
      assertThat(reason).as(String.valueOf(file.getFileName())).isNotBlank();
    }
  }

  @Test
  void closingEarlyEndsCleanly() {
    Optional<Frame> first =
        reader()
            .open(FIXTURES.resolve("bframes.mp4"), ClipOptions.defaults())
            .fold(
                opened -> {
                  try (Clip clip = opened.clip()) {
                    return clip.next();
                  }
                },
                refused -> Optional.empty());
    assertThat(first).isPresent();
  }
}
