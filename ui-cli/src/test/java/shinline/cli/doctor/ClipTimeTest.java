package shinline.cli.doctor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shinline.cli.doctor.Health.State;

class ClipTimeTest {
  /** 10 s of clip, 15 looks and 30 pictures a second. */
  private static double seconds(double lookS, double pictureS, int cores) {
    return new ClipTime(0.5, lookS, pictureS, 0, cores, 15).seconds(10, 30);
  }

  private static final double ALWAYS = seconds(0, 0, 2);

  @Test
  void theSlowerOfTwoCountsWhereEachHasACore() {
    double looking = seconds(0.1, 0, 2) - ALWAYS;
    assertThat(looking).as("150 looks of 0.1 s and what is beside").isBetween(15.0, 20.0);
    assertThat(seconds(0, 0.01, 2) - ALWAYS)
        .as("300 pictures of 0.01 s")
        .isCloseTo(3, within(1e-9));
    assertThat(seconds(0.1, 0.01, 2)).isEqualTo(seconds(0.1, 0, 2));
    assertThat(seconds(0.1, 0.2, 2)).isEqualTo(seconds(0, 0.2, 2));
  }

  @Test
  void bothCountOnOneCore() {
    assertThat(seconds(0.1, 0.01, 1) - ALWAYS)
        .isCloseTo(seconds(0.1, 0, 1) + seconds(0, 0.01, 1) - 2 * ALWAYS, within(1e-9));
  }

  @Test
  void unsteadyLooksWidenTheTime() {
    ClipTime steady = new ClipTime(0.5, 0.05, 0.01, 0, 2, 15);
    ClipTime unsteady = new ClipTime(0.5, 0.05, 0.01, 0.4, 2, 15);
    assertThat(unsteady.seconds(30, 30)).isEqualTo(steady.seconds(30, 30));
    assertThat(unsteady.plusMinus(30, 30) - steady.plusMinus(30, 30))
        .isCloseTo(0.4 * steady.seconds(30, 30), within(1e-9));
  }

  @Test
  void aSlowComputerIsToldSo() {
    assertThat(Doctor.speed(new ClipTime(1, 0.05, 0.01, 0, 2, 15)).state()).isEqualTo(State.GOOD);
    Health slow = Doctor.speed(new ClipTime(1, 0.3, 0.01, 0, 2, 15));
    assertThat(slow.state()).isEqualTo(State.POOR);
    assertThat(slow.words()).contains("30 s", "overnight");
  }
}
