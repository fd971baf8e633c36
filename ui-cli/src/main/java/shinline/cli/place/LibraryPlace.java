package shinline.cli.place;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.vision.pose.ModelFile;

/**
 * Gives the libraries their place, once, before any of them is loaded. They unpack themselves into
 * the system's temporary folder otherwise, which may be missing or too small, and leave there what
 * a killed run unpacked.
 */
public final class LibraryPlace {
  private static final String LIBRARIES = "org.bytedeco.javacpp.cachedir";
  private static final String MODEL_RUNTIME = "onnxruntime.native.path";
  private static final List<String> LIBRARY_NAMES = List.of("onnxruntime", "onnxruntime4j_jni");
  private static final String TEMPORARY = "java.io.tmpdir";

  private final ProgramFolder folder;
  private @Nullable RunFolder run;

  public LibraryPlace(ProgramFolder folder) {
    this.folder = folder;
  }

  /**
   * @throws CoachException when there is no temporary folder, or nowhere to unpack
   */
  public synchronized void prepare() {
    if (run != null) {
      return;
    }
    Path temporary = Path.of(System.getProperty(TEMPORARY, ""));
    if (!Files.isDirectory(temporary) || !Files.isWritable(temporary)) {
      throw CoachException.usage(Words.say("place.no-temporary", temporary));
    }
    RunFolder begun = folder.begin();
    run = begun;
    Runtime.getRuntime().addShutdownHook(new Thread(begun::close, "take-run-folder-away"));
    unpack(begun.place());
    if (System.getProperty(LIBRARIES) == null) {
      System.setProperty(LIBRARIES, folder.libraries().toString());
    }
  }

  /**
   * Unpacks the model's runtime and the models once for all runs. What lies beside the program
   * already is not unpacked.
   */
  private void unpack(Path own) {
    Map<String, URL> runtime = new LinkedHashMap<>();
    for (String library : LIBRARY_NAMES) {
      String name = System.mapLibraryName(library);
      URL at = LibraryPlace.class.getResource("/ai/onnxruntime/native/" + system() + name);
      if (at != null) {
        runtime.put(name, at);
      }
    }
    Map<String, URL> models = new LinkedHashMap<>();
    for (String name : ModelFile.names()) {
      ModelFile.packed(name).ifPresent(at -> models.put(name, at));
    }
    try {
      unpack("onnxruntime", runtime, MODEL_RUNTIME, own);
      unpack("models", models, ModelFile.UNPACKED, own);
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("place.unwritable", folder.place(), ProgramFolder.VARIABLE));
    }
  }

  /**
   * Unpacks files into a folder named by their content, unless they are files already.
   *
   * @param property is told the folder
   */
  private void unpack(String what, Map<String, URL> packed, String property, Path own)
      throws IOException {
    if (packed.isEmpty()) {
      return;
    }
    StringBuilder content = new StringBuilder(what);
    for (URL at : packed.values()) {
      if (!(at.openConnection() instanceof JarURLConnection jar)) {
        return;
      }
      content.append(String.format(Locale.ROOT, "-%08x", jar.getJarEntry().getCrc()));
    }
    Path to = Files.createDirectories(folder.libraries().resolve(content.toString()));
    for (Map.Entry<String, URL> file : packed.entrySet()) {
      unpack(file.getValue(), to.resolve(file.getKey()), own);
    }
    System.setProperty(property, to.toString());
  }

  /**
   * Whole or not at all: another run may be at it, and this one may be killed.
   *
   * @param own folder of this run, which the next one takes away when this one is killed
   */
  private static void unpack(URL packed, Path library, Path own) throws IOException {
    if (Files.exists(library)) {
      return;
    }
    Path begun = own.resolve(String.valueOf(library.getFileName()));
    try (InputStream in = packed.openStream()) {
      Files.copy(in, begun);
    }
    Files.move(begun, library, StandardCopyOption.ATOMIC_MOVE);
  }

  /** The folder of this system's libraries, in the runtime's own words. */
  private static String system() {
    String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String arch = System.getProperty("os.arch");
    String family = name.startsWith("mac") ? "osx" : name.startsWith("windows") ? "win" : "linux";
    return family + (arch.equals("aarch64") ? "-aarch64/" : "-x64/");
  }
}
