package shinline.cli.place;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * Gives the libraries their place, once, before any of them is loaded. They unpack themselves into
 * the system's temporary folder otherwise, which may be missing or too small, and leave there what
 * a killed run unpacked.
 */
public final class LibraryPlace {
  private static final String LIBRARIES = "org.bytedeco.javacpp.cachedir";
  private static final String MODEL_RUNTIME = "onnxruntime.native.path";
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
    unpackModelRuntime(begun.place());
    if (System.getProperty(LIBRARIES) == null) {
      System.setProperty(LIBRARIES, folder.libraries().toString());
    }
  }

  /** Where its libraries lie already it makes no more than an empty temporary folder. */
  private void unpackModelRuntime(Path to) {
    try {
      for (String library : List.of("onnxruntime", "onnxruntime4j_jni")) {
        String name = System.mapLibraryName(library);
        try (InputStream in =
            LibraryPlace.class.getResourceAsStream("/ai/onnxruntime/native/" + system() + name)) {
          if (in == null) {
            return;
          }
          Files.copy(in, to.resolve(name));
        }
      }
      System.setProperty(MODEL_RUNTIME, to.toString());
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("place.unwritable", folder.place(), ProgramFolder.VARIABLE));
    }
  }

  /** The folder of this system's libraries, in the runtime's own words. */
  private static String system() {
    String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String arch = System.getProperty("os.arch");
    String family = name.startsWith("mac") ? "osx" : name.startsWith("windows") ? "win" : "linux";
    return family + (arch.equals("aarch64") ? "-aarch64/" : "-x64/");
  }
}
