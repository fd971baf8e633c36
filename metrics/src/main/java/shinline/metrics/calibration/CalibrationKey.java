package shinline.metrics.calibration;

import java.util.Arrays;
import java.util.Optional;

/**
 * Every number that is fitted to clips or chosen for a pose model, by name. What each means, and
 * where its value comes from, is told beside the value in the calibration files.
 */
public enum CalibrationKey {
  // Offsets of the joint centres: shares of trunk, thigh and shank together, along the segment (up)
  // and ahead of it.
  OFFSET_MID_HIP_ALONG("offset.mid-hip.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_MID_HIP_AHEAD("offset.mid-hip.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_MID_HIP_BEND_ALONG("offset.mid-hip-bend.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_MID_HIP_BEND_AHEAD("offset.mid-hip-bend.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_MID_SHOULDER_ALONG("offset.mid-shoulder.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_MID_SHOULDER_AHEAD("offset.mid-shoulder.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HIP_ALONG("offset.front-hip.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HIP_AHEAD("offset.front-hip.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HIP_BEND_ALONG("offset.front-hip-bend.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HIP_BEND_AHEAD("offset.front-hip-bend.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_KNEE_ALONG("offset.front-knee.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_KNEE_AHEAD("offset.front-knee.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_ANKLE_ALONG("offset.front-ankle.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_ANKLE_AHEAD("offset.front-ankle.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_TOE_ALONG("offset.front-toe.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_TOE_AHEAD("offset.front-toe.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HEEL_ALONG("offset.front-heel.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_FRONT_HEEL_AHEAD("offset.front-heel.ahead", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_REAR_KNEE_ALONG("offset.rear-knee.along", CalibrationUnit.SHARE, -0.2, 0.2),
  OFFSET_REAR_KNEE_AHEAD("offset.rear-knee.ahead", CalibrationUnit.SHARE, -0.2, 0.2),

  // Parts of the ±: standard deviations.
  INTERVAL_SHIN_BODY("interval.shin.body", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_KNEE_PAST_TOE_BODY(
      "interval.knee-past-toe.body", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_KNEE_PAST_TOE_FOOT_BODY(
      "interval.knee-past-toe-foot.body", CalibrationUnit.PERCENT, 0.0, 50.0),
  INTERVAL_TRUNK_LEAN_BODY("interval.trunk-lean.body", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_THIGH_BODY("interval.thigh.body", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_KNEE_FLEXION_BODY("interval.knee-flexion.body", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_HIP_FLEXION_BODY("interval.hip-flexion.body", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_REAR_KNEE_HEIGHT_BODY(
      "interval.rear-knee-height.body", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_HIP_TRAVEL_BODY("interval.hip-travel.body", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_HIP_TRAVEL_LEG_BODY("interval.hip-travel-leg.body", CalibrationUnit.PERCENT, 0.0, 50.0),
  INTERVAL_SHIN_OBLIQUE("interval.shin.oblique", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_KNEE_PAST_TOE_OBLIQUE(
      "interval.knee-past-toe.oblique", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_KNEE_PAST_TOE_FOOT_OBLIQUE(
      "interval.knee-past-toe-foot.oblique", CalibrationUnit.PERCENT, 0.0, 50.0),
  INTERVAL_TRUNK_LEAN_OBLIQUE("interval.trunk-lean.oblique", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_THIGH_OBLIQUE("interval.thigh.oblique", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_KNEE_FLEXION_OBLIQUE(
      "interval.knee-flexion.oblique", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_HIP_FLEXION_OBLIQUE("interval.hip-flexion.oblique", CalibrationUnit.DEGREES, 0.0, 50.0),
  INTERVAL_REAR_KNEE_HEIGHT_OBLIQUE(
      "interval.rear-knee-height.oblique", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_HIP_TRAVEL_OBLIQUE(
      "interval.hip-travel.oblique", CalibrationUnit.CENTIMETRES, 0.0, 50.0),
  INTERVAL_HIP_TRAVEL_LEG_OBLIQUE(
      "interval.hip-travel-leg.oblique", CalibrationUnit.PERCENT, 0.0, 50.0),
  INTERVAL_REP_SHARE("interval.rep-share", CalibrationUnit.SHARE, 0.0, 1.0),
  INTERVAL_DOUBT("interval.doubt", CalibrationUnit.TIMES, 0.0, 10.0),
  INTERVAL_PHASE_EDGE("interval.phase-edge", CalibrationUnit.FRAMES, 0.0, 10.0),
  INTERVAL_PHASE_LEVEL("interval.phase-level", CalibrationUnit.SHARE, 0.0, 0.2),
  INTERVAL_SPEED("interval.speed", CalibrationUnit.SHARE, 0.0, 1.0),
  INTERVAL_PEAK_SPEED("interval.peak-speed", CalibrationUnit.SHARE, 0.0, 1.0),

  // Scale: standard deviations, shares of the length, and gates.
  SCALE_HEIGHT("scale.height", CalibrationUnit.SHARE, 0.0, 0.2),
  SCALE_DISC("scale.disc", CalibrationUnit.SHARE, 0.0, 0.2),
  SCALE_BENCH("scale.bench", CalibrationUnit.SHARE, 0.0, 0.2),
  SCALE_DISAGREE("scale.disagree", CalibrationUnit.SHARE, 0.0, 1.0),
  SCALE_SHORTEST("scale.shortest", CalibrationUnit.CENTIMETRES, 50.0, 250.0),
  SCALE_TALLEST("scale.tallest", CalibrationUnit.CENTIMETRES, 50.0, 300.0),

  // The athlete's body in the picture: shares of stature where nothing else is said.
  BODY_SEGMENTS("body.segments", CalibrationUnit.SHARE, 0.5, 1.0),
  BODY_NEAR_PLANE("body.near-plane", CalibrationUnit.TIMES, 1.0, 1.2),
  BODY_BENCH_RISE("body.bench-rise", CalibrationUnit.SHARE, 0.0, 0.5),
  BODY_BENCH_DEPTH("body.bench-depth", CalibrationUnit.SHARE, -0.1, 0.1),
  BODY_SOLE_BELOW("body.sole-below", CalibrationUnit.SHARE, -0.1, 0.1),
  BODY_REAR_KNEE_LIFT("body.rear-knee-lift", CalibrationUnit.SHARE, -0.1, 0.1),
  BODY_REAR_TOE_ABOVE("body.rear-toe-above", CalibrationUnit.SHARE, -0.1, 0.1),
  BODY_KNEE_OF_TOE("body.knee-of-toe", CalibrationUnit.TIMES, 0.0, 1.0),
  BODY_TRUST_IN_TOE("body.trust-in-toe", CalibrationUnit.SHARE, 0.0, 1.0),

  // Limits of the flags.
  LEAN_GROWS_LIMIT("lean-grows.limit", CalibrationUnit.DEGREES, 0.0, 90.0),
  LEAN_GROWS_IN_ONE_REP("lean-grows.in-one-rep", CalibrationUnit.DEGREES, 0.0, 90.0),
  HIPS_FIRST_LIMIT("hips-first.limit", CalibrationUnit.DEGREES, 0.0, 90.0),
  HIPS_FIRST_UNTIL("hips-first.until", CalibrationUnit.SHARE, 0.0, 1.0),
  HINGE_SHIFT_LIMIT("hinge-shift.limit", CalibrationUnit.DEGREES, 0.0, 90.0),
  HINGE_SHIFT_HIP_BACK("hinge-shift.hip-back", CalibrationUnit.SHARE, 0.0, 1.0),
  BACK_ROUNDS_LIMIT("back-rounds.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  BACK_ARCHES_LIMIT("back-arches.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  HEEL_RISE_LIMIT("heel-rise.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  HEEL_RISE_STEEP("heel-rise.steep", CalibrationUnit.DEGREES, 0.0, 45.0),
  HEEL_RISE_PITCH("heel-rise.pitch", CalibrationUnit.SHARE, 0.0, 0.1),
  FOREFOOT_RISE_LIMIT("forefoot-rise.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  REAR_PUSH_LIMIT("rear-push.limit", CalibrationUnit.DEGREES, 0.0, 180.0),
  REAR_PUSH_UNTIL("rear-push.until", CalibrationUnit.SHARE, 0.0, 1.0),
  WOBBLE_LIMIT("wobble.limit", CalibrationUnit.DEGREES, 0.0, 45.0),
  WOBBLE_SLOWEST("wobble.slowest", CalibrationUnit.PER_SECOND, 0.1, 5.0),
  WOBBLE_QUICKEST("wobble.quickest", CalibrationUnit.PER_SECOND, 0.1, 6.0),
  SHALLOW_LIMIT("shallow.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  LOWERING_RUSHED_LIMIT("lowering-rushed.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  LOWERING_RUSHED_ALWAYS("lowering-rushed.always", CalibrationUnit.SECONDS, 0.0, 10.0),
  HOLD_SKIPPED_LIMIT("hold-skipped.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  HOLD_SKIPPED_REAL_HOLD("hold-skipped.real-hold", CalibrationUnit.SECONDS, 0.0, 10.0),
  DRIVE_SLOW_LIMIT("drive-slow.limit", CalibrationUnit.SHARE, 0.0, 1.0),
  FOOT_LEAST_SEEN("foot.least-seen", CalibrationUnit.SHARE, 0.0, 1.0),

  // The camera's attitude: how phones are held, and what the trunk tells of it.
  CAMERA_FOCAL("camera.focal", CalibrationUnit.TIMES, 0.5, 2.0),
  CAMERA_FOCAL_SHARE("camera.focal-share", CalibrationUnit.SHARE, 0.0, 0.5),
  CAMERA_ROLL("camera.roll", CalibrationUnit.DEGREES, 0.0, 10.0),
  CAMERA_GIVEN("camera.given", CalibrationUnit.DEGREES, 0.0, 10.0),
  CAMERA_PITCH("camera.pitch", CalibrationUnit.DEGREES, -20.0, 20.0),
  CAMERA_PITCH_SPREAD("camera.pitch-spread", CalibrationUnit.DEGREES, 0.0, 30.0),
  CAMERA_YAW_SPREAD("camera.yaw-spread", CalibrationUnit.DEGREES, 0.0, 45.0),
  CAMERA_ALONG_WALL("camera.along-wall", CalibrationUnit.DEGREES, 0.0, 45.0),
  CAMERA_NOT_ALONG_WALL("camera.not-along-wall", CalibrationUnit.SHARE, 0.0, 1.0),
  TRUNK_YAW("trunk.yaw", CalibrationUnit.DEGREES, -500.0, 500.0),
  TRUNK_YAW_FRONT_LEG("trunk.yaw-front-leg", CalibrationUnit.DEGREES, -20.0, 20.0),
  TRUNK_YAW_SPREAD("trunk.yaw-spread", CalibrationUnit.DEGREES, 0.1, 45.0),
  TRUNK_YAW_ODD("trunk.yaw-odd", CalibrationUnit.SHARE, 0.0, 1.0),
  TRUNK_PITCH_SHOULDER("trunk.pitch-shoulder", CalibrationUnit.DEGREES, -500.0, 500.0),
  TRUNK_PITCH_HIP("trunk.pitch-hip", CalibrationUnit.DEGREES, -500.0, 500.0),
  TRUNK_PITCH_LEVEL("trunk.pitch-level", CalibrationUnit.DEGREES, -45.0, 45.0),
  TRUNK_PITCH_SPREAD("trunk.pitch-spread", CalibrationUnit.DEGREES, 0.1, 45.0),
  TRUNK_WRIST_RAISED("trunk.wrist-raised", CalibrationUnit.SHARE, -2.0, 1.0),
  TRUNK_WRIST_AHEAD("trunk.wrist-ahead", CalibrationUnit.SHARE, -1.0, 2.0),
  TRUNK_REACHING("trunk.reaching", CalibrationUnit.SHARE, 0.0, 3.0),
  TRUNK_REACH_AHEAD("trunk.reach-ahead", CalibrationUnit.SHARE, 0.0, 3.0),
  TRUNK_REACH_ABOVE("trunk.reach-above", CalibrationUnit.SHARE, -2.0, 2.0),
  TRUNK_REACH_LEAN("trunk.reach-lean", CalibrationUnit.DEGREES, -20.0, 20.0),
  TRUNK_REACH_SPREAD("trunk.reach-spread", CalibrationUnit.DEGREES, 0.0, 20.0),
  BODY_LOOK_DOWN("body.look-down", CalibrationUnit.TIMES, 0.05, 1.0),
  BODY_LIFT_BY_NEARNESS("body.lift-by-nearness", CalibrationUnit.SHARE, 0.0, 1.0),
  SIDE_VIEW_OBLIQUE("side-view.oblique", CalibrationUnit.DEGREES, 0.0, 90.0),
  SIDE_VIEW_UNSURE("side-view.unsure", CalibrationUnit.DEGREES, 0.0, 90.0),
  CAMERA_SHIN_DOUBT("camera.shin-doubt", CalibrationUnit.DEGREES, 0.0, 30.0),

  // Gates: what can be measured at all.
  GATE_LEAST_LOOKS("gate.least-looks", CalibrationUnit.LOOKS, 1.0, 1000.0),
  GATE_LEAST_FOUND("gate.least-found", CalibrationUnit.SHARE, 0.0, 1.0),
  GATE_ANKLE_SEEN("gate.ankle-seen", CalibrationUnit.SHARE, 0.0, 1.0),
  SHOULDERS_LEAST_ARM("shoulders.least-arm", CalibrationUnit.SHARE, 0.0, 1.0),
  SIDE_VIEW_SHOULDERS("side-view.shoulders", CalibrationUnit.SHARE, 0.1, 2.0),
  SIDE_VIEW_WARNED("side-view.warned", CalibrationUnit.DEGREES, 0.0, 90.0),
  SIDE_VIEW_REFUSED("side-view.refused", CalibrationUnit.DEGREES, 0.0, 90.0),
  SWAY_NOTICED("sway.noticed", CalibrationUnit.SHARE, 0.0, 1.0),

  // Legs told apart, and doubt: shares of stature where nothing else is said.
  LEGS_LEAST_CONFIDENCE("legs.least-confidence", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_APART("legs.apart", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_SPLIT_APART("legs.split-apart", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_OFF_PLANT("legs.off-plant", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_OFF_REAR_PLANT("legs.off-rear-plant", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_OFF_LENGTH("legs.off-length", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_LENGTH_SPREAD("legs.length-spread", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_LEAST_SPLIT("legs.least-split", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_NAMES("legs.names", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_CLEAR("legs.clear", CalibrationUnit.SHARE, 0.5, 1.0),
  LEGS_HIDDEN("legs.hidden", CalibrationUnit.SHARE, 0.0, 1.0),
  LEGS_CLEAR_FACING("legs.clear-facing", CalibrationUnit.SHARE, 0.5, 1.0),
  FOOT_AT_PLACE("foot.at-place", CalibrationUnit.SHARE, 0.0, 1.0),
  FOOT_SAME_LENGTH("foot.same-length", CalibrationUnit.SHARE, 0.0, 1.0),
  FOOT_TRUST("foot.trust", CalibrationUnit.SHARE, 0.0, 1.0),
  BLEND_WINDOW("blend.window", CalibrationUnit.SECONDS, 0.0, 5.0),
  BLEND_LEAST("blend.least", CalibrationUnit.SHARE, 0.0, 1.0),
  BLEND_ENVELOPE("blend.envelope", CalibrationUnit.SHARE, 0.01, 1.0),
  CLEANING_OUTLIER("cleaning.outlier", CalibrationUnit.SHARE, 0.0, 1.0),

  // The bar on the back: its end, and what it tells of the trunk.
  BAR_SCALE("bar.scale", CalibrationUnit.SHARE, 0.0, 0.2),
  BAR_EDGE("bar.edge", CalibrationUnit.SECONDS, 0.0, 0.5),
  BAR_PEAK_SPEED("bar.peak-speed", CalibrationUnit.SHARE, 0.0, 1.0),
  BAR_STRAY("bar.stray", CalibrationUnit.CENTIMETRES, 0.0, 20.0),
  BAR_TRUNK("bar.trunk", CalibrationUnit.SHARE, 0.1, 0.5),
  BAR_TRUNK_CHANGE("bar.trunk-change", CalibrationUnit.DEGREES, 0.0, 50.0),
  BAR_HIP_SLOWEST("bar.hip-slowest", CalibrationUnit.PER_SECOND, 0.01, 5.0),
  BAR_HIP_RISE("bar.hip-rise", CalibrationUnit.SHARE, 0.5, 1.5),
  BAR_HIP_TRUST("bar.hip-trust", CalibrationUnit.SHARE, 0.0, 1.0),
  BAR_LEAN_GROWS_LIMIT("bar.lean-grows", CalibrationUnit.DEGREES, 0.0, 90.0),
  BAR_HIPS_FIRST_LIMIT("bar.hips-first", CalibrationUnit.DEGREES, 0.0, 90.0),

  // How the clip is looked at.
  SAMPLING_LOOKS("sampling.looks", CalibrationUnit.PER_SECOND, 5.0, 240.0),
  SAMPLING_EVERY("sampling.every", CalibrationUnit.FRAMES, 1.0, 4.0),
  SAMPLING_PACE("sampling.pace", CalibrationUnit.SHARE, 0.0, 1.0);

  private final String word;
  private final CalibrationUnit unit;
  private final double least;
  private final double most;

  CalibrationKey(String word, CalibrationUnit unit, double least, double most) {
    this.word = word;
    this.unit = unit;
    this.least = least;
    this.most = most;
  }

  /** Name in the calibration file. */
  public String word() {
    return word;
  }

  public CalibrationUnit unit() {
    return unit;
  }

  /** The least sensible value. */
  public double least() {
    return least;
  }

  /** The greatest sensible value. */
  public double most() {
    return most;
  }

  public static Optional<CalibrationKey> of(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
  }
}
