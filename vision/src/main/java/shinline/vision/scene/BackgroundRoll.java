package shinline.vision.scene;

import java.util.List;
import java.util.Optional;

/**
 * Reads the camera's roll from the straight lines of the room, and how these lines converge, which
 * tells its pitch and how it stands to the wall.
 *
 * <p><b>Geometry.</b> All true verticals run through one vanishing point of the picture. A camera
 * that looks up or down a little (pitch) has it far above or below, so that verticals lean by an
 * amount that grows with their distance from the centre; a rolled camera has it off to one side.
 * With square pixels and the principal point in the centre, the direction from the centre to the
 * vanishing point <em>is</em> the picture of the vertical, whatever the pitch (Hartley and
 * Zisserman, <i>Multiple View Geometry</i>, 2nd ed., sections 8.6 and 8.7). A near-vertical line
 * with lean t and signed distance d from the centre therefore meets {@code sin(t − roll) = k d},
 * with one {@code k} (tangent of pitch over focal length) for all of them. Lines along the wall
 * meet the same with their own constant {@code m} when the camera is off square, but about the
 * horizon instead of the centre, from where the pitch moves it by focal length times its tangent:
 * they count as weaker evidence.
 *
 * <p><b>Vote.</b> Every roll in the range is tried with every plausible k and m; each line supports
 * it by its own precision. The best is refined by reweighted least squares. The answer is refused
 * when too little line carries it, or when another roll is nearly as well supported.
 */
public final class BackgroundRoll {

  /**
   * Estimates the roll the frames have in common.
   *
   * @param frames 1 or more pictures of one room, spread over the clip; 5 to 9 do well. All of one
   *     size. Of a hand-held camera the answer holds for the common view.
   * @throws IllegalArgumentException when there is no frame or sizes differ
   */
  public UprightEstimate estimate(List<RoomFrame> frames) {
    if (frames.isEmpty()) {
      throw new IllegalArgumentException("need at least one frame");
    }
    RoomSegments.Size size = frames.get(0).segments().of();
    for (RoomFrame frame : frames) {
      if (!frame.segments().of().equals(size)) {
        throw new IllegalArgumentException(
            "frames must all have one size, first " + size.fullCols() + "x" + size.fullRows());
      }
    }
    return fromLines(new RoomLines().lasting(frames));
  }

  UprightEstimate fromLines(List<RoomLine> lines) {
    RollVote.Result vote = new RollVote().run(lines);
    double evidence =
        vote.verticalLength() / BackgroundRollParameters.MIN_VERTICAL_SHARE
            + vote.horizontalLength() / BackgroundRollParameters.MIN_HORIZONTAL_SHARE;
    if (evidence < 1 || vote.linesUsed() < 3) {
      return new UprightEstimate.Unsure(UprightEstimate.Doubt.FEW_LINES);
    }
    if (vote.rivalShare() > BackgroundRollParameters.RIVAL_SHARE) {
      return new UprightEstimate.Unsure(UprightEstimate.Doubt.LINES_DISAGREE);
    }
    double plusMinus =
        1.96 * Math.hypot(Math.toDegrees(vote.sigmaRad()), BackgroundRollParameters.FLOOR_DEG);
    if (plusMinus > BackgroundRollParameters.MAX_PLUS_MINUS_DEG) {
      return new UprightEstimate.Unsure(UprightEstimate.Doubt.WIDE_INTERVAL);
    }
    return new UprightEstimate.Found(
        Math.toDegrees(vote.rollRad()),
        plusMinus,
        vote.linesUsed(),
        convergence(vote.uprights()),
        convergence(vote.levels()));
  }

  /** Two lines, or lines side by side, converge anyhow by chance. */
  private Optional<UprightEstimate.Convergence> convergence(RollVote.Family family) {
    return family.lines() >= BackgroundRollParameters.MIN_FAMILY_LINES
            && family.spread() >= BackgroundRollParameters.MIN_FAMILY_SPREAD
            && family.agreement() >= BackgroundRollParameters.MIN_FAMILY_AGREEMENT
        ? Optional.of(
            new UprightEstimate.Convergence(
                family.convergence(),
                1.96 * Math.hypot(family.sigma(), BackgroundRollParameters.FLOOR_CONVERGENCE)))
        : Optional.empty();
  }
}
