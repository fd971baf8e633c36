package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.file.Claim;
import shinline.cli.file.FlagImages;
import shinline.cli.file.OutputFiles;
import shinline.cli.format.ResultJson;
import shinline.cli.outcome.Progress;
import shinline.cli.text.Units;
import shinline.metrics.fault.FlagKind;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;

class ClipPicturesTest {
  /** A millisecond: a frame's time is a frame's own. */
  private static final double TIME_TOLERANCE_S = 0.001;

  @TempDir private Path folder;

  @Test
  void aFaultAndABottomHaveTheirPictures() throws IOException {
    RepPictures pictures = pictures(folder.resolve("set.mp4"));
    assertThat(pictures.all()).hasSize(2);
    assertThat(pictures.bottom(1)).isPresent();
    RepPicture fault = pictures.flag(1, FlagKind.HEEL_RISE).orElseThrow();
    assertThat(fault.altText()).isEqualTo("Heel up 4.7 cm (limit 2.2 cm), rep 1, at 0.5 s.");
    BufferedImage decoded = ImageIO.read(new ByteArrayInputStream(fault.jpeg()));
    assertThat(decoded.getWidth()).isEqualTo(fault.widthPx());
    assertThat(decoded.getHeight()).isEqualTo(fault.heightPx());
  }

  @Test
  void faultsAreWrittenBesideTheResultAndNamedInIt() throws IOException {
    Path result = folder.resolve("mon.json");
    Path old = folder.resolve("mon-rep3-shallow.jpg");
    Path other = folder.resolve("tue-rep3-shallow.jpg");
    Path coachs = Files.createFile(folder.resolve("mon-rep4-shallow.jpg"));
    RepPictures pictures = pictures(folder.resolve("set.mp4"));
    FlagImages images;
    try (OutputFiles files = new OutputFiles(List.of())) {
      files.file(old, Claim.OURS).write(w -> w.write("of an earlier result"));
      files.file(other, Claim.OURS).write(w -> w.write("of another result"));
      images = new PictureFiles(result, files).write(pictures);
    }
    assertThat(coachs).exists();
    assertThat(images.fileName(1, FlagKind.HEEL_RISE))
        .isEqualTo(Optional.of("mon-rep1-heel-rise.jpg"));
    assertThat(images.fileName(1, FlagKind.SHALLOW)).isEmpty();
    assertThat(folder.resolve("mon-rep1-heel-rise.jpg")).isNotEmptyFile();
    assertThat(old).doesNotExist();
    assertThat(other).exists();
    StringWriter json = new StringWriter();
    ResultJson.write(StandingSet.measured(), images, json);
    assertThat(json.toString()).contains("\"image\" : \"mon-rep1-heel-rise.jpg\"");
  }

  @Test
  void aClipThatWentAwayHasNoPictures() {
    assertThat(
            ClipPictures.of(
                    folder.resolve("gone.mp4"),
                    StandingSet.measured(),
                    OptionalDouble.empty(),
                    Units.METRIC,
                    Face.SHOWN)
                .all())
        .isEmpty();
  }

  @Test
  void anAnnotatedClipKeepsFramesAndTheirTimes() throws IOException {
    Path clip = folder.resolve("set.mp4");
    Path drawn = folder.resolve("set-drawn.mp4");
    NoiseFilm.write(clip);
    try (OutputFiles files = new OutputFiles(List.of(clip))) {
      AnnotatedClip.write(
          files.file(drawn, Claim.NAMED),
          clip,
          StandingSet.measured(),
          OptionalDouble.empty(),
          Units.METRIC,
          Face.BLURRED,
          Progress.silent());
    }
    List<Double> times = new ArrayList<>();
    ClipOpening opening = ClipReader.standard().open(drawn, ClipOptions.defaults());
    try (Clip open = opening.fold(ClipOpening.Opened::clip, r -> unreadable(r.toString()))) {
      assertThat(open.info().widthPx()).isEqualTo(StandingSet.WIDTH);
      assertThat(open.info().heightPx()).isEqualTo(StandingSet.HEIGHT);
      for (Optional<Frame> next = open.next(); next.isPresent(); next = open.next()) {
        times.add(next.get().timeS());
      }
    }
    assertThat(times).hasSize(NoiseFilm.FRAMES);
    for (int i = 0; i < times.size(); i++) {
      assertThat(times.get(i))
          .isCloseTo(NoiseFilm.timeS(i), org.assertj.core.api.Assertions.within(TIME_TOLERANCE_S));
    }
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(clip, drawn);
    }
  }

  private static Clip unreadable(String reason) {
    throw new IllegalStateException(reason);
  }

  private static RepPictures pictures(Path clip) throws IOException {
    NoiseFilm.write(clip);
    return ClipPictures.of(
        clip, StandingSet.measured(), OptionalDouble.empty(), Units.METRIC, Face.SHOWN);
  }
}
