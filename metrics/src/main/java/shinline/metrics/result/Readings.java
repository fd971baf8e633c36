package shinline.metrics.result;

/** The readings of one rep that a limit can be set on. */
public interface Readings {

  /** At the bottom. */
  Reading at(Measure measure);

  TempoReading tempo();

  /** What a limit on that aspect is held against. */
  default Reading at(Aspect aspect) {
    return switch (aspect) {
      case SHIN -> at(Measure.SHIN);
      case KNEE -> at(Measure.KNEE_PAST_TOE);
      case THIGH -> at(Measure.THIGH);
      case REAR_KNEE -> at(Measure.REAR_KNEE_HEIGHT);
      case HIP_TRAVEL -> at(Measure.HIP_TRAVEL);
      case TRUNK -> at(Measure.TRUNK_LEAN);
      case LOWERING -> tempo().lowering();
      case HOLD -> tempo().hold();
      case DRIVE -> tempo().drive();
      case TOP -> tempo().top();
    };
  }
}
