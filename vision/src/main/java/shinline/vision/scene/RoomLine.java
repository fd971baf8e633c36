package shinline.vision.scene;

/**
 * One straight background line, relative to the picture's centre.
 *
 * @param kind near vertical or near horizontal
 * @param leanRad angle from the picture's axis (vertical: up, horizontal: right) to the line,
 *     clockwise positive
 * @param offset signed distance of the line from the centre in units of the longer side: positive
 *     to the right for a near-vertical line, downward for a near-horizontal one
 * @param middle where along the line its middle lies, same unit: down or to the right
 * @param length in units of the longer side
 */
record RoomLine(Kind kind, double leanRad, double offset, double middle, double length) {
  enum Kind {
    NEAR_VERTICAL,
    NEAR_HORIZONTAL
  }
}
