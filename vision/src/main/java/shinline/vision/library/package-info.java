/** Which parts of the native libraries are loaded. */
@NullMarked
package shinline.vision.library;

import org.jspecify.annotations.NullMarked;
