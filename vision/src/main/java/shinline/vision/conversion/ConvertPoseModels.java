package shinline.vision.conversion;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shinline.vision.pose.ModelFile;
import shinline.vision.pose.PoseModel;

/**
 * Build step: turns the weights in the npm package into the ONNX files of the jar.
 *
 * <p>Arguments: the npm package's folder, the folder to write to, a stamp file. Nothing is done
 * when the stamp shows that neither the weights, the list of models nor the converter has changed.
 */
public final class ConvertPoseModels {
  /** The pose's landmarks, its flag and its heatmap. */
  private static final List<String> LANDMARKS = List.of("Identity", "Identity_1", "Identity_3");

  /** The person's outline alone. */
  private static final List<String> OUTLINE = List.of("Identity_2");

  /** Boxes and scores. */
  private static final List<String> DETECTOR = List.of("Identity", "Identity_1");

  private static final String DETECTOR_ENTRY = "pose_detection.tflite";

  private final Path weights;
  private final Path models;

  private ConvertPoseModels(Path weights, Path models) {
    this.weights = weights;
    this.models = models;
  }

  public static void main(String[] arguments) throws IOException {
    Path weights = Path.of(arguments[0]);
    Path models = Path.of(arguments[1]);
    Path stampFile = Path.of(arguments[2]);
    if (!Files.isDirectory(weights)) {
      throw new IOException(
          "The pose model's weights are missing from " + weights + "; run the whole build again");
    }
    Path converter =
        Path.of(arguments[3]).resolve(ConvertPoseModels.class.getPackageName().replace('.', '/'));
    String stamp = stamp(weights, converter, models);
    if (Files.exists(stampFile) && Files.readString(stampFile).equals(stamp)) {
      return;
    }
    new ConvertPoseModels(weights, models).convertAll();
    // Taken again, since it also vouches for what was just written.
    Files.writeString(stampFile, stamp(weights, converter, models));
  }

  private static String stamp(Path weights, Path converter, Path models) throws IOException {
    return Arrays.toString(PoseModel.values())
        + ContentStamp.of(List.of(weights, converter, models));
  }

  private void convertAll() throws IOException {
    Files.createDirectories(models);
    removeOld();
    for (PoseModel size : PoseModel.values()) {
      TfliteModel model =
          TfliteModel.read(
              Files.readAllBytes(weights.resolve("pose_landmark_" + size.word() + ".tflite")));
      write(size.landmarksFile(), model, LANDMARKS);
      if (size == ModelFile.OUTLINES_FROM) {
        write(ModelFile.OUTLINES, model, OUTLINE);
      }
    }
    write(ModelFile.DETECTOR, TfliteModel.read(detector()), DETECTOR);
  }

  /** What an older converter wrote would go into the jar, too. */
  private void removeOld() throws IOException {
    try (DirectoryStream<Path> old = Files.newDirectoryStream(models, "*.onnx")) {
      for (Path file : old) {
        Files.delete(file);
      }
    }
  }

  private void write(String file, TfliteModel model, List<String> outputs) throws IOException {
    Files.write(models.resolve(file), OnnxTranslation.translate(model, outputs));
  }

  /** The detector lies inside a bundle, at the bytes that the bundle's loader script lists. */
  private byte[] detector() throws IOException {
    String loader =
        Files.readString(
            weights.resolve("pose_solution_packed_assets_loader.js"), StandardCharsets.UTF_8);
    Matcher entry =
        Pattern.compile(
                "\"[^\"]*"
                    + Pattern.quote(DETECTOR_ENTRY)
                    + "\", *\"start\": *(\\d+), *\"end\": *(\\d+)")
            .matcher(loader);
    if (!entry.find()) {
      throw new IOException("The bundle's loader script does not list " + DETECTOR_ENTRY);
    }
    byte[] bundle = Files.readAllBytes(weights.resolve("pose_solution_packed_assets.data"));
    return Arrays.copyOfRange(
        bundle, Integer.parseInt(entry.group(1)), Integer.parseInt(entry.group(2)));
  }
}
