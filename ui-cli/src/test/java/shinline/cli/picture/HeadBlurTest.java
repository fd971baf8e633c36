package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.track.BodyPoint;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

class HeadBlurTest {
  private static final int EAR_X = 320;
  private static final int EAR_Y = 110;

  @Test
  void detailIsGoneAtTheHeadAndKeptElsewhere() {
    BufferedImage image = NoiseFilm.picture();
    double before = roughness(image, EAR_X, EAR_Y);
    double kneeBefore = roughness(image, 380, 290);
    blur(BodyPoint.values()).cover(image, 0.5);
    assertThat(roughness(image, EAR_X, EAR_Y)).isLessThan(0.15 * before);
    assertThat(roughness(image, 380, 290)).isEqualTo(kneeBefore);
  }

  @Test
  void theShouldersTellWhereAnUnseenHeadIs() {
    BufferedImage image = NoiseFilm.picture();
    double before = roughness(image, EAR_X, EAR_Y);
    blur(BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER, BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP)
        .cover(image, 0.5);
    assertThat(roughness(image, EAR_X, EAR_Y)).isLessThan(0.15 * before);
  }

  @Test
  void inAHandHeldClipTheHeadIsWhereItsOwnFrameShowsIt() {
    BufferedImage image = NoiseFilm.picture();
    double before = roughness(image, EAR_X - 100, EAR_Y + 60);
    double stillBefore = roughness(image, EAR_X + 30, EAR_Y);
    ClipReport.Measured still = StandingSet.measured();
    CameraPath camera = CameraPath.of(List.of(0.5), List.of(new Similarity(1, 0, 100, -60)));
    new HeadBlur(
            new SetScene(
                new ClipReport.Measured(
                    still.clip(),
                    still.set(),
                    still.warnings(),
                    camera,
                    Optional.empty(),
                    Optional.empty())))
        .cover(image, 0.5);
    assertThat(roughness(image, EAR_X - 100, EAR_Y + 60)).isLessThan(0.2 * before);
    assertThat(roughness(image, EAR_X + 30, EAR_Y)).isEqualTo(stillBefore);
  }

  @Test
  void longAfterTheLastLookMoreIsCovered() {
    BufferedImage soon = NoiseFilm.picture();
    BufferedImage late = NoiseFilm.picture();
    HeadBlur blur = blur(BodyPoint.values());
    double beside = roughness(soon, EAR_X + 130, EAR_Y);
    blur.cover(soon, StandingSet.LAST_LOOK_S);
    blur.cover(late, StandingSet.LAST_LOOK_S + 1);
    assertThat(roughness(soon, EAR_X + 130, EAR_Y)).isEqualTo(beside);
    assertThat(roughness(late, EAR_X + 130, EAR_Y)).isLessThan(0.15 * beside);
  }

  @Test
  void nothingIsLeftClearWhenTheHeadWasNeverSeen() {
    BufferedImage image = NoiseFilm.picture();
    double before = roughness(image, EAR_X, EAR_Y);
    blur(BodyPoint.FRONT_TOE).cover(image, 0.5);
    for (int x = 40; x < StandingSet.WIDTH - 40; x += 60) {
      assertThat(roughness(image, x, 240)).isLessThan(0.4 * before);
    }
  }

  private static HeadBlur blur(BodyPoint... seen) {
    return new HeadBlur(new SetScene(StandingSet.measured(seen)));
  }

  /** Variance of brightness in a square about a place. */
  private static double roughness(BufferedImage image, int cx, int cy) {
    double sum = 0;
    double squares = 0;
    int n = 0;
    for (int y = cy - 24; y < cy + 24; y++) {
      for (int x = cx - 24; x < cx + 24; x++) {
        double v = new Color(image.getRGB(x, y)).getGreen();
        sum += v;
        squares += v * v;
        n++;
      }
    }
    return squares / n - sum / n * (sum / n);
  }
}
