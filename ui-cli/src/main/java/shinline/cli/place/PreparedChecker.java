package shinline.cli.place;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.PhotoChecker;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.Progress;
import shinline.cli.words.Words;

/**
 * Gives the libraries their place before the first clip is measured. They unpack themselves into
 * the system's temporary folder otherwise, which may be missing or too small, and leave there what
 * a killed run unpacked.
 */
public final class PreparedChecker implements ClipChecker {
  private static final String LIBRARIES = "org.bytedeco.javacpp.cachedir";
  private static final String MODEL_RUNTIME = "onnxruntime.native.path";
  private static final String TEMPORARY = "java.io.tmpdir";

  private final ClipChecker inner;
  private final ProgramFolder folder;
  private @Nullable RunFolder run;

  public PreparedChecker(ClipChecker inner, ProgramFolder folder) {
    this.inner = inner;
    this.folder = folder;
  }

  @Override
  public ClipReport check(Path clip, CheckOptions options, Progress progress) {
    prepare();
    return inner.check(clip, options, progress);
  }

  /** The same for still pictures. */
  public PhotoChecker photos(PhotoChecker photos) {
    return (photo, options) -> {
      prepare();
      return photos.check(photo, options);
    };
  }

  /** Where its libraries lie already it makes no more than an empty temporary folder. */
  private void unpackModelRuntime(Path to) {
    try {
      for (String library : List.of("onnxruntime", "onnxruntime4j_jni")) {
        String name = System.mapLibraryName(library);
        try (InputStream in =
            PreparedChecker.class.getResourceAsStream(
                "/ai/onnxruntime/native/" + system() + name)) {
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

  private synchronized void prepare() {
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
}
