package shinline.cli.picture;

import java.awt.geom.Point2D;

/**
 * Where the front foot stands while it is flat, in pixels of the upright picture, y down.
 *
 * @param heel the heel point
 * @param toe the tip of the toes
 */
record FootPrint(Point2D heel, Point2D toe) {}
