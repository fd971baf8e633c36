package shinline.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import shinline.cli.words.SentenceScan.Found;

/** What a person reads stands in the bundle, and nowhere else. */
class SentencesTest {
  /** Literals that only look like sentences. */
  private static final Set<Found> NOT_READ =
      Set.of(
          // The program's name before what it says, and a command line as it is typed.
          new Found("CommandContext.java", "shinline: □"),
          new Found("Version.java", "shinline □"),
          new Found("AccuracyCommand.java", "shinline accuracy □□ --model □□"),
          new Found("AccuracyCommand.java", " --cameras □"),
          // HTML for a browser: names of style classes, and the content policy.
          new Found("Figure.java", "reading □"),
          new Found("PlotFrame.java", "grid zero"),
          new Found("Markup.java", "<!doctype html>\n"),
          new Found("PageParts.java", "'; script-src '□"),
          new Found(
              "PageParts.java",
              "default-src 'none'; img-src data:; style-src '□□'; base-uri 'none';"
                  + " form-action 'none'"),
          // For a debugger.
          new Found("Series.java", "Series of □ samples, □ seen"));

  /**
   * Files whose literals no coach reads: what is wrong with a resource of the build's own, and the
   * layout of one.
   */
  private static final Set<String> OF_THE_BUILD =
      Set.of("ConvertPoseModels.java", "CalibrationSheet.java", "CalibrationFile.java");

  @Test
  void noSentenceStandsOutsideTheBundle() {
    List<Found> found = SentenceScan.of(MainSources.parsed());
    assertThat(found)
        .filteredOn(f -> !OF_THE_BUILD.contains(f.file()))
        .filteredOn(f -> !NOT_READ.contains(f))
        .as("move these to words.properties")
        .isEmpty();
    assertThat(found).as("exceptions that are none any more").containsAll(NOT_READ);
    assertThat(found.stream().map(Found::file).distinct().toList())
        .as("files without sentences, to be taken off the list")
        .containsAll(OF_THE_BUILD);
  }

  @Test
  void sentencesAreFoundWhereverTheyStand() {
    assertThat(
            found(
                """
                @Command(description = "Measures every rep.")
                class Example {
                  static final String NOTE = "film the whole set";
                  void say(Markup page, int rep, String what) {
                    print("Rep " + rep);
                    print(rep + " frames" + what);
                    print("cannot write " + what + ". Choose"
                        + " another place.");
                    throw new CoachException("no such file");
                  }
                  void write(Markup page, boolean good) {
                    page.leaf("h2", "Take care", "id", "take care");
                    page.open("svg", "aria-label", "shin over time");
                    page.text(good ? "as asked" : "just outside");
                  }
                }
                """))
        .containsExactly(
            "Measures every rep.",
            "film the whole set",
            "Rep □",
            "□ frames□",
            "cannot write □. Choose another place.",
            "no such file",
            "Take care",
            "shin over time",
            "as asked",
            "just outside");
  }

  @Test
  void whatNobodyReadsIsLeftOut() {
    assertThat(
            found(
                """
                @SuppressWarnings("a reason for it")
                class Example {
                  void work(Markup page, int n, String name) {
                    if (n < 0) {
                      throw new IllegalArgumentException("n is too small: " + n);
                    }
                    json("kneePastToeCm", "shin-off-target", "%.1f %s%.1f", "[a-z]+ *[0-9]");
                    page.open("svg", "class", n > 0 ? "grid zero" : "plain line", "id", "p-" + n);
                    print(Words.say("text.note", name) + " " + Words.say("report.rep", n));
                  }
                }
                """))
        .isEmpty();
  }

  @Test
  void scriptAndStyleSheetHoldNoWords() throws IOException {
    Path folder = Path.of("src", "main", "resources", "shinline", "cli", "report");
    assertThat(texts(folder.resolve("report.js"), "\"([^\"\n]*)\""))
        .filteredOn(t -> t.matches(".*\\p{L}{2,} .*\\p{L}.*"))
        .containsExactly("use strict");
    assertThat(texts(folder.resolve("report.css"), "content:\\s*([^;]*);"))
        .isNotEmpty()
        .noneMatch(t -> t.matches(".*\"[^\"]*\\p{L}{2,}.*"));
  }

  private static List<String> texts(Path file, String pattern) throws IOException {
    return Pattern.compile(pattern)
        .matcher(Files.readString(file))
        .results()
        .map((MatchResult m) -> m.group(1))
        .toList();
  }

  private static List<String> found(String text) {
    return SentenceScan.of(MainSources.example(text)).stream().map(Found::text).toList();
  }
}
