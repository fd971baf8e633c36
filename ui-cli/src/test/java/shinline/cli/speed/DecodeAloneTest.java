package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DecodeAloneTest {
  private static final Path SAMPLE = Path.of("..", "sample-clips", "gym1-bench-clean.mp4");

  @Test
  void decodesEveryPictureOnAsManyThreadsAsAsked() throws Exception {
    for (int threads = 1; threads <= 2; threads++) {
      DecodeAlone all = DecodeAlone.read(SAMPLE, threads);
      assertThat(all.pictures()).isEqualTo(767);
      assertThat(all.fps()).isBetween(29.9, 30.1);
      assertThat(all.playsS()).isBetween(25.5, 25.7);
      assertThat(all.heightPx()).isEqualTo(540);
    }
  }
}
