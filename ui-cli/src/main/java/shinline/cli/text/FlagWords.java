package shinline.cli.text;

import shinline.metrics.result.FlagKind;

/** A few plain words for each fault. */
public final class FlagWords {
  private FlagWords() {}

  public static String of(FlagKind kind) {
    return switch (kind) {
      case LEAN_GROWS -> "leans more than before";
      case HIPS_FIRST -> "hips rise first";
      case BACK_ROUNDS -> "back may round";
      case BACK_ARCHES -> "back may over-arch";
      case HINGE_SHIFT -> "turns into a hinge";
      case HEEL_RISE -> "front heel lifts";
      case FOREFOOT_RISE -> "front forefoot lifts";
      case REAR_PUSH -> "rear foot pushes";
      case SHALLOW -> "shallow";
      case LOWERING_RUSHED -> "lowering rushed";
      case HOLD_SKIPPED -> "hold too short";
      case DRIVE_SLOW -> "drive slow";
      case WOBBLE -> "wobbles";
      case SHIN_OFF_TARGET -> "shin off target";
    };
  }
}
