package shinline.cli.report;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A headless Chromium that looks at one page and remembers everything the page asked for. */
public final class Browser implements AutoCloseable {
  static final File PROGRAM = new File("/usr/bin/chromium");
  static final File DRIVER = new File("/usr/bin/chromedriver");

  private static final com.fasterxml.jackson.databind.ObjectMapper JSON =
      new com.fasterxml.jackson.databind.ObjectMapper();

  private final ChromeDriver driver;

  /**
   * @param profile a new, empty folder
   */
  public Browser(Path profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(PROGRAM);
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--user-data-dir=" + profile);
    // With the driver named, nothing is looked for or fetched.
    driver =
        new ChromeDriver(
            new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).build(), options);
  }

  public static boolean present() {
    return PROGRAM.canExecute() && DRIVER.canExecute();
  }

  /** Prints what is open into that file, and counts the sheets. */
  public int sheets(Path pdf) throws IOException {
    Map<String, Object> printed =
        driver()
            .executeCdpCommand(
                "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
    byte[] bytes = Base64.getDecoder().decode(String.valueOf(printed.get("data")));
    Files.createDirectories(pdf.toAbsolutePath().getParent());
    Files.write(pdf, bytes);
    return new String(bytes, StandardCharsets.ISO_8859_1).split("/Type /Page\\b", -1).length - 1;
  }

  ChromeDriver driver() {
    return driver;
  }

  public void open(Path page, int widthPx, int heightPx) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", widthPx, "height", heightPx, "deviceScaleFactor", 1, "mobile", false));
    driver.get(page.toUri().toString());
  }

  public void scheme(String name) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", name))));
  }

  void scripts(boolean allowed) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  /** A number the page's own script engine works out. */
  public long number(String expression) {
    Object answer = ((JavascriptExecutor) driver).executeScript("return " + expression);
    return ((Number) answer).longValue();
  }

  public String text(String expression) {
    return String.valueOf(((JavascriptExecutor) driver).executeScript("return " + expression));
  }

  /** Complaints of the page, its content policy among them. */
  public List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** Addresses of everything asked for since the last call. */
  List<String> requests() {
    List<String> addresses = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      try {
        var message = JSON.readTree(entry.getMessage()).path("message");
        if (message.path("method").asText().equals("Network.requestWillBeSent")) {
          addresses.add(message.path("params").path("request").path("url").asText());
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return addresses;
  }

  /** Keeps what is in the window as a PNG. */
  public void shoot(Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Files.write(to, driver.getScreenshotAs(OutputType.BYTES));
  }

  /** What is in the window, as a picture and in words. */
  PagePicture picture() {
    String words =
        text(
            "(() => { const all = []; const walk ="
                + " document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);"
                + " while (walk.nextNode()) { const range = document.createRange();"
                + " range.selectNodeContents(walk.currentNode);"
                + " const box = range.getBoundingClientRect();"
                + " if (box.width > 0 && box.bottom > 0 && box.bottom <= innerHeight)"
                + " all.push(walk.currentNode.textContent); } return all.join(' '); })()");
    return new PagePicture(
        driver.getScreenshotAs(OutputType.BYTES), List.of(words.strip().split("\\s+")));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
