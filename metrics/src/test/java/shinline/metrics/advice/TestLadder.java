package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.ladder.AtHand;
import shinline.metrics.ladder.BarAndDiscs;
import shinline.metrics.ladder.DumbbellRack;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Leaving;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;
import shinline.metrics.load.OneRepMax;

/** The ladder the cases are worked out with; its numbers are common practice. */
final class TestLadder {
  private static final List<String> TARGETS = List.of("upright", "over-toe", "past-toe");
  private static final StepLoad NONE = new StepLoad.Unloaded();

  private TestLadder() {}

  static Ladder standard() {
    return withDumbbells(
        new DumbbellRack(
            IntStream.rangeClosed(1, 20)
                .mapToObj(i -> Mass.of(String.valueOf(2 * i), MassUnit.KG))
                .toList()));
  }

  static Ladder withDumbbells(DumbbellRack kilograms) {
    return new Ladder(
        List.of(
            step("floor-supported", TARGETS, "3x8", "4-4-X", NONE, new Leaving.AtOnce()),
            step(
                "bench-supported",
                TARGETS,
                "3x8",
                "4-4-X",
                NONE,
                new Leaving.GateOnRecord("hip-flexor-range")),
            step("bench-bodyweight", TARGETS, "3x8", "4-4-X", NONE, new Leaving.AtOnce()),
            step(
                "bench-dumbbells",
                TARGETS,
                "3x8 3x6 3x5",
                "3-0-X",
                new StepLoad.Weekly(
                    LoadKind.EACH_HAND,
                    each("2", "5"),
                    new StepLoad.FirstLoad.OfBodyMass(BigDecimal.valueOf(5))),
                new Leaving.LoadReached(each("32", "70"), Optional.of(BigDecimal.valueOf(40)))),
            step(
                "floor-bar",
                TARGETS,
                "4x4 5x5 3x5",
                "2-0-X",
                new StepLoad.Weekly(
                    LoadKind.BAR,
                    each("2.5", "5"),
                    new StepLoad.FirstLoad.OfBothHands(BigDecimal.valueOf(60))),
                new Leaving.WeeksTrained(12)),
            step(
                "short-range",
                List.of("over-toe"),
                "4x4",
                "X",
                new StepLoad.OfThreeRepMaximum(
                    LoadKind.BAR,
                    "short-range",
                    28,
                    BigDecimal.valueOf(100),
                    BigDecimal.valueOf(5),
                    List.of(share("4x4", 110), share("4x3", 115), share("4x2", 120))),
                new Leaving.Never())),
        MassUnit.KG,
        OneRepMax.EPLEY,
        atHand(kilograms),
        new AdviceLimits(
            new AdviceLimits.Breaks(42, 21, 10, BigDecimal.valueOf(50), BigDecimal.valueOf(80)),
            new AdviceLimits.Raises(7, 2, BigDecimal.TEN, 2),
            new AdviceLimits.Sets(1, BigDecimal.valueOf(75), BigDecimal.valueOf(50)),
            BigDecimal.valueOf(90),
            BigDecimal.valueOf(60),
            10));
  }

  private static AtHand atHand(DumbbellRack kilograms) {
    BarAndDiscs kgBar = bar("20", MassUnit.KG, "1.25", "2.5", "5", "10", "15", "20", "25");
    BarAndDiscs lbBar = bar("45", MassUnit.LB, "2.5", "5", "10", "25", "35", "45");
    DumbbellRack pounds =
        new DumbbellRack(
            IntStream.rangeClosed(1, 18)
                .mapToObj(i -> Mass.of(String.valueOf(5 * i), MassUnit.LB))
                .toList());
    return new AtHand(
        Map.of(
            MassUnit.KG, new AtHand.Racks(kilograms, kgBar, kgBar),
            MassUnit.LB, new AtHand.Racks(pounds, lbBar, lbBar)));
  }

  private static BarAndDiscs bar(String bar, MassUnit unit, String... discs) {
    return new BarAndDiscs(
        Mass.of(bar, unit), List.of(discs).stream().map(d -> Mass.of(d, unit)).toList());
  }

  private static Map<MassUnit, Mass> each(String kg, String lb) {
    return Map.of(MassUnit.KG, Mass.of(kg, MassUnit.KG), MassUnit.LB, Mass.of(lb, MassUnit.LB));
  }

  private static StepLoad.Share share(String scheme, int pct) {
    return new StepLoad.Share(scheme(scheme), BigDecimal.valueOf(pct));
  }

  private static Step step(
      String id,
      List<String> targets,
      String schemes,
      String tempo,
      StepLoad load,
      Leaving leaving) {
    return new Step(
        id,
        id,
        targets,
        List.of(schemes.split(" ")).stream().map(TestLadder::scheme).toList(),
        tempo,
        load,
        leaving,
        List.of());
  }

  static Scheme scheme(String word) {
    String[] parts = word.split("x");
    return new Scheme(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }
}
