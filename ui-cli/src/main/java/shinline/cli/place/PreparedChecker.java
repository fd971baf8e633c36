package shinline.cli.place;

import java.nio.file.Path;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.PhotoChecker;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.vision.library.VideoLibraries;
import shinline.vision.pose.ModelRuntime;

/** Gives the libraries their place before the first clip is measured. */
public final class PreparedChecker implements ClipChecker {
  private final ClipChecker inner;
  private final LibraryPlace place;

  public PreparedChecker(ClipChecker inner, ProgramFolder folder) {
    this.inner = inner;
    place = new LibraryPlace(folder);
  }

  /**
   * Loads the libraries on threads of their own while the command line is still being read: those
   * that read a clip, and beside them what computes the models, which has nothing in common with
   * them. What goes wrong is left for {@link #check} to meet again.
   */
  public void beginEarly() {
    begin(
        "early",
        () -> {
          place.prepare();
          begin("early-runtime", ModelRuntime::load);
          VideoLibraries.load();
        });
  }

  private static void begin(String name, Runnable loads) {
    Thread loading =
        new Thread(
            () -> {
              try {
                loads.run();
              } catch (RuntimeException | LinkageError e) {
                // Told where it matters.
                return;
              }
            },
            name);
    loading.setDaemon(true);
    loading.start();
  }

  @Override
  public ClipReport check(Path clip, CheckOptions options, Progress progress) {
    place.prepare();
    return inner.check(clip, options, progress);
  }

  /** The same for still pictures. */
  public PhotoChecker photos(PhotoChecker photos) {
    return (photo, options) -> {
      place.prepare();
      return photos.check(photo, options);
    };
  }
}
