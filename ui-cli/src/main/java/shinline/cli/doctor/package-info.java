/** Whether this computer can do the job, part by part, and how fast. */
@NullMarked
package shinline.cli.doctor;

import org.jspecify.annotations.NullMarked;
