package shinline.vision.pose;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.vision.clip.FileDigest;

/** The models as they lie in the program's jar, converted from the weights. */
public final class ModelFile {
  /** Finds people in a whole picture. */
  public static final String DETECTOR = "detector.onnx";

  /** Gives a person's outline. */
  public static final String OUTLINES = "outlines.onnx";

  /**
   * Where the outline's network comes from: the smaller model's outline is as good as the larger
   * one's, and takes half the time.
   */
  public static final PoseModel OUTLINES_FROM = PoseModel.FULL;

  /**
   * System property that names a folder with the models as files. From a file the runtime reads a
   * model by itself; out of the jar it goes through Java's memory, at several times its size.
   */
  public static final String UNPACKED = "shinline.models";

  private ModelFile() {}

  /** Names of all. */
  public static List<String> names() {
    return Stream.concat(
            Stream.of(DETECTOR, OUTLINES),
            Arrays.stream(PoseModel.values()).map(PoseModel::landmarksFile))
        .toList();
  }

  /** Where a model lies in the jar; empty when the jar was built without it. */
  public static Optional<URL> packed(String name) {
    return Optional.ofNullable(OnnxModel.class.getResource(OnnxModel.FOLDER + name));
  }

  /** A model in the folder of unpacked ones; empty when it is not there. */
  static Optional<Path> unpacked(String name) {
    return Optional.ofNullable(System.getProperty(UNPACKED))
        .map(folder -> Path.of(folder, name))
        .filter(Files::isRegularFile);
  }

  /** The digest of the landmark model's file; empty when the jar was built without it. */
  public static Optional<FileDigest> digest(PoseModel model) {
    try (InputStream in = OnnxModel.file(model.landmarksFile())) {
      return in == null ? Optional.empty() : Optional.of(FileDigest.of(in));
    } catch (IOException e) {
      throw new UncheckedIOException("The pose model " + model.word() + " cannot be read", e);
    }
  }
}
