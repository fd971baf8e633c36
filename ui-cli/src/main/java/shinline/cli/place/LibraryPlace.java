package shinline.cli.place;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
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
    unpackModelRuntime(begun.place());
    if (System.getProperty(LIBRARIES) == null) {
      System.setProperty(LIBRARIES, folder.libraries().toString());
    }
  }

  /**
   * Unpacks the model's runtime once for all runs, into a folder named by its content. Where its
   * libraries lie already beside the program there is nothing to unpack.
   */
  private void unpackModelRuntime(Path own) {
    try {
      List<URL> packed = new ArrayList<>();
      StringBuilder content = new StringBuilder("onnxruntime");
      for (String library : LIBRARY_NAMES) {
        URL at =
            LibraryPlace.class.getResource(
                "/ai/onnxruntime/native/" + system() + System.mapLibraryName(library));
        if (at == null || !(at.openConnection() instanceof JarURLConnection jar)) {
          return;
        }
        packed.add(at);
        content.append(String.format(Locale.ROOT, "-%08x", jar.getJarEntry().getCrc()));
      }
      Path to = Files.createDirectories(folder.libraries().resolve(content.toString()));
      for (int i = 0; i < packed.size(); i++) {
        unpack(packed.get(i), to.resolve(System.mapLibraryName(LIBRARY_NAMES.get(i))), own);
      }
      System.setProperty(MODEL_RUNTIME, to.toString());
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("place.unwritable", folder.place(), ProgramFolder.VARIABLE));
    }
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
