package shinline.cli.licences;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.bytedeco.ffmpeg.global.avcodec;
import org.junit.jupiter.api.Test;

/**
 * The page of everything shipped is what the build itself tells: libraries from their POMs, parts
 * of the video library from its own configuration, weights from the lock file. Run with {@code
 * -Dshinline.docs=true} to write it anew.
 */
class LicencesTest {
  private static final Path DOCS = Path.of("..", "docs", "licences");
  private static final Path LIBRARIES = Path.of("target", "licences", "libraries.txt");
  private static final String LICENCE = "\\((?:[^()]|\\([^()]*\\))*\\)";
  private static final Pattern LIBRARY =
      Pattern.compile("\\s+((?:" + LICENCE + "\\s+)+)\\S.* \\(([^:]+:[^:]+):([^ ]+) - .*");
  private static final Pattern PART = Pattern.compile("--enable-(lib[a-z0-9-]+|openssl|zlib)");

  /** Licences of what the video library is built with, from each project's own pages, by memory. */
  private static final Map<String, String> PARTS =
      Map.ofEntries(
          Map.entry("libaom", "BSD-2-Clause, with the AOM patent licence"),
          Map.entry("libdrm", "MIT"),
          Map.entry("libfreetype", "FreeType licence"),
          Map.entry("libharfbuzz", "MIT"),
          Map.entry("libmfx", "MIT"),
          Map.entry("libmp3lame", "LGPL-2.0-or-later"),
          Map.entry("libopencore-amrnb", "Apache-2.0"),
          Map.entry("libopencore-amrwb", "Apache-2.0"),
          Map.entry("libopenh264", "BSD-2-Clause; writes the annotated clip"),
          Map.entry("libopus", "BSD-3-Clause"),
          Map.entry("libpulse", "LGPL-2.1-or-later"),
          Map.entry("libspeex", "BSD-3-Clause"),
          Map.entry("libsrt", "MPL-2.0"),
          Map.entry("libsvtav1", "BSD-3-Clause-Clear, with the AOM patent licence"),
          Map.entry("libvo-amrwbenc", "Apache-2.0"),
          Map.entry("libvpx", "BSD-3-Clause"),
          Map.entry("libwebp", "BSD-3-Clause"),
          Map.entry("libxcb", "MIT"),
          Map.entry("libxml2", "MIT"),
          Map.entry("libzimg", "WTFPL"),
          Map.entry("openssl", "Apache-2.0"),
          Map.entry("zlib", "Zlib"));

  @Test
  void thePageListsWhatIsShipped() throws IOException {
    String page = page();
    Path file = DOCS.resolve("shipped.md");
    if (Boolean.getBoolean("shinline.docs")) {
      Files.writeString(file, page);
    }
    assertThat(Files.readString(file)).isEqualTo(page);
  }

  @Test
  void theProjectIsUnderTheLicenceItShows() throws IOException {
    assertThat(Files.readString(DOCS.resolve("apache-2.0.txt")))
        .contains("Apache License")
        .contains("Version 2.0, January 2004")
        .contains("END OF TERMS AND CONDITIONS");
    assertThat(Files.readString(Path.of("..", "pom.xml"))).contains("<name>Apache-2.0</name>");
    JsonNode npm = new ObjectMapper().readTree(Path.of("..", "vision", "package.json").toFile());
    assertThat(npm.get("license").asText()).isEqualTo("Apache-2.0");
  }

  private static String page() throws IOException {
    List<String> page = new ArrayList<>();
    page.add("# What is shipped, and under which licences");
    page.add("");
    page.add("Shinline itself is under the Apache License 2.0: [apache-2.0.txt](apache-2.0.txt).");
    page.add("It ships what the tables list. A test compares this page with the build.");
    page.add("");
    page.add("## Weights of the pose model");
    page.add("");
    page.add("| package | version | licence |");
    page.add("|---|---|---|");
    JsonNode packages =
        new ObjectMapper()
            .readTree(Path.of("..", "vision", "package-lock.json").toFile())
            .get("packages");
    packages
        .fields()
        .forEachRemaining(
            p -> {
              if (!p.getKey().isEmpty()) {
                page.add(
                    "| "
                        + p.getKey().replace("node_modules/", "")
                        + " | "
                        + p.getValue().get("version").asText()
                        + " | "
                        + p.getValue().get("license").asText()
                        + " |");
              }
            });
    page.add("");
    page.add("Converted during the build from the format they come in; the numbers stay the same.");
    page.add("");
    page.add("## Libraries");
    page.add("");
    page.add("As their own POMs tell; where there are several, any one may be chosen.");
    page.add("");
    page.add("| library | version | licence |");
    page.add("|---|---|---|");
    for (String line : new TreeSet<>(libraries().values())) {
      page.add(line);
    }
    page.add("");
    page.add("The image library's archive holds the licences of its own parts, in the folder");
    page.add("`share/licenses`; the matrix library in it is under BSD-3-Clause.");
    page.add("");
    page.add("## Parts of the video library");
    page.add("");
    page.add("Built as: " + avcodec.avcodec_license().getString() + ". Its parts:");
    page.add("");
    page.add("| part | licence |");
    page.add("|---|---|");
    Matcher part = PART.matcher(avcodec.avcodec_configuration().getString());
    TreeSet<String> parts = new TreeSet<>();
    while (part.find()) {
      parts.add(part.group(1));
    }
    // What a part is depends on the machine; the page tells the union of those that are known.
    assertThat(PARTS.keySet()).containsAll(parts);
    for (Map.Entry<String, String> known : new TreeMap<>(PARTS).entrySet()) {
      page.add("| " + known.getKey() + " | " + known.getValue() + " |");
    }
    page.add("");
    page.add("The page of a set holds no script but the project's own.");
    return String.join("\n", page) + "\n";
  }

  private static Map<String, String> libraries() throws IOException {
    Map<String, String> rows = new TreeMap<>();
    for (String line : Files.readAllLines(LIBRARIES)) {
      Matcher library = LIBRARY.matcher(line);
      if (library.matches() && !library.group(2).startsWith("shinline:")) {
        String licences =
            Pattern.compile(LICENCE)
                .matcher(library.group(1))
                .results()
                .map(l -> l.group().substring(1, l.group().length() - 1))
                .collect(Collectors.joining("; "));
        rows.put(
            library.group(2),
            "| " + library.group(2) + " | " + library.group(3) + " | " + licences + " |");
      }
    }
    assertThat(rows).hasSizeGreaterThan(15);
    return rows;
  }
}
