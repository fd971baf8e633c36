package shinline.metrics.fault;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.calibration.CalibrationKey;

/**
 * The catalogue of faults: each kind with its rule, unit, weight, picture and the limit it is held
 * to. A kind is added here and in the words of {@code ui-cli}; the schema's list and the table in
 * docs/measures.md follow. Flags of a rep, pictures and docs come in this order.
 */
public enum FlagKind {
  LEAN_GROWS(
      TrunkRules::leanGrows,
      FaultUnit.DEGREES,
      Weight.HEAVY,
      Form.LEAN,
      FaultPicture.TRUNK_CHANGE,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.LEAN_GROWS_LIMIT),
  HIPS_FIRST(
      TrunkRules::hipsFirst,
      FaultUnit.DEGREES,
      Weight.HEAVIEST,
      Form.LEAN,
      FaultPicture.TRUNK_CHANGE,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.HIPS_FIRST_LIMIT),
  HINGE_SHIFT(
      TrunkRules::hingeShift,
      FaultUnit.DEGREES,
      Weight.HEAVY,
      Form.HINGE,
      FaultPicture.TRUNK_CHANGE,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.HINGE_SHIFT_LIMIT),
  BACK_ROUNDS(
      BackRules::rounds,
      FaultUnit.PERCENT,
      Weight.HEAVIEST,
      Form.BACK,
      FaultPicture.BACK_OUTLINE,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.BACK_ROUNDS_LIMIT),
  BACK_ARCHES(
      BackRules::arches,
      FaultUnit.PERCENT,
      Weight.HEAVIEST,
      Form.BACK,
      FaultPicture.BACK_OUTLINE,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.BACK_ARCHES_LIMIT),
  HEEL_RISE(
      FootRules::heelRise,
      FaultUnit.STATURES,
      Weight.HEAVY,
      Form.FOOT,
      FaultPicture.HEEL,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.HEEL_RISE_LIMIT),
  FOREFOOT_RISE(
      FootRules::forefootRise,
      FaultUnit.STATURES,
      Weight.MIDDLE,
      Form.FOOT,
      FaultPicture.FOREFOOT,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.FOREFOOT_RISE_LIMIT),
  REAR_PUSH(
      FootRules::rearPush,
      FaultUnit.DEGREES,
      Weight.LIGHT,
      Form.FOOT,
      FaultPicture.REAR_LEG,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.REAR_PUSH_LIMIT),
  WOBBLE(
      FootRules::wobble,
      FaultUnit.DEGREES,
      Weight.LIGHTEST,
      Form.STEADINESS,
      FaultPicture.KNEE_WAY,
      RepEffect.NONE,
      Needs.MOTION,
      CalibrationKey.WOBBLE_LIMIT),
  SHALLOW(
      RangeAndTempoRules::shallow,
      FaultUnit.PERCENT,
      Weight.MIDDLE,
      Form.DEPTH,
      FaultPicture.DEPTH,
      RepEffect.SPOILS,
      Needs.MOTION,
      CalibrationKey.SHALLOW_LIMIT),
  LOWERING_RUSHED(
      RangeAndTempoRules::loweringRushed,
      FaultUnit.SECONDS,
      Weight.LIGHT,
      Form.TEMPO,
      FaultPicture.LOWERING,
      RepEffect.NONE,
      Needs.MOTION,
      CalibrationKey.LOWERING_RUSHED_LIMIT),
  HOLD_SKIPPED(
      RangeAndTempoRules::holdSkipped,
      FaultUnit.SECONDS,
      Weight.LIGHT,
      Form.TEMPO,
      FaultPicture.HOLD,
      RepEffect.NONE,
      Needs.MOTION,
      CalibrationKey.HOLD_SKIPPED_LIMIT),
  DRIVE_SLOW(
      RangeAndTempoRules::driveSlow,
      FaultUnit.PERCENT,
      Weight.LIGHTEST,
      Form.SPEED,
      FaultPicture.DRIVE,
      RepEffect.NONE,
      Needs.MOTION,
      CalibrationKey.DRIVE_SLOW_LIMIT),
  /** The coach's own limit, so no rule of ours: the judge of the target finds it. */
  SHIN_OFF_TARGET(
      FaultRule.NEVER,
      FaultUnit.AS_ASKED,
      Weight.MIDDLE,
      Form.TARGET,
      FaultPicture.SHIN,
      RepEffect.NONE,
      Needs.ONE_POSTURE);

  private final FaultRule rule;
  private final FaultUnit unit;
  private final Weight weight;
  private final Form form;
  private final FaultPicture picture;
  private final RepEffect effect;
  private final Needs needs;
  private final Optional<CalibrationKey> limitKey;

  FlagKind(
      FaultRule rule,
      FaultUnit unit,
      Weight weight,
      Form form,
      FaultPicture picture,
      RepEffect effect,
      Needs needs,
      CalibrationKey limitKey) {
    this(rule, unit, weight, form, picture, effect, needs, Optional.of(limitKey));
  }

  FlagKind(
      FaultRule rule,
      FaultUnit unit,
      Weight weight,
      Form form,
      FaultPicture picture,
      RepEffect effect,
      Needs needs) {
    this(rule, unit, weight, form, picture, effect, needs, Optional.empty());
  }

  FlagKind(
      FaultRule rule,
      FaultUnit unit,
      Weight weight,
      Form form,
      FaultPicture picture,
      RepEffect effect,
      Needs needs,
      Optional<CalibrationKey> limitKey) {
    this.rule = rule;
    this.unit = unit;
    this.weight = weight;
    this.form = form;
    this.picture = picture;
    this.effect = effect;
    this.needs = needs;
    this.limitKey = limitKey;
  }

  /**
   * How much a fault matters against another. Our own order: the back before the foot, the foot
   * before the target, the target before tempo. A target met with a lifted heel or a borrowed back
   * is not met.
   */
  private enum Weight {
    LIGHTEST,
    LIGHT,
    MIDDLE,
    HEAVY,
    HEAVIEST
  }

  /** Whether a rep with the fault is still a clean one. */
  private enum RepEffect {
    SPOILS,
    NONE
  }

  /** What has to be seen to tell the fault. */
  private enum Needs {
    /** The posture against another one of the same set, or how long something takes. */
    MOTION,
    /** A posture alone. */
    ONE_POSTURE
  }

  /** Name in the result format, for example {@code lean-grows}. */
  public String jsonName() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The fault of this kind that a rep shows, if it does. */
  Stream<Fault> of(RepEvidence rep, SetEvidence set) {
    return rule
        .of(rep, set)
        .map(found -> new Fault(this, found.atS(), found.value(), found.limit(), found.baseline()))
        .stream();
  }

  /** What the rule's values and limits are counted in. */
  public FaultUnit unit() {
    return unit;
  }

  /** How much it matters, from 1 to 5. */
  public int weight() {
    return weight.ordinal() + 1;
  }

  /** The part of form that it shows to be going. */
  public Form form() {
    return form;
  }

  /** What its picture points at. */
  public FaultPicture picture() {
    return picture;
  }

  /** Whether a rep that shows it is not a clean one. */
  public boolean spoils() {
    return effect == RepEffect.SPOILS;
  }

  /** Whether a still picture can show it. */
  public boolean seenInOnePosture() {
    return needs == Needs.ONE_POSTURE;
  }

  /** Calibration key of the limit it is held to; empty when the coach sets the limit. */
  public Optional<CalibrationKey> limitKey() {
    return limitKey;
  }
}
