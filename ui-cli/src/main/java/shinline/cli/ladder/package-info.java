/** The coach's ladder file: YAML in, a ladder or a list of problems out (docs/ladder.md). */
@NullMarked
package shinline.cli.ladder;

import org.jspecify.annotations.NullMarked;
