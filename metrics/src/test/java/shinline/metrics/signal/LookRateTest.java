package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class LookRateTest {
  @Test
  void anEvenTrackHasItsOwnStep() {
    assertThat(LookRate.closeStepS(new double[] {0, 0.1, 0.2, 0.3})).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void looksFarApartInBetweenDoNotCount() {
    double[] times = new double[60];
    for (int i = 1; i < times.length; i++) {
      // A quick drive of ten looks in every thirty.
      times[i] = times[i - 1] + (i % 30 < 10 ? 1 / 15.0 : 2 / 15.0);
    }
    assertThat(LookRate.closeStepS(times)).isCloseTo(1 / 15.0, within(1e-9));
  }

  @Test
  void oneStepThatIsTooShortDoesNotCountEither() {
    double[] times = new double[60];
    for (int i = 1; i < times.length; i++) {
      times[i] = times[i - 1] + (i == 30 ? 0.001 : 0.1);
    }
    assertThat(LookRate.closeStepS(times)).isCloseTo(0.1, within(1e-9));
  }
}
