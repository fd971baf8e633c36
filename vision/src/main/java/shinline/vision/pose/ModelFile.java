package shinline.vision.pose;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import shinline.vision.clip.FileDigest;

/** The weights of a pose model as they lie in the program's jar. */
public final class ModelFile {
  private ModelFile() {}

  /** The digest of the landmark model's file; empty when the jar was built without it. */
  public static Optional<FileDigest> digest(PoseModel model) {
    try (InputStream in = OnnxModel.file(model.landmarksFile())) {
      return in == null ? Optional.empty() : Optional.of(FileDigest.of(in));
    } catch (IOException e) {
      throw new UncheckedIOException("The pose model " + model.word() + " cannot be read", e);
    }
  }
}
