package shinline.vision.pose;

import ai.djl.MalformedModelException;
import ai.djl.Model;
import ai.djl.inference.Predictor;
import ai.djl.ndarray.NDArray;
import ai.djl.ndarray.NDList;
import ai.djl.ndarray.types.Shape;
import ai.djl.translate.Batchifier;
import ai.djl.translate.TranslateException;
import ai.djl.translate.Translator;
import ai.djl.translate.TranslatorContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.Lock;
import org.jspecify.annotations.Nullable;

/**
 * One model of the jar, loaded; it, {@link ModelRuntime} and {@link RuntimeLife} alone know what
 * computes it.
 */
final class OnnxModel implements AutoCloseable {

  static final String FOLDER = "/shinline/vision/models/";

  private final Model model;
  private final Predictor<float[], List<float[]>> predictor;

  private OnnxModel(Model model, int inputSide) {
    this.model = model;
    this.predictor = model.newPredictor(new Planes(new Shape(1, 3, inputSide, inputSide)));
  }

  /**
   * Loads a model.
   *
   * @param file name of the ONNX file in the jar
   * @param inputSide pixels of the model's square input
   * @param threads that share one run, 1 or more; its numbers do not depend on it
   */
  static OnnxModel load(String file, int inputSide, int threads) {
    Map<String, String> options =
        Map.of("intraOpNumThreads", String.valueOf(threads), "interOpNumThreads", "1");
    ModelRuntime.load();
    Lock use = RuntimeLife.use();
    use.lock();
    try {
      Model model = Model.newInstance(file, ModelRuntime.NAME);
      Optional<Path> unpacked = ModelFile.unpacked(file);
      if (unpacked.isPresent()) {
        model.load(unpacked.get(), null, options);
      } else {
        loadPacked(model, file, options);
      }
      return new OnnxModel(model, inputSide);
    } catch (IOException e) {
      throw new UncheckedIOException("The pose model " + file + " cannot be read", e);
    } catch (MalformedModelException e) {
      throw new IllegalStateException("The pose model " + file + " is damaged", e);
    } finally {
      use.unlock();
    }
  }

  private static void loadPacked(Model model, String file, Map<String, String> options)
      throws IOException, MalformedModelException {
    try (InputStream in = file(file)) {
      if (in == null) {
        throw new IllegalStateException("The pose model " + file + " is not in the program's jar");
      }
      model.load(in, options);
    }
  }

  /** A file of the models' folder in the jar; null when it is not there. */
  static @Nullable InputStream file(String name) {
    return OnnxModel.class.getResourceAsStream(FOLDER + name);
  }

  /** The model's outputs for one planar picture, in the order the conversion gave them. */
  List<float[]> run(float[] planes) {
    Lock use = RuntimeLife.use();
    use.lock();
    try {
      return predictor.predict(planes);
    } catch (TranslateException e) {
      throw new IllegalStateException("The pose model failed: " + e.getMessage(), e);
    } finally {
      use.unlock();
    }
  }

  @Override
  public void close() {
    Lock use = RuntimeLife.use();
    use.lock();
    try {
      predictor.close();
      model.close();
    } finally {
      use.unlock();
    }
  }

  private record Planes(Shape shape) implements Translator<float[], List<float[]>> {
    @Override
    public NDList processInput(TranslatorContext context, float[] planes) {
      return new NDList(context.getNDManager().create(planes, shape));
    }

    @Override
    public List<float[]> processOutput(TranslatorContext context, NDList list) {
      List<float[]> outputs = new ArrayList<>();
      for (NDArray output : list) {
        outputs.add(output.toFloatArray());
      }
      return outputs;
    }

    @Override
    public @Nullable Batchifier getBatchifier() {
      return null;
    }
  }
}
