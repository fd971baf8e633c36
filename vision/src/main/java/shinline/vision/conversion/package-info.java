/**
 * Build-time conversion of the pose model's TFLite weights to ONNX.
 *
 * <p>Runs once per build, needs nothing but the JDK, and is never called by the running program.
 */
@NullMarked
package shinline.vision.conversion;

import org.jspecify.annotations.NullMarked;
