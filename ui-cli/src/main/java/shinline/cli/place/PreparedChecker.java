package shinline.cli.place;

import java.nio.file.Path;
import java.util.Optional;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.PhotoChecker;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.vision.library.VideoLibraries;

/** Gives the libraries their place before the first clip is measured. */
public final class PreparedChecker implements ClipChecker {
  private final ClipChecker inner;
  private final LibraryPlace place;
  private Optional<Thread> early = Optional.empty();

  public PreparedChecker(ClipChecker inner, ProgramFolder folder) {
    this.inner = inner;
    place = new LibraryPlace(folder);
  }

  /**
   * Loads the libraries on a thread of its own while the command line is still being read; both
   * take half a second. What goes wrong is left for {@link #check} to meet again.
   */
  public void beginEarly() {
    Thread loading =
        new Thread(
            () -> {
              try {
                place.prepare();
                VideoLibraries.load();
              } catch (RuntimeException | LinkageError e) {
                // Told where it matters.
                return;
              }
            },
            "early");
    loading.setDaemon(true);
    loading.start();
    early = Optional.of(loading);
  }

  /** Of two threads that load libraries at once, one may find them half loaded. */
  private void prepare() {
    early.ifPresent(PreparedChecker::await);
    place.prepare();
  }

  private static void await(Thread loading) {
    try {
      loading.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
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
}
