package shinline.cli.demo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shinline.cli.record.AthleteName;
import shinline.metrics.load.LoadKind;
import shinline.metrics.track.Side;
import shinline.metrics.training.Pain;

/**
 * What an invented athlete did over six weeks: one session a week, two sets a leg, and the session
 * of the last day, which goes on where the sixth week ended. Names, numbers and all are made up.
 *
 * @param step of the ladder
 * @param target shin position asked for
 * @param reps asked in each set
 * @param tempo asked for, in a target file's notation
 * @param left what the left leg did
 * @param right what the right leg did
 * @param pain what was said in the session of the last day; before it none was felt
 * @param clip of the right leg on the last day; without one that leg was counted by eye
 * @param came whether they came on the last day
 */
record Story(
    String name,
    int heightCm,
    int massKg,
    String step,
    String target,
    int reps,
    String tempo,
    LoadKind kind,
    Leg left,
    Leg right,
    Pain pain,
    Optional<DemoClip> clip,
    boolean came) {
  static final int WEEKS = 6;
  static final int SETS = 2;

  /**
   * One leg over the weeks, oldest first.
   *
   * @param loadKg 0 for none
   * @param notClean reps of a session's second set that were not clean
   * @param shinDeg mean shin angle at the bottom
   * @param thighDeg mean thigh angle at the bottom
   * @param speedMps mean drive speed, or bar speed with a bar
   */
  record Leg(
      List<Integer> loadKg,
      List<Integer> notClean,
      List<Double> shinDeg,
      List<Double> thighDeg,
      List<Double> speedMps) {
    Leg {
      for (List<?> weeks : List.of(loadKg, notClean, shinDeg, thighDeg, speedMps)) {
        if (weeks.size() != WEEKS) {
          throw new IllegalArgumentException(weeks.size() + " weeks of " + WEEKS);
        }
      }
    }
  }

  Leg of(Side leg) {
    return leg == Side.LEFT ? left : right;
  }

  AthleteName athlete() {
    return new AthleteName(name);
  }

  /** For a file name. */
  String shortName() {
    return name.split(" ", -1)[0].toLowerCase(Locale.ROOT);
  }
}
