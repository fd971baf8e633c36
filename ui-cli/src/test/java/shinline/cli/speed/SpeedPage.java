package shinline.cli.speed;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A page of Markdown: paragraphs and tables. */
final class SpeedPage {
  private final List<String> lines = new ArrayList<>();

  void heading(String text) {
    lines.add(lines.isEmpty() ? "# " + text : "## " + text);
    lines.add("");
  }

  void paragraph(String text, Object... values) {
    lines.add(String.format(Locale.ROOT, text, values));
    lines.add("");
  }

  /**
   * @param format of one row's cells, with {@code |} between them
   */
  void table(List<String> headings, String format, List<Object[]> rows) {
    lines.add("| " + String.join(" | ", headings) + " |");
    lines.add("| --- |" + " ---: |".repeat(headings.size() - 1));
    for (Object[] row : rows) {
      lines.add("| " + String.format(Locale.ROOT, format, row) + " |");
    }
    lines.add("");
  }

  /** Which machine, and whether it was quiet. */
  void machine() throws IOException {
    var system = ManagementFactory.getOperatingSystemMXBean();
    double load = system.getSystemLoadAverage();
    paragraph(
        "Machine: %s%d cores, %s %s, Java %s; %.1f processes at work when the run began (0 on a"
            + " quiet machine).",
        processor(),
        system.getAvailableProcessors(),
        system.getName(),
        system.getArch(),
        System.getProperty("java.version"),
        Math.max(0, load));
    if (load > system.getAvailableProcessors() / 2.0) {
      paragraph(
          "**The machine was not quiet**: all times but core time are too long, and how many times"
              + " decoding a check takes is a rough figure.");
    }
  }

  private static String processor() throws IOException {
    Path file = Path.of("/proc/cpuinfo");
    return !Files.isReadable(file)
        ? ""
        : Files.readAllLines(file).stream()
            .filter(line -> line.startsWith("model name"))
            .map(line -> line.substring(line.indexOf(':') + 1).strip() + ", ")
            .findFirst()
            .orElse("");
  }

  void write(Path file) throws IOException {
    List<String> whole = lines.subList(0, lines.size() - 1);
    Files.write(file, whole, StandardCharsets.UTF_8);
  }

  @Override
  public String toString() {
    return String.join("\n", lines);
  }
}
