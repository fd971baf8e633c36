/** A folder of clips and a sheet become measured sets, entries of the record and pages. */
@NullMarked
package shinline.cli.session;

import org.jspecify.annotations.NullMarked;
