/** The coach's YAML files: where each value stands, and what is wrong with it. */
@NullMarked
package shinline.cli.yaml;

import org.jspecify.annotations.NullMarked;
