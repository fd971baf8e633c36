/** How records become JSON and JSON becomes records, the same for every file. */
@NullMarked
package shinline.cli.json;

import org.jspecify.annotations.NullMarked;
