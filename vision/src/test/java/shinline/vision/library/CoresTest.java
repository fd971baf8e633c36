package shinline.vision.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CoresTest {
  @ParameterizedTest
  @CsvSource({"1,1,1", "2,1,1", "3,1,1", "4,2,2", "6,3,2", "8,4,2", "32,4,2"})
  void fewCoresAreSharedAndManyAreUsed(int count, int pose, int decoding) {
    Cores cores = new Cores(count);
    assertThat(cores.forPose()).isEqualTo(pose);
    assertThat(cores.forDecoding()).isEqualTo(decoding);
  }

  @ParameterizedTest
  @CsvSource({"1,1", "2,2", "3,2", "8,2"})
  void quickLooksWaitForPictures(int count, int decoding) {
    assertThat(new Cores(count).forDecodingBesideQuickLooks()).isEqualTo(decoding);
  }

  @Test
  void thereIsAtLeastOne() {
    assertThat(Cores.here().count()).isPositive();
    assertThatThrownBy(() -> new Cores(0)).isInstanceOf(IllegalArgumentException.class);
  }
}
