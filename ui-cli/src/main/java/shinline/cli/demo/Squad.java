package shinline.cli.demo;

import java.util.List;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.load.LoadKind;
import shinline.metrics.training.Pain;

/** The invented squad: nobody of these names trains anywhere. */
final class Squad {
  /** Folder of the last session: an invented place. */
  static final String VENUE = "evening-at-tallow-yard";

  private Squad() {}

  static List<Story> all() {
    return List.of(goesWell(), stalls(), asymmetric(), inPain(), awayToday(), begins());
  }

  /** Adds load week by week and meets every set. */
  private static Story goesWell() {
    return new Story(
        Words.say("demo.athlete.goes-well"),
        DemoClip.CLEAN.heightCm(),
        74,
        "bench-dumbbells",
        "over-toe",
        4,
        "2-1.5-X",
        LoadKind.EACH_HAND,
        new Story.Leg(
            List.of(10, 12, 14, 16, 18, 18),
            List.of(0, 0, 1, 0, 0, 0),
            List.of(17.5, 18.4, 19.8, 20.9, 21.6, 22.4),
            List.of(9.5, 8.1, 6.4, 4.2, 3.3, 2.4),
            List.of(0.36, 0.37, 0.39, 0.40, 0.41, 0.42)),
        new Story.Leg(
            List.of(10, 12, 14, 16, 18, 18),
            List.of(0, 0, 0, 1, 0, 0),
            List.of(18.1, 18.9, 20.2, 21.5, 22.0, 22.6),
            List.of(8.8, 7.7, 6.0, 3.9, 2.8, 1.8),
            List.of(0.37, 0.38, 0.39, 0.41, 0.42, 0.43)),
        Pain.NO,
        Optional.of(DemoClip.CLEAN),
        true);
  }

  /** The same load for weeks, and always a rep or two short of clean. */
  private static Story stalls() {
    return new Story(
        Words.say("demo.athlete.stalls"),
        DemoClip.SHALLOW.heightCm(),
        82,
        "bench-dumbbells",
        "over-toe",
        3,
        "1.5-1-X",
        LoadKind.EACH_HAND,
        new Story.Leg(
            List.of(14, 16, 16, 16, 16, 16),
            List.of(0, 2, 2, 2, 2, 2),
            List.of(26.8, 27.2, 26.5, 27.4, 26.9, 27.1),
            List.of(5.2, 7.9, 8.8, 8.1, 9.2, 8.6),
            List.of(0.44, 0.42, 0.41, 0.42, 0.40, 0.41)),
        new Story.Leg(
            List.of(14, 16, 16, 16, 16, 16),
            List.of(0, 1, 2, 1, 2, 1),
            List.of(27.9, 28.3, 27.7, 28.8, 28.2, 28.5),
            List.of(4.1, 5.8, 7.2, 6.4, 7.7, 6.9),
            List.of(0.45, 0.43, 0.43, 0.42, 0.42, 0.41)),
        Pain.NO,
        Optional.of(DemoClip.SHALLOW),
        true);
  }

  /** The right leg carries less, goes less deep and is slower. */
  private static Story asymmetric() {
    return new Story(
        Words.say("demo.athlete.uneven"),
        171,
        66,
        "bench-dumbbells",
        "upright",
        8,
        "3-0-X",
        LoadKind.EACH_HAND,
        new Story.Leg(
            List.of(12, 14, 14, 16, 16, 18),
            List.of(0, 0, 0, 1, 0, 0),
            List.of(6.8, 7.2, 6.5, 7.0, 6.1, 6.6),
            List.of(5.5, 5.0, 4.4, 3.8, 3.5, 3.1),
            List.of(0.41, 0.42, 0.42, 0.43, 0.44, 0.45)),
        new Story.Leg(
            List.of(10, 10, 12, 12, 12, 14),
            List.of(1, 2, 1, 3, 2, 3),
            List.of(9.4, 9.9, 9.0, 10.2, 9.6, 9.8),
            List.of(12.4, 12.9, 11.8, 12.2, 11.5, 11.9),
            List.of(0.35, 0.34, 0.35, 0.34, 0.35, 0.34)),
        Pain.NO,
        Optional.empty(),
        true);
  }

  /** Said in the last session that it hurts. */
  private static Story inPain() {
    return new Story(
        Words.say("demo.athlete.in-pain"),
        186,
        88,
        "bench-dumbbells",
        "over-toe",
        6,
        "3-0-X",
        LoadKind.EACH_HAND,
        new Story.Leg(
            List.of(16, 18, 20, 20, 22, 22),
            List.of(0, 0, 1, 0, 1, 2),
            List.of(20.4, 21.0, 21.7, 22.3, 22.9, 20.2),
            List.of(4.4, 3.9, 3.3, 3.0, 2.6, 8.8),
            List.of(0.43, 0.43, 0.42, 0.43, 0.42, 0.37)),
        new Story.Leg(
            List.of(16, 18, 20, 20, 22, 22),
            List.of(0, 0, 0, 0, 0, 1),
            List.of(20.1, 20.8, 21.3, 22.0, 22.4, 22.1),
            List.of(4.9, 4.3, 3.6, 3.4, 2.9, 3.5),
            List.of(0.44, 0.44, 0.43, 0.43, 0.43, 0.42)),
        Pain.YES,
        Optional.empty(),
        true);
  }

  /** Trains with the bar, and did not come to the last session. */
  private static Story awayToday() {
    return new Story(
        Words.say("demo.athlete.away"),
        176,
        70,
        "floor-bar",
        "over-toe",
        4,
        "2-0-X",
        LoadKind.BAR,
        new Story.Leg(
            List.of(40, 45, 50, 50, 55, 55),
            List.of(0, 0, 0, 1, 0, 0),
            List.of(21.2, 21.5, 22.0, 22.4, 22.1, 22.1),
            List.of(6.1, 5.6, 5.2, 5.0, 4.7, 4.7),
            List.of(0.49, 0.48, 0.50, 0.51, 0.52, 0.52)),
        new Story.Leg(
            List.of(40, 45, 50, 50, 55, 55),
            List.of(0, 0, 0, 0, 0, 0),
            List.of(20.6, 21.1, 21.4, 21.9, 22.0, 22.0),
            List.of(6.6, 6.0, 5.7, 5.3, 4.9, 4.9),
            List.of(0.50, 0.50, 0.51, 0.52, 0.54, 0.54)),
        Pain.NO,
        Optional.empty(),
        false);
  }

  /** New to it: no load yet, and the last reps of a set go shallow. */
  private static Story begins() {
    return new Story(
        Words.say("demo.athlete.begins"),
        DemoClip.FLOOR.heightCm(),
        69,
        "floor-supported",
        "over-toe",
        5,
        "1-1-X",
        LoadKind.NONE,
        new Story.Leg(
            List.of(0, 0, 0, 0, 0, 0),
            List.of(3, 3, 2, 2, 1, 2),
            List.of(15.2, 16.1, 17.3, 18.0, 18.8, 19.2),
            List.of(24.0, 21.5, 18.2, 15.4, 12.8, 13.6),
            List.of(0.33, 0.34, 0.35, 0.36, 0.37, 0.37)),
        new Story.Leg(
            List.of(0, 0, 0, 0, 0, 0),
            List.of(3, 2, 2, 2, 1, 3),
            List.of(15.8, 16.7, 17.7, 18.6, 19.5, 18.4),
            List.of(23.2, 20.4, 17.9, 14.6, 12.1, 15.0),
            List.of(0.34, 0.34, 0.35, 0.37, 0.37, 0.36)),
        Pain.NO,
        Optional.of(DemoClip.FLOOR),
        true);
  }
}
