package shinline.cli.file;

import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import shinline.vision.clip.FileDigest;

/**
 * Everything one run writes. Files grow in a {@link WorkFolder} and appear whole or not at all; a
 * coach's own file is never replaced or removed: not a clip that was given, whatever its name, and
 * nothing else unless it was named as an output, or the folder's {@link FolderManifest} knows it by
 * its present digest.
 */
public final class OutputFiles implements AutoCloseable {
  private final List<Path> clips;
  private final Map<Path, WorkFolder> work = new HashMap<>();

  /** A run that is called off leaves nothing half done behind. */
  private final Thread lastResort = new Thread(this::takeAway, "take-work-folders-away");

  private boolean closed;

  /**
   * @param clips what is read, and so never written
   */
  public OutputFiles(Collection<Path> clips) {
    this.clips = List.copyOf(clips);
    Runtime.getRuntime().addShutdownHook(lastResort);
  }

  /** A file by its place. */
  public WholeFile file(Path place, Claim claim) {
    return new WholeFile(place, claim, this);
  }

  /** Whether a place is that of a clip given, by name, by link or by another name of the file. */
  public boolean isClip(Path place) {
    return clips.stream().anyMatch(clip -> same(place, clip));
  }

  /** Whether a file may be put there: none is there yet, or it may be replaced. */
  public boolean mayTake(Path place, Claim claim) throws IOException {
    if (isClip(place)) {
      return false;
    }
    if (claim == Claim.NAMED || !Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    return Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS) && isOurs(place);
  }

  private static boolean isOurs(Path place) throws IOException {
    Path folder = folder(place);
    Optional<String> digest = new FolderManifest(folder).digest(name(place));
    return digest.isPresent() && digest.get().equals(FileDigest.of(place).sha256());
  }

  /** Where a file grows that will go to a place; its folder has to be there. */
  synchronized Path begin(Path place) throws IOException {
    if (closed) {
      // Called off while a result was about to be written.
      throw new ClosedChannelException();
    }
    Path folder = folder(place).toRealPath();
    WorkFolder own = work.get(folder);
    if (own == null) {
      own = WorkFolder.open(folder);
      work.put(folder, own);
    }
    return own.newFile(name(place));
  }

  /** Puts a file that is whole to its place. */
  synchronized void finish(Path begun, Path place, Claim claim) throws IOException {
    if (claim == Claim.NAMED) {
      move(begun, place);
      return;
    }
    String sha256 = FileDigest.of(begun).sha256();
    new FolderManifest(folder(place))
        .turn(
            entries -> {
              move(begun, place);
              entries.wrote(name(place), sha256);
              return true;
            });
  }

  /**
   * Removes files of a folder that this program wrote and nobody changed since.
   *
   * @param which by name, without folders
   */
  public void remove(Path folder, Predicate<String> which) throws IOException {
    FolderManifest manifest = new FolderManifest(folder);
    if (!manifest.exists()) {
      return;
    }
    manifest.turn(
        entries -> {
          for (String name : new ArrayList<>(entries.files())) {
            Path file = folder.resolve(name);
            if (!which.test(name) || isClip(file)) {
              continue;
            }
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
              entries.removed(name);
            } else if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && entries.digest(name).equals(Optional.of(FileDigest.of(file).sha256()))) {
              Files.delete(file);
              entries.removed(name);
            }
          }
          return true;
        });
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path folder(Path place) {
    return place.toAbsolutePath().resolveSibling("");
  }

  private static String name(Path place) {
    return String.valueOf(place.getFileName());
  }

  private static boolean same(Path a, Path b) {
    if (a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize())) {
      return true;
    }
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      return false;
    }
  }

  /** Takes the work folders away. */
  @Override
  public void close() {
    takeAway();
    try {
      Runtime.getRuntime().removeShutdownHook(lastResort);
    } catch (IllegalStateException e) {
      // The run is being called off this very moment, and the hook has nothing left to do.
      return;
    }
  }

  private synchronized void takeAway() {
    closed = true;
    for (WorkFolder folder : work.values()) {
      try {
        folder.close();
      } catch (IOException e) {
        // It stays known by the manifest, and the next run takes it away.
        continue;
      }
    }
    work.clear();
  }
}
