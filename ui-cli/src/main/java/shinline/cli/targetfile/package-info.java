/** The coach's target file: YAML in, a target or a list of problems out (docs/target-file.md). */
@NullMarked
package shinline.cli.targetfile;

import org.jspecify.annotations.NullMarked;
