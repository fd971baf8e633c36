package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FourCoresTest {
  @Test
  void theLongestOfThePartsThatRunAtOnceCounts() {
    assertThat(new FourCores(1, 5, 3, 4, 0.5).wholeS()).isEqualTo(6.5);
    assertThat(new FourCores(1, 2, 3, 2.5, 0.5).wholeS()).isEqualTo(4.5);
    assertThat(new FourCores(1, 2, 3, 7, 0.5).wholeS()).isEqualTo(8.5);
  }
}
