/** The record of the athletes: its file, its lines, and what they say (docs/record.md). */
@NullMarked
package shinline.cli.record;

import org.jspecify.annotations.NullMarked;
