/** The one bundle of words that a person reads; imports nothing of the program. */
@NullMarked
package shinline.cli.words;

import org.jspecify.annotations.NullMarked;
