package shinline.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Sets;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.ExitCode;
import shinline.metrics.fault.FlagKind;

/**
 * Pages in a real browser: two made from sample clips by the command itself, and one with hostile
 * names. Screenshots stay under target/screenshots; a picture in docs/images that no longer shows
 * the page fails, and with {@code -Dshinline.docs=true} is made anew.
 */
class BrowserTest {
  private static final Path SAMPLES = Path.of("..", "sample-clips");
  private static final Path SHOTS = Path.of("target", "screenshots");
  private static final String HOSTILE = "<img src=x onerror=alert(1)>'\".mp4";

  /** Mean difference of a cell's brightness, of 255: other fonts stay below, other looks do not. */
  private static final double SAME_FROM_AFAR = 4;

  private static final int PHONE_PX = 380;
  private static final int LAPTOP_PX = 1280;

  @TempDir static Path folder;

  @SuppressWarnings("NullAway.Init")
  private static Browser browser;

  @BeforeAll
  static void pages() throws IOException {
    assumeTrue(
        Browser.present(),
        "no Chromium here: install the packages chromium and chromium-driver to test the page");
    for (String clip : List.of("gym1-bench-clean", "plain1-bench-shallow")) {
      StringWriter err = new StringWriter();
      CommandContext surroundings = PlainContext.of(new StringWriter(), err);
      int code =
          Main.standard(surroundings)
              .run(
                  "check",
                  SAMPLES.resolve(clip + ".mp4").toString(),
                  "--target",
                  "over-toe",
                  "--height",
                  "180cm",
                  "--out",
                  folder.toString());
      assertThat(code).as(err.toString()).isEqualTo(ExitCode.MEASURED.number());
    }
    ClipReport.Measured report = ReportSets.set(HOSTILE, 10, FlagKind.values());
    Files.writeString(
        folder.resolve("made-up.html"), ReportSets.page(report, ReportSets.pictures(report)));
    ClipReport.Measured eight =
        ReportSets.faulty(
            "eight.mp4",
            8,
            FlagKind.LEAN_GROWS,
            FlagKind.HEEL_RISE,
            FlagKind.SHALLOW,
            FlagKind.LOWERING_RUSHED);
    Files.writeString(
        folder.resolve("eight-faulty.html"), ReportSets.page(eight, ReportSets.strips(eight)));
    ClipReport.Measured bar = Sets.withBar(eight, 0.52, 0.5, 0.47, 0.41);
    Files.writeString(
        folder.resolve("eight-bar.html"), ReportSets.page(bar, ReportSets.strips(bar)));
    browser = new Browser(folder.resolve("profile"));
  }

  @AfterAll
  static void quit() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void clean() {
    browser.scheme("light");
    browser.console();
    browser.requests();
  }

  private static Path page(String name) {
    return folder.resolve(name + ".html").toAbsolutePath();
  }

  @ParameterizedTest
  @ValueSource(strings = {"gym1-bench-clean", "plain1-bench-shallow"})
  void aPageOfASampleClipIsWholeAndAsksForNothing(String clip) throws IOException {
    browser.open(page(clip), LAPTOP_PX, 900);
    assertThat(browser.driver().getTitle()).contains(clip + ".mp4");
    assertThat(browser.number("document.querySelectorAll('tbody tr').length"))
        .isEqualTo(browser.number("document.querySelectorAll('.strip li').length"))
        .isPositive();
    assertThat(browser.number("document.images.length")).isPositive();
    picturesAreDecodedAndDescribed();
    assertThat(browser.number("document.querySelectorAll('.curve polyline').length"))
        .isGreaterThanOrEqualTo(4);
    assertThat(browser.number("document.querySelectorAll('.overlays polyline').length"))
        .isGreaterThanOrEqualTo(8);
    assertThat(
            browser.number(
                "performance.getEntriesByType('resource')"
                    + ".filter(e => !e.name.startsWith('data:')).length"))
        .isZero();
    assertThat(browser.requests())
        .allMatch(a -> a.startsWith("data:") || a.equals(page(clip).toUri().toString()));
    assertThat(browser.console()).isEmpty();
    assertThat(Files.size(page(clip))).isLessThan(1_500_000);
  }

  @ParameterizedTest
  @CsvSource({
    "gym1-bench-clean, 380, light",
    "gym1-bench-clean, 1280, light",
    "plain1-bench-shallow, 380, light",
    "plain1-bench-shallow, 1280, dark",
    "made-up, 380, dark",
    "made-up, 1280, light",
    "eight-faulty, 360, light",
    "eight-faulty, 768, light",
    "eight-faulty, 1400, light",
    "eight-bar, 360, dark",
    "eight-bar, 1280, light"
  })
  void nothingIsWiderThanTheWindow(String name, int widthPx, String scheme) throws IOException {
    browser.scheme(scheme);
    browser.open(page(name), widthPx, 900);
    assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(widthPx);
    long heightPx = browser.number("document.documentElement.scrollHeight");
    browser.open(page(name), widthPx, (int) heightPx);
    browser.shoot(SHOTS.resolve(name + "-" + widthPx + "-" + scheme + ".png"));
  }

  private static void picturesAreDecodedAndDescribed() {
    assertThat(browser.number("[...document.images].filter(i => i.naturalWidth === 0).length"))
        .isZero();
    assertThat(browser.number("[...document.images].filter(i => !i.alt).length")).isZero();
  }

  @Test
  void namesFromOutsideAreTextOnly() {
    browser.open(page("made-up"), LAPTOP_PX, 900);
    assertThat(browser.number("document.images.length")).isPositive();
    picturesAreDecodedAndDescribed();
    assertThat(browser.driver().getTitle()).startsWith(HOSTILE);
    assertThat(browser.driver().findElement(By.className("origin")).getText()).startsWith(HOSTILE);
    assertThat(browser.number("document.querySelectorAll('img[src=x]').length")).isZero();
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void theContentPolicyHoldsAgainstAForeignScriptAndPicture() {
    browser.open(page("made-up"), LAPTOP_PX, 900);
    assertThat(
            browser.text(
                "(() => { const s = document.createElement('script'); s.textContent ="
                    + " 'window.foreign = 1'; document.body.append(s);"
                    + " return String(window.foreign); })()"))
        .isEqualTo("undefined");
    assertThat(browser.console()).anyMatch(m -> m.contains("Content Security Policy"));
  }

  @Test
  void theUnitsSwitchWithTheKeyboard() {
    browser.open(page("gym1-bench-clean"), LAPTOP_PX, 900);
    assertThat(browser.number(shown(".cm"))).isPositive();
    assertThat(browser.number(shown(".in"))).isZero();
    Actions keys = new Actions(browser.driver());
    keys.sendKeys(Keys.TAB).perform();
    keys.sendKeys(Keys.ARROW_RIGHT).perform();
    assertThat(browser.number(shown(".cm"))).isZero();
    assertThat(browser.number(shown(".in"))).isPositive();
  }

  @Test
  void thePlotsAnswerToKeyboardAndPointer() {
    browser.open(page("gym1-bench-clean"), LAPTOP_PX, 900);
    Actions keys = new Actions(browser.driver());
    for (int i = 0;
        i < 40 && browser.number("document.activeElement.matches('.curve') ? 1 : 0") == 0;
        i++) {
      keys.sendKeys(Keys.TAB).perform();
    }
    keys.sendKeys(Keys.ARROW_RIGHT).perform();
    String atStart = browser.driver().findElement(By.cssSelector(".curve output")).getText();
    assertThat(atStart).contains(" s, frame ");
    keys.moveToElement(browser.driver().findElement(By.cssSelector(".curve svg.plot"))).perform();
    assertThat(browser.driver().findElement(By.cssSelector(".curve output")).getText())
        .contains(" s, frame ")
        .isNotEqualTo(atStart);
  }

  @Test
  void withoutScriptsEverythingButTheReadoutIsThere() {
    browser.scripts(false);
    try {
      browser.open(page("gym1-bench-clean"), PHONE_PX, 900);
      assertThat(browser.driver().findElements(By.cssSelector(".curve polyline"))).isNotEmpty();
      assertThat(browser.driver().findElement(By.cssSelector(".curve output")).isDisplayed())
          .isFalse();
      browser.driver().findElement(By.cssSelector("label[for=units-in]")).click();
      assertThat(browser.driver().findElement(By.cssSelector("tbody .in")).isDisplayed()).isTrue();
    } finally {
      browser.scripts(true);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"gym1-bench-clean", "plain1-bench-shallow", "eight-faulty", "eight-bar"})
  void aPagePrintsOnTwoSheets(String clip) throws IOException {
    browser.open(page(clip), LAPTOP_PX, 900);
    assertThat(browser.sheets(SHOTS.resolve(clip + ".pdf"))).isEqualTo(2);
  }

  /** README and docs/report.md show the page as the program makes it now. */
  @Test
  void thePictureOfTheDocumentationIsNotStale() throws IOException {
    browser.open(page("plain1-bench-shallow"), 1120, 1760);
    PagePicture now = browser.picture();
    Path png = Path.of("..", "docs", "images", "report.png");
    Path words = Path.of("..", "docs", "images", "report.txt");
    if (Boolean.getBoolean("shinline.docs")) {
      now.write(png, words);
    }
    PagePicture kept = PagePicture.read(png, words);
    String remake = "run this test with -Dshinline.docs=true, look at " + png + ", commit it";
    assertThat(kept.differences(now)).as(remake).isEmpty();
    assertThat(kept.unlike(now)).as(remake).isLessThan(SAME_FROM_AFAR);
  }

  @Test
  void aPictureOfAnotherPageIsToldFromIt() {
    browser.open(page("plain1-bench-shallow"), 1120, 1760);
    PagePicture shallow = browser.picture();
    browser.open(page("gym1-bench-clean"), 1120, 1760);
    PagePicture clean = browser.picture();
    assertThat(shallow.differences(clean)).isNotEmpty();
    assertThat(shallow.unlike(clean)).isGreaterThan(SAME_FROM_AFAR);
    assertThat(shallow.differences(shallow)).isEmpty();
    browser.scheme("dark");
    assertThat(clean.unlike(browser.picture())).isGreaterThan(SAME_FROM_AFAR);
  }

  private static String shown(String what) {
    return "[...document.querySelectorAll('main "
        + what
        + "')]"
        + ".filter(e => e.getClientRects().length > 0).length";
  }
}
