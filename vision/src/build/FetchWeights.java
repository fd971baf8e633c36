import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Build step, run from source: {@code npm ci} for the pose model's weights, unless what is installed
 * came from the present lock file. Argument: the folder of package.json.
 */
public final class FetchWeights {
  private FetchWeights() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]);
    Path lock = folder.resolve("package-lock.json");
    Path stamp = folder.resolve("node_modules").resolve(".installed-lock.json");
    if (Files.exists(stamp) && Files.mismatch(lock, stamp) < 0) {
      return;
    }
    boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("windows");
    ProcessBuilder npm =
        new ProcessBuilder(
            windows ? "npm.cmd" : "npm", "ci", "--ignore-scripts", "--no-audit", "--no-fund",
            "--loglevel=error");
    int exit;
    try {
      exit = npm.directory(folder.toFile()).redirectErrorStream(true).inheritIO().start().waitFor();
    } catch (IOException e) {
      System.err.println(
          "The build needs npm (part of Node.js) to bring in the pose model's weights, and did not"
              + " find it on the PATH. Install Node.js, then build again.");
      System.exit(1);
      return;
    }
    if (exit != 0) {
      System.err.println(
          "npm could not bring in the pose model's weights (see its message above). The first build"
              + " needs the network; EINTEGRITY means the download is not the file the lock names.");
      System.exit(1);
    }
    Files.copy(lock, stamp);
  }
}
