package shinline.metrics.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AdvisorTest {

  static Stream<AdviceCase> cases() throws IOException {
    return AdviceCase.all().stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void asWorkedByHand(AdviceCase worked) {
    Advice advice = new Advisor(worked.ladder).advise(worked.history(), worked.asOf);

    assertThat(AdviceCase.text(advice)).isEqualTo(worked.next);
    assertThat(advice.earliest().map(Object::toString).orElse("")).isEqualTo(worked.earliest);
    assertThat(advice.missing().stream().map(AdviceCase::word).toList()).isEqualTo(worked.missing);
    assertThat(advice.goodUntil()).isEqualTo(worked.asOf.plusDays(10));
    assertThat(advice.because()).isNotEmpty();
    if (!worked.lines.isEmpty()) {
      List<String> rests = advice.because().stream().flatMap(b -> b.lines().stream()).toList();
      assertThat(rests).containsExactlyInAnyOrderElementsOf(worked.lines);
    }
  }

  /** The table is only worth something whole. */
  @Test
  void manyCasesEachWithAnAnswer() throws IOException {
    assertThat(AdviceCase.all()).hasSizeGreaterThanOrEqualTo(60);
    assertThat(AdviceCase.all()).noneMatch(c -> c.next.isEmpty());
    assertThat(AdviceCase.all().stream().map(c -> c.next.split(" ")[0]).distinct())
        .containsExactlyInAnyOrder(
            Stream.of(Decision.values()).map(AdviceCase::word).toArray(String[]::new));
  }
}
