package shinline.cli.report;

import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;

/**
 * What to say to the athlete about a fault, and what the number beside it counts. Common practice
 * in our own words; one thing to do, not a list.
 */
final class Cue {
  private Cue() {}

  /** A heading: what to do, in a few words. */
  static String title(Flag flag) {
    return switch (flag.kind()) {
      case LEAN_GROWS -> "Keep the chest where it started";
      case HIPS_FIRST -> "Chest and hips up together";
      case BACK_ROUNDS -> "Stay long through the back";
      case BACK_ARCHES -> "Ribs down, no arch";
      case HINGE_SHIFT -> "Sink straight down, do not sit back";
      case HEEL_RISE -> "Front heel stays down";
      case FOREFOOT_RISE -> "Front toes stay down";
      case REAR_PUSH -> "Front leg does the work";
      case SHALLOW -> "Same depth every rep";
      case LOWERING_RUSHED -> "Slow the way down";
      case HOLD_SKIPPED -> "Own the bottom";
      case DRIVE_SLOW -> "Drive up with intent";
      case WOBBLE -> "Quiet knee, quiet hips";
      case SHIN_OFF_TARGET ->
          wantsMore(flag) ? "Let the knee travel further" : "Keep the shin more upright";
    };
  }

  /** One sentence to the athlete. */
  static String sentence(Flag flag) {
    return switch (flag.kind()) {
      case LEAN_GROWS ->
          "Fix your eyes on a spot ahead and lower as if sliding down a wall; stop the set when the"
              + " chest starts to drop.";
      case HIPS_FIRST ->
          "Out of the bottom, push the floor away and lead with the chest; if the hips shoot up"
              + " first, take weight off.";
      case BACK_ROUNDS ->
          "Breathe in at the top, brace the belly, and think tall from tailbone to neck all the way"
              + " down.";
      case BACK_ARCHES ->
          "Squeeze the rear glute and pull the ribs toward the belt before you lower.";
      case HINGE_SHIFT ->
          "Let the front knee bend as soon as the hips drop; the rear knee goes toward the floor,"
              + " not behind you.";
      case HEEL_RISE ->
          "Press heel, big-toe ball and little-toe ball into the floor; go only as far forward as"
              + " the heel allows.";
      case FOREFOOT_RISE ->
          "Spread the toes and keep the balls of the foot heavy, above all as you start to drive.";
      case REAR_PUSH ->
          "Rest the rear foot as light as you can; start the drive by pushing the front foot"
              + " through the floor.";
      case SHALLOW ->
          "Take the rear knee to the same height each time; end the set when you cannot get there.";
      case LOWERING_RUSHED ->
          "Count the seconds out loud on the way down; you lower, the weight does not drop.";
      case HOLD_SKIPPED -> "Stop dead at the bottom and count before you drive.";
      case DRIVE_SLOW ->
          "Every drive as fast as you can with the foot flat; end the set when speed goes.";
      case WOBBLE ->
          "Slow down, widen the stance by a hand, and touch a support until the knee stays still.";
      case SHIN_OFF_TARGET ->
          wantsMore(flag)
              ? "Let the knee travel further forward over the foot before the hips go down, heel"
                  + " flat."
              : "Keep the shin back: lower straight down, or step the front foot a little further"
                  + " ahead.";
    };
  }

  /** What the value of a flag counts; a colon and the value follow. */
  static String counts(Flag flag) {
    return switch (flag.kind()) {
      case LEAN_GROWS -> "Extra forward lean";
      case HIPS_FIRST -> "Lean added on the way up";
      case BACK_ROUNDS -> "Back rounder than in standing, of its length";
      case BACK_ARCHES -> "Back hollower than in standing, of its length";
      case HINGE_SHIFT -> "Extra bend at the hip since rep 1";
      case HEEL_RISE -> "Heel above the floor";
      case FOREFOOT_RISE -> "Toes above the floor";
      case REAR_PUSH -> "Rear knee opens more than usual by";
      case SHALLOW -> "Depth, of this set's full depth";
      case LOWERING_RUSHED -> "Time to lower";
      case HOLD_SKIPPED -> "Time at the bottom";
      case DRIVE_SLOW -> "Drive, of this set's fastest";
      case WOBBLE -> "Sway of knee and hip";
      case SHIN_OFF_TARGET ->
          flag.unit() == MeasureUnit.DEGREES ? "Shin forward of vertical" : "Knee past the toe";
    };
  }

  /** Whether a flag is raised by a value that is too small. */
  static boolean wantsMore(Flag flag) {
    return flag.value() < flag.limit();
  }
}
