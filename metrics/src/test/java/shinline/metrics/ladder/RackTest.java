package shinline.metrics.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

class RackTest {

  private static Mass kg(String value) {
    return Mass.of(value, MassUnit.KG);
  }

  private static BarAndDiscs bar(String... discs) {
    return new BarAndDiscs(kg("20"), List.of(discs).stream().map(RackTest::kg).toList());
  }

  @Test
  void discsGoOnInPairs() {
    BarAndDiscs bar = bar("1.25", "5");
    assertThat(bar.atMost(kg("38.4"))).contains(kg("37.5"));
    assertThat(bar.atMost(kg("20"))).contains(kg("20"));
    assertThat(bar.atMost(kg("19.99"))).isEmpty();
    assertThat(bar.nextAbove(kg("37.5"))).contains(kg("40"));
    assertThat(bar.nextAbove(kg("3"))).contains(kg("20"));
  }

  /** Pairs of 10 and 15 kg: 20, 40, 50, 60, 70 ... but never 30. */
  @Test
  void gapsBetweenPairs() {
    BarAndDiscs bar = bar("15", "10");
    assertThat(bar.atMost(kg("39"))).contains(kg("20"));
    assertThat(bar.nextAbove(kg("20"))).contains(kg("40"));
    assertThat(bar.nextAbove(kg("40"))).contains(kg("50"));
    assertThat(bar.atMost(kg("69.9"))).contains(kg("60"));
  }

  /** What is at hand below and the next above have nothing at hand between them. */
  @Test
  void neighbours() {
    Random random = new Random(7);
    BarAndDiscs bar = bar("1.25", "2.5", "7.5");
    for (int i = 0; i < 300; i++) {
      Mass asked = kg(String.valueOf(20 + random.nextInt(2000) / 10.0));
      Mass below = bar.atMost(asked).orElseThrow();
      Mass above = bar.nextAbove(asked).orElseThrow();
      assertThat(below).isLessThanOrEqualTo(asked);
      assertThat(above).isGreaterThan(asked);
      assertThat(above.value().subtract(below.value())).isEqualByComparingTo("2.5");
    }
  }

  @Test
  void poundsAndKilogramsDoNotMix() {
    BarAndDiscs bar = bar("1.25");
    assertThat(bar.atMost(Mass.of("50", MassUnit.LB))).contains(kg("22.5"));
    assertThatThrownBy(() -> new BarAndDiscs(kg("20"), List.of(Mass.of("5", MassUnit.LB))))
        .hasMessageContaining("5 lb");
  }

  @Test
  void dumbbells() {
    DumbbellRack rack = new DumbbellRack(List.of(kg("24"), kg("10"), kg("16")));
    assertThat(rack.atMost(kg("23.9"))).contains(kg("16"));
    assertThat(rack.atMost(kg("9"))).isEmpty();
    assertThat(rack.nextAbove(kg("16"))).contains(kg("24"));
    assertThat(rack.nextAbove(kg("24"))).isEmpty();
    assertThat(rack.lightest()).isEqualTo(kg("10"));
  }
}
