package shinline.cli.picture;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.text.PostureWords;
import shinline.cli.text.Units;
import shinline.vision.clip.ClipLimits;
import shinline.vision.still.Still;
import shinline.vision.still.StillReader;

/**
 * A drawn-on still picture.
 *
 * @param jpeg the picture as a JPEG file; not to be changed
 * @param widthPx width of the picture
 * @param heightPx height of the picture
 * @param altText what the picture shows, for those who cannot see it; plain text, not escaped
 */
@SuppressWarnings("ArrayRecordComponent") // a picture is a file's worth of bytes, never compared
public record PosturePicture(byte[] jpeg, int widthPx, int heightPx, String altText) {

  /**
   * Draws on a picture that was measured; empty when it cannot be read again, or is no longer the
   * same.
   */
  public static Optional<PosturePicture> of(
      Path photo, PhotoReport.Measured report, Units units, Face face) {
    return new StillReader(ClipLimits.ANY_PICTURE)
        .open(photo)
        .fold(opened -> of(opened.still(), report, units, face), refused -> Optional.empty());
  }

  private static Optional<PosturePicture> of(
      Still opened, PhotoReport.Measured report, Units units, Face face) {
    Still still = opened;
    try {
      int missing = Math.floorMod(report.photo().rotationDeg() - still.turnedDeg(), 360) / 90;
      if (missing != 0) {
        still = still.turnedMore(missing);
      }
      Mat image = still.image();
      if (image.cols() != report.photo().widthPx() || image.rows() != report.photo().heightPx()) {
        return Optional.empty();
      }
      SetScene scene = new SetScene(report);
      BufferedImage picture = FrameImage.copy(image, FrameImage.none());
      if (face == Face.BLURRED) {
        new HeadBlur(scene).cover(picture, 0);
      }
      return Optional.of(
          new StillPicture(scene, units)
              .posture(
                  picture,
                  report.posture(),
                  PostureWords.headline(report.posture()),
                  PostureWords.asked(report.posture()).orElse("")));
    } finally {
      still.close();
    }
  }
}
