package shinline.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Sets;
import shinline.cli.context.CommandContext;
import shinline.cli.report.Browser;

/** The squad's pages in a browser: on a phone, on a laptop, on the wall. */
class DemoPagesTest {
  private static final Path SHOTS = Path.of("target", "screenshots");

  @TempDir static Path folder;

  @SuppressWarnings("NullAway.Init")
  private static Browser browser;

  @BeforeAll
  static void squad() {
    assumeTrue(
        Browser.present(),
        "no Chromium here: install the packages chromium and chromium-driver to test the pages");
    CommandContext context = PlainContext.of(new StringWriter(), new StringWriter());
    Main main =
        new Main(
            context,
            (clip, options, progress) -> Sets.measured(String.valueOf(clip.getFileName())));
    assertThat(main.run("demo", squadFolder().toString(), "--as-of", "2026-03-16", "--no-open"))
        .isZero();
    browser = new Browser(folder.resolve("profile"));
  }

  @AfterAll
  static void quit() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Path squadFolder() {
    return folder.resolve("squad");
  }

  private static Path page(String ending) throws IOException {
    try (Stream<Path> all = Files.walk(squadFolder())) {
      return all.filter(f -> f.toString().matches(".*" + ending)).findFirst().orElseThrow();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "team.html, 360, light",
    "team.html, 1280, light",
    "cards.html, 360, light",
    "cards.html, 1280, light",
    "board.html, 360, light",
    "board.html, 1920, dark",
    "ilse.*progress.html, 360, dark",
    "ilse.*progress.html, 1280, light"
  })
  void nothingIsWiderThanTheWindow(String name, int widthPx, String scheme) throws IOException {
    browser.scheme(scheme);
    browser.console();
    browser.open(page(name), widthPx, 900);
    assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(widthPx);
    // No word and no picture is cut off by what holds it.
    assertThat(
            browser.text(
                "[...document.querySelectorAll('.card, td, tbody th, figure, li')]"
                    + ".filter(e => e.scrollWidth > e.clientWidth + 1"
                    + " || e.scrollHeight > e.clientHeight + 1)"
                    + ".map(e => e.tagName + '.' + e.className + ' ' + e.textContent).join(', ')"))
        .isEmpty();
    assertThat(browser.console()).isEmpty();
    long heightPx = browser.number("document.documentElement.scrollHeight");
    browser.open(page(name), widthPx, (int) heightPx);
    String shot = name.replaceAll("[^a-z]+", "-");
    browser.shoot(SHOTS.resolve("squad-" + shot + "-" + widthPx + "-" + scheme + ".png"));
  }

  /** Six athletes and the cautions, for a clipboard. */
  @Test
  void theTeamPagePrintsOnOneSheet() throws IOException {
    browser.scheme("light");
    browser.open(page("team.html"), 1280, 900);
    assertThat(browser.sheets(SHOTS.resolve("squad-team.pdf"))).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({"team.html, 360", "team.html, 1280"})
  void noColumnIsATower(String name, int widthPx) throws IOException {
    browser.scheme("light");
    browser.open(page(name), widthPx, 900);
    // What was asked fits on at most three lines.
    assertThat(
            browser.number(
                "[...document.querySelectorAll('.asked')].filter(e => e.getClientRects()[0].height"
                    + " > 3.5 * parseFloat(getComputedStyle(e).lineHeight)).length"))
        .isZero();
  }
}
