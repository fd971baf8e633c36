package shinline.cli.context;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Shows a page in the browser of whoever sits at the computer. */
@FunctionalInterface
public interface PageOpening {

  /** Tries to; where nothing can be opened nothing happens. */
  void open(Path page);

  /** By the desktop's own command, where there is a desktop. */
  static PageOpening onDesktop() {
    return page ->
        command(System.getProperty("os.name", ""), System.getenv(), page)
            .ifPresent(PageOpening::start);
  }

  /** The command that opens a page; empty without a desktop. */
  static Optional<List<String>> command(String system, Map<String, String> environment, Path page) {
    String name = system.toLowerCase(Locale.ROOT);
    String file = page.toAbsolutePath().normalize().toString();
    if (name.startsWith("windows")) {
      return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler", file));
    }
    if (name.startsWith("mac")) {
      return Optional.of(List.of("open", file));
    }
    boolean screen =
        !environment.getOrDefault("DISPLAY", "").isEmpty()
            || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    return screen ? Optional.of(List.of("xdg-open", file)) : Optional.empty();
  }

  private static void start(List<String> command) {
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException nothingToOpenWith) {
      // The path is printed: it can be opened by hand.
      return;
    }
  }
}
