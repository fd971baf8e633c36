package shinline.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipReport;
import shinline.cli.picture.RepPictures;
import shinline.cli.text.Cautions;
import shinline.cli.text.Units;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.WorkOn;

class ReportPageTest {
  private static final String HOSTILE = "<script>alert('x')</script>\"&.mp4";

  private final ClipReport.Measured heel = ReportSets.set("set.mp4", 4, FlagKind.HEEL_RISE);

  @Test
  void textsFromOutsideNeverBecomeMarkup() {
    ClipReport.Measured report = ReportSets.set(HOSTILE, 2, FlagKind.HEEL_RISE);
    String page = ReportSets.page(report, ReportSets.pictures(report));
    assertThat(page).contains("&lt;script&gt;alert(&#39;x&#39;)").doesNotContain("<script>alert");
    assertThat(page).contains("alt=\"A &quot;drawn&quot; &lt;frame&gt; of rep 2\"");
  }

  @Test
  void thePolicyAllowsThisStyleAndThisScriptAndNothingElse() throws NoSuchAlgorithmException {
    String page = ReportSets.page(heel, RepPictures.none());
    String policy = only(page, "Content-Security-Policy\" content=\"([^\"]*)\"");
    assertThat(policy)
        .contains("default-src &#39;none&#39;", "img-src data:")
        .contains(hash(only(page, "(?s)<style>(.*?)</style>")))
        .contains(hash(only(page, "(?s)<script>(.*?)</script>")))
        .doesNotContain("unsafe");
    assertThat(page).doesNotContain("http:").doesNotContain("https:").doesNotContain("style=\"");
    assertThat(page.replaceAll("href=\"#rep-\\d+\"", "")).doesNotContain("href");
  }

  @Test
  void headingsStepDownOneAtATimeAndTheVerdictIsFirst() {
    String page = ReportSets.page(heel, ReportSets.pictures(heel));
    List<Integer> levels = new ArrayList<>();
    for (String level : all(page, "<h([1-6])")) {
      levels.add(Integer.valueOf(level));
    }
    assertThat(levels.get(0)).isEqualTo(1);
    assertThat(levels).filteredOn(l -> l == 1).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
    assertThat(all(page, "<h2[^>]*>([^<]*)<"))
        .containsExactly(
            "The one thing to work on",
            "Where to look",
            "Rep by rep",
            "Over the set",
            "First rep against last",
            "How far to trust this",
            "Take care");
  }

  @Test
  void theHeadlineNamesTheFaultOfASetThatHitItsTarget() {
    assertThat(ReportSets.page(heel, RepPictures.none()))
        .contains("<h1>4 reps measured, no target set; front heel lifts in reps 2 and 4.</h1>");
  }

  @Test
  void aBarIsToldInEachRepWithUnitsAndWhatItLostToTheFastest() {
    ClipReport.Measured bar = Sets.withBar(heel, 0.5, 0.4, Double.NaN, 0.45);
    String page = ReportSets.page(bar, RepPictures.none());
    assertThat(all(page, "<h2[^>]*>([^<]*)<")).contains("The bar");
    String section = only(page, "(?s)<section class=\"bar\"(.*?)</section>");
    assertThat(section)
        .contains("Mean speed <small>m/s<", "Peak speed <small>m/s<", "Slower <small>%<")
        .contains("<b>0.40</b><small> ±0.02</small>", "<b>0.72</b>", "<b>3.2</b>")
        // .50 to .40 is 20 per cent: Jukic 2023, doi 10.1186/s40798-023-00626-z.
        .contains("<b>20</b><small> ±2</small>", "<b>10</b>")
        .contains("The disc of the bar was not seen through the drive (rep 3).");
    assertThat(all(section, "(<polyline)")).as("the ways of three drives").hasSize(3);
  }

  @Test
  void aBarThatWasNeverFollowedHasNoSection() {
    assertThat(ReportSets.page(heel, RepPictures.none())).doesNotContain("The bar<");
    assertThat(ReportSets.page(Sets.withBar(heel, Double.NaN), RepPictures.none()))
        .doesNotContain("class=\"bar\"");
  }

  @Test
  void everyLengthIsThereInBothUnits() {
    String page = ReportSets.page(heel, RepPictures.none());
    assertThat(page).contains("5.0\u00a0cm</span>").contains("2.0\u00a0in</span>");
  }

  @Test
  void limitsAndCautionsAreAlwaysThere() {
    String page = ReportSets.page(heel, RepPictures.none());
    assertThat(page).contains(Cautions.safety()).contains(Cautions.limits().get(0));
  }

  @Test
  void whatWasNotMeasuredIsSaidWithItsReason() {
    ClipReport.Measured report = Sets.measured("set.mp4");
    assertThat(ReportSets.page(report, RepPictures.none()))
        .contains("Rear knee: the points it needs were not seen at the bottom (rep 2).");
  }

  @ParameterizedTest
  @EnumSource
  void everyFaultHasACueOfItsOwn(FlagKind kind) {
    ClipReport.Measured report = ReportSets.set("set.mp4", 2, kind);
    String cue = Cue.sentence(report.set().reps().get(1).flags().get(0));
    assertThat(ReportSets.page(report, RepPictures.none())).contains(cue.replace("'", "&#39;"));
    assertThat(cue).endsWith(".").hasSizeLessThan(140);
  }

  @Test
  void noMoreThanTwoThingsAreToWorkOnAndTheBackComesFirst() {
    ClipReport.Measured report =
        ReportSets.set(
            "set.mp4",
            4,
            FlagKind.WOBBLE,
            FlagKind.HOLD_SKIPPED,
            FlagKind.HEEL_RISE,
            FlagKind.BACK_ROUNDS);
    assertThat(WorkOn.of(report.set().reps()))
        .extracting(WorkOn::kind)
        .containsExactly(FlagKind.BACK_ROUNDS, FlagKind.HEEL_RISE);
  }

  @Test
  void aLongSetStaysBelowOneAndAHalfMegabytes() {
    ClipReport.Measured report = ReportSets.set("set.mp4", 20, FlagKind.values());
    byte[] large = new byte[120_000];
    RepPictures heavy =
        () ->
            ReportSets.pictures(report).all().stream()
                .map(
                    p ->
                        new shinline.cli.picture.RepPicture(
                            p.rep(), p.flag(), large, 640, 480, p.altText()))
                .toList();
    assertThat(ReportSets.page(report, heavy).length()).isLessThan(1_500_000);
  }

  @Test
  void aClipThatWasNotMeasuredHasAPageThatSaysWhy() throws IOException {
    StringWriter out = new StringWriter();
    new ReportPage(Units.METRIC).write(Sets.notMeasured(HOSTILE), out);
    assertThat(out.toString())
        .contains(
            "Not measured: This is not a side view: the camera is about 80° off",
            "Film from the side,")
        .doesNotContain("<script>alert");
  }

  private static String only(String page, String pattern) {
    List<String> found = all(page, pattern);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static List<String> all(String page, String pattern) {
    return Pattern.compile(pattern)
        .matcher(page)
        .results()
        .map((MatchResult r) -> r.group(1))
        .toList();
  }

  private static String hash(String text) throws NoSuchAlgorithmException {
    return "sha256-"
        + Base64.getEncoder()
            .encodeToString(
                MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aTopOrAShortRangeAloneIsToldAsAskedFor() {
    assertThat(ReportSets.page(Sets.asking(Sets.TOP_ALONE), RepPictures.none()))
        .contains("Asked for: top ")
        .contains(">Top <small>")
        .doesNotContain("nothing in particular");
    assertThat(ReportSets.page(Sets.asking(Sets.SHORT_RANGE_ALONE), RepPictures.none()))
        .contains("Asked for: short range.");
  }

  @Test
  void withNothingAskedForNothingIsGreen() {
    String page = ReportSets.page(Sets.free("x.mp4"), RepPictures.none());
    String body = page.substring(page.indexOf("<body"));
    assertThat(body).doesNotContain("mark-hit").contains("mark-none").contains("mark-flag");
  }

  @Test
  void aFlaggedMomentIsShownWithWhatWasBeforeAndAfter() {
    ClipReport.Measured report = ReportSets.faulty("x.mp4", 3, FlagKind.HEEL_RISE);
    String page = ReportSets.page(report, ReportSets.strips(report));
    // Once for the kind: the surest tells the story, the others are one tap away.
    assertThat(page.split("class=\"moment\"", -1)).hasSize(2);
    assertThat(page.split("alt=\"beside it\"", -1)).hasSize(3);
  }
}
