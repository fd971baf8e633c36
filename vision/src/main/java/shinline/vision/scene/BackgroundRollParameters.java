package shinline.vision.scene;

/**
 * Settings of {@link BackgroundRoll}. Lengths are shares of the picture's longer side, so that they
 * hold at any resolution. Chosen on the development clips, turned by known angles.
 */
final class BackgroundRollParameters {
  /** The picture is shrunk to this longer side before lines are sought. */
  static final int WORK_LONG_SIDE_PX = 960;

  /** Shortest line that counts. */
  static final double MIN_LINE_SHARE = 0.035;

  /** Largest roll looked for. */
  static final double MAX_ROLL_DEG = 15;

  /**
   * A line further than this from the picture's axes is no evidence: the largest roll and the
   * convergence of verticals under a pitch of 10°.
   */
  static final double LEAN_RANGE_DEG = 24;

  /** Share of the frames in which a line must be seen at its place. */
  static final double SIGHTINGS_SHARE = 0.6;

  /** The same for a line in the athlete's box. */
  static final double SIGHTINGS_SHARE_AT_ATHLETE = 0.8;

  /** A line in the athlete's box must be seen in at least this many frames. */
  static final int FEWEST_SIGHTINGS_AT_ATHLETE = 4;

  /** Two sightings of one line differ by at most this. */
  static final double MATCH_LEAN_DEG = 1.0;

  /** Two sightings of one line lie at most this far apart. */
  static final double MATCH_OFFSET_SHARE = 0.006;

  /** The athlete's box is grown by this share of its height. */
  static final double ATHLETE_MARGIN_SHARE = 0.04;

  /** Total length of agreeing near-vertical lines that is enough alone. */
  static final double MIN_VERTICAL_SHARE = 0.3;

  /**
   * Total length of agreeing near-horizontal lines that is enough alone. Shares of both add up:
   * half of each is enough too.
   */
  static final double MIN_HORIZONTAL_SHARE = 1.2;

  /** Another roll with more than this share of the best one's support makes the answer unsure. */
  static final double RIVAL_SHARE = 0.75;

  /**
   * Standard deviation that is added to every answer, for what the fit cannot see (lens, a building
   * not quite square).
   */
  static final double FLOOR_DEG = 0.15;

  /** A wider answer than this is no answer. */
  static final double MAX_PLUS_MINUS_DEG = 3;

  /** Fewest agreeing lines that tell how their kind converges. */
  static final int MIN_FAMILY_LINES = 3;

  /** Their outermost are at least this far apart. */
  static final double MIN_FAMILY_SPREAD = 0.2;

  /** Share of the length of all lines of that kind that must agree. */
  static final double MIN_FAMILY_AGREEMENT = 0.5;

  /**
   * Standard deviation added to every convergence, radians a longer side: half a degree of pitch.
   */
  static final double FLOOR_CONVERGENCE = 0.012;

  private BackgroundRollParameters() {}
}
