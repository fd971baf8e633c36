package shinline.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast by WCAG 2.2, computed from the colours the style sheet sets. */
class ContrastTest {
  /** WCAG 1.4.3, level AA, body text. */
  private static final double TEXT = 4.5;

  /** WCAG 1.4.11, level AA, lines that carry meaning. */
  private static final double GRAPHIC = 3;

  @ParameterizedTest
  @CsvSource({
    "ink, paper",
    "ink, sheet",
    "soft, paper",
    "soft, sheet",
    "accent, paper",
    "accent, sheet",
    "hit, hit-ground",
    "near, near-ground",
    "miss, miss-ground",
    "unclear, unclear-ground",
    "flag, flag-ground",
    "hit, paper",
    "near, paper",
    "miss, paper",
    "unclear, paper",
    "soft, hit-ground",
    "soft, miss-ground"
  })
  void textCanBeRead(String ink, String ground) throws IOException {
    for (Map<String, String> colours : schemes()) {
      assertThat(contrast(colours, ink, ground)).isGreaterThanOrEqualTo(TEXT);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "line, lowering",
    "line, hold",
    "line, drive",
    "line, sheet",
    "ink, sheet",
    "miss, sheet",
    "band, sheet"
  })
  void linesCanBeSeen(String ink, String ground) throws IOException {
    for (Map<String, String> colours : schemes()) {
      assertThat(contrast(colours, ink, ground)).isGreaterThanOrEqualTo(GRAPHIC);
    }
  }

  @Test
  void theFormulaGivesThePublishedEnds() {
    assertThat(contrast(Map.of("a", "#000", "b", "#ffffff"), "a", "b")).isEqualTo(21);
  }

  /** Light, dark and printed, in the order of the style sheet. */
  private static Iterable<Map<String, String>> schemes() throws IOException {
    java.util.List<Map<String, String>> schemes = new java.util.ArrayList<>();
    Matcher block = Pattern.compile(":root\\s*\\{([^}]*)}").matcher(css());
    while (block.find()) {
      Map<String, String> colours = new HashMap<>();
      Matcher colour = Pattern.compile("--([a-z-]+):\\s*(#[0-9a-f]+)").matcher(block.group(1));
      while (colour.find()) {
        colours.put(colour.group(1), colour.group(2));
      }
      schemes.add(colours);
    }
    assertThat(schemes).hasSize(3);
    return schemes;
  }

  private static String css() throws IOException {
    try (InputStream in = ReportPage.class.getResourceAsStream("report.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static double contrast(Map<String, String> colours, String a, String b) {
    double first = luminance(colours.get(a));
    double second = luminance(colours.get(b));
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(String hex) {
    String long6 = hex.length() == 4 ? hex.replaceAll("([0-9a-f])", "$1$1") : hex;
    int rgb = Integer.parseInt(long6.substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double c = (channel & 255) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
