/** Frames with the athlete's lines, numbers and faults drawn on them. */
@NullMarked
package shinline.cli.picture;

import org.jspecify.annotations.NullMarked;
