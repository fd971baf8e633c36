package shinline.cli.picture;

import java.util.Optional;
import shinline.metrics.fault.FlagKind;

/**
 * One drawn-on frame of a rep.
 *
 * @param rep number of the rep, from 1
 * @param flag the fault it shows; empty for the picture of the rep's bottom
 * @param jpeg the picture as a JPEG file; not to be changed
 * @param widthPx width of the picture
 * @param heightPx height of the picture
 * @param altText what the picture shows, for those who cannot see it; plain text, not escaped
 */
@SuppressWarnings("ArrayRecordComponent") // a picture is a file's worth of bytes, never compared
public record RepPicture(
    int rep, Optional<FlagKind> flag, byte[] jpeg, int widthPx, int heightPx, String altText) {}
