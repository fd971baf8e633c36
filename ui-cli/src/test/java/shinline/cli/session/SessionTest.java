package shinline.cli.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Schemas;
import shinline.cli.Sets;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.csv.DecimalSign;
import shinline.cli.ladder.LadderFile;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.Progress;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordStore;
import shinline.metrics.track.Side;
import shinline.vision.clip.FileDigest;

/** A folder and a sheet, with a checker that looks at a clip's name instead of its picture. */
class SessionTest {
  private static final String HEAD = "clip,athlete,leg,load,done_reps,clean_reps,pain,club\n";

  @TempDir Path home;
  private Path folder;
  private Path record;
  private Path sheet;
  private final List<String> measured = new ArrayList<>();
  private final List<CheckOptions> asked = new ArrayList<>();
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void begin() throws IOException {
    folder = Files.createDirectory(home.resolve("monday"));
    record = home.resolve("record");
    sheet = home.resolve("day.csv");
  }

  private final ClipChecker checker =
      new ClipChecker() {
        @Override
        public ClipReport check(Path clip, CheckOptions options, Progress progress) {
          String name = String.valueOf(clip.getFileName());
          measured.add(name);
          asked.add(options);
          if (name.startsWith("broken")) {
            return new ClipReport.Unreadable(name, "the file is damaged", "copy it again");
          } else if (name.startsWith("empty")) {
            return Sets.notMeasured(name);
          } else if (name.startsWith("crash")) {
            throw new IllegalStateException("a fault of the program");
          } else if (name.startsWith("kill")) {
            throw new Killed();
          } else if (name.startsWith("bar")) {
            return ofFile(clip, Sets.withBar(Sets.measured(name), 0.5, 0.4));
          }
          return ofFile(clip, Sets.measured(name));
        }
      };

  /** Not an exception that a run outlives: what a stopped process looks like from inside. */
  private static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  private static ClipReport ofFile(Path clip, ClipReport.Measured made) {
    try {
      ClipFacts f = made.clip();
      return new ClipReport.Measured(
          new ClipFacts(
              f.fileName(),
              FileDigest.of(clip).sha256(),
              f.widthPx(),
              f.heightPx(),
              f.rotationDeg(),
              f.frames(),
              f.durationS(),
              f.medianFps(),
              f.variableFrameRate(),
              f.poseModel()),
          made.set(),
          made.warnings());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private void clip(String name, String content) throws IOException {
    Files.writeString(folder.resolve(name), content);
  }

  private void sheet(String... rows) throws IOException {
    Files.writeString(sheet, HEAD + String.join("\n", rows) + "\n");
  }

  private int run(String... more) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> args =
        new ArrayList<>(List.of("session", folder.toString(), "--record", record.toString()));
    args.addAll(List.of(more));
    CommandContext context = PlainContext.of(out, err);
    return new Main(context, checker).run(args.toArray(String[]::new));
  }

  private int runSheet() {
    return run("--sheet", sheet.toString());
  }

  private List<String> lines() throws IOException {
    Path file = record.resolve("record.jsonl");
    return Files.exists(file) ? Files.readAllLines(file) : List.of();
  }

  private String page(String name) throws IOException {
    return Files.readString(folder.resolve(SessionFolder.OUTPUT).resolve(name));
  }

  @Test
  void clipsAndSetsByEyeGoIntoTheRecordOnce() throws IOException {
    clip("a.mp4", "one");
    sheet("a.mp4,Mira Solberg,left,,,,no,Harbour", ",Mira Solberg,right,,8,7,no,Harbour");
    assertThat(runSheet()).isZero();
    assertThat(lines()).hasSize(2);
    for (String line : lines()) {
      assertThat(Schemas.complaints("record.schema.json", line)).isEmpty();
    }
    // Sets.measured: a hit, and an unclear rep with a spoiling flag.
    assertThat(lines().get(0))
        .contains(
            "\"cleanReps\":1",
            "\"reps\":2",
            "\"unclear\":0",
            FileDigest.of(folder.resolve("a.mp4")).sha256());
    assertThat(lines().get(1)).contains("by-hand", "\"cleanReps\":7");

    assertThat(runSheet()).isZero();
    assertThat(lines()).as("nothing twice").hasSize(2);
    assertThat(measured).containsExactly("a.mp4");
    assertThat(out.toString()).contains("already recorded");
  }

  @Test
  void theSpeedOfABarGoesIntoTheRecordAndOverTheWeeks() throws IOException {
    clip("bar-1.mp4", "one");
    clip("bar-2.mp4", "two");
    clip("plain.mp4", "three");
    Files.writeString(
        sheet,
        "clip,athlete,leg,date\nbar-1.mp4,Tavi Okoro,left,2026-03-02\n"
            + "bar-2.mp4,Tavi Okoro,left,2026-03-09\nplain.mp4,Mira Solberg,left,2026-03-09\n");
    assertThat(runSheet()).as(err.toString()).isZero();
    assertThat(lines().get(0))
        // Mean of 0.5 and 0.4, and each rep's own.
        .contains("\"barSpeedMps\":0.45", "\"barSpeedMps\":0.5", "\"barSpeedMps\":0.4")
        .contains("\"plusMinus\":{\"barSpeedMps\":0.02");
    assertThat(lines().get(2)).doesNotContain("barSpeed");
    assertThat(Schemas.complaints("record.schema.json", lines().get(0))).isEmpty();
    Path weeks = home.resolve("weeks.html");
    assertThat(command("progress", "Tavi Okoro", "--out", weeks.toString())).isZero();
    assertThat(Files.readString(weeks)).contains("Bar speed").contains("0.45\u00a0m/s");
    assertThat(out.toString()).contains("Bar speed");
  }

  private int command(String... line) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    List<String> args = new ArrayList<>(List.of(line));
    args.addAll(List.of("--record", record.toString()));
    CommandContext context = PlainContext.of(out, err);
    return new Main(context, checker).run(args.toArray(String[]::new));
  }

  @Test
  void theSheetsLegTellsTheCheckAndADisagreementIsSaid() throws IOException {
    clip("a.mp4", "one");
    sheet("a.mp4,Mira Solberg,right,,,,no,");
    assertThat(runSheet()).isZero();
    assertThat(asked.get(0).request().toString()).contains(Side.RIGHT.name());
    assertThat(asked.get(0).pictures()).isTrue();
    boolean clear = Sets.measured("a.mp4").set().setUp().shownLegs().frontLegClear();
    assertThat(err.toString().contains("the sheet counts")).isEqualTo(clear);
    assertThat(lines().get(0)).contains("\"leg\":\"right\"");
  }

  @Test
  void aBadClipStopsNothingAndTheWorstCodeCounts() throws IOException {
    clip("a.mp4", "one");
    clip("broken.mp4", "two");
    clip("empty.mp4", "three");
    sheet(
        "broken.mp4,Edda Rask,left,,,,,",
        "empty.mp4,Edda Rask,right,,,,,",
        "a.mp4,Mira Solberg,left,,,,,");
    assertThat(runSheet()).isEqualTo(3);
    assertThat(lines()).hasSize(1);
    assertThat(err.toString()).contains("broken.mp4", "Copy it again", "Film from the side");
    assertThat(page("team.html")).contains("Copy it again");
    Files.delete(folder.resolve("broken.mp4"));
    sheet("empty.mp4,Edda Rask,right,,,,,", "a.mp4,Mira Solberg,left,,,,,");
    assertThat(runSheet()).isEqualTo(4);
    clip("crash.mp4", "four");
    assertThat(runSheet()).isEqualTo(70);
  }

  @Test
  void aStoppedRunGoesOnWhereItWas() throws IOException {
    clip("a.mp4", "one");
    clip("kill.mp4", "two");
    clip("z.mp4", "three");
    sheet(
        "a.mp4,Mira Solberg,left,,,,no,",
        "kill.mp4,Mira Solberg,right,,,,no,",
        "z.mp4,Tavi Okoro,left,,,,no,");
    org.assertj.core.api.Assertions.assertThatThrownBy(this::runSheet)
        .satisfiesAnyOf(
            e -> assertThat(e).isInstanceOf(Killed.class),
            e -> assertThat(e).hasRootCauseInstanceOf(Killed.class));
    assertThat(lines()).hasSize(1);
    Files.move(folder.resolve("kill.mp4"), folder.resolve("b.mp4"));
    sheet(
        "a.mp4,Mira Solberg,left,,,,no,",
        "b.mp4,Mira Solberg,right,,,,no,",
        "z.mp4,Tavi Okoro,left,,,,no,");
    measured.clear();
    assertThat(runSheet()).isZero();
    assertThat(measured).containsExactly("b.mp4", "z.mp4");
    assertThat(lines()).hasSize(3);
  }

  @Test
  void whatChangedIsMeasuredAgain() throws IOException {
    clip("a.mp4", "one");
    Files.writeString(sheet, "clip,athlete,leg,target\na.mp4,Mira Solberg,left,upright\n");
    runSheet();
    Files.writeString(sheet, "clip,athlete,leg,target\na.mp4,Mira Solberg,left,past-toe\n");
    runSheet();
    clip("a.mp4", "another");
    runSheet();
    assertThat(measured).hasSize(3);
    runSheet();
    assertThat(measured).hasSize(3);
  }

  @Test
  void copiesAreMeasuredOnceAndRecordedForEachRow() throws IOException {
    clip("a.mp4", "one");
    clip("copy.mp4", "one");
    sheet(
        "a.mp4,Mira Solberg,left,,,,no,",
        "copy.mp4,Tavi Okoro,left,,,,no,",
        "copy.mp4,Mira Solberg,left,,,,no,");
    assertThat(runSheet()).isZero();
    assertThat(measured).containsExactly("a.mp4");
    assertThat(lines()).hasSize(2);
    assertThat(out.toString()).contains("already recorded");
  }

  @Test
  void painIsOnTheCoachsPageOnly() throws IOException {
    clip("a.mp4", "one");
    sheet("a.mp4,Juno Falk,left,,,,yes,");
    runSheet();
    assertThat(page("team.html")).contains("need-stop", "Juno Falk").containsIgnoringCase("pain");
    assertThat(page("board.html")).contains("Juno Falk").doesNotContainIgnoringCase("pain");
    assertThat(page("cards.html")).doesNotContainIgnoringCase("pain").doesNotContain("Juno");
  }

  @Test
  void halfFilledRowsAreToldWithRowAndColumn() throws IOException {
    clip("a.mp4", "one");
    sheet(
        "a.mp4,Mira Solberg,,,,,no,",
        ",Tavi Okoro,left,,8,9,,",
        ",Tavi Okoro,left,abc,8,8,,",
        ",Tavi Okoro,left,,8,8,maybe,",
        ",Tavi Okoro,right,,8,8,no,");
    assertThat(runSheet()).isEqualTo(2);
    assertThat(err.toString())
        .contains("row 2, column leg", "row 3, column clean_reps", "row 4, column load")
        .contains("row 5, column pain");
    assertThat(lines()).hasSize(1);
  }

  @Test
  void semicolonsCommasAndHeadingsInAnyOrder() throws IOException {
    Files.writeString(
        sheet,
        "\uFEFFLeg;Club;Athlete;clip;Load;load kind;Done reps;Clean-reps;date;Pain\n"
            + "R;Harbour;Mira Solberg;;12,5;each-hand;8;8;9.3.2026;n\n");
    assertThat(run("--sheet", sheet.toString(), "--decimal", "comma")).isZero();
    assertThat(lines().get(0))
        .contains("\"leg\":\"right\"", "\"date\":\"2026-03-09\"", "\"value\":12.5", "each-hand");
    assertThat(page("session.csv")).contains("club", "Harbour", ";12,5;kg;");
  }

  @Test
  void aDateThatCouldBeTwoDaysIsRefused() throws IOException {
    Files.writeString(
        sheet,
        "clip,athlete,leg,done_reps,clean_reps,date\n"
            + ",Mira Solberg,left,8,8,3/9/2026\n,Mira Solberg,left,8,8,3/25/2026\n");
    assertThat(runSheet()).isEqualTo(2);
    assertThat(err.toString()).contains("row 2, column date");
    assertThat(lines()).singleElement().asString().contains("2026-03-25");
  }

  @Test
  void workbooksAreReadWithTheirAthletes() throws IOException {
    Path book = home.resolve("day.xlsx");
    try (OutputStream file = Files.newOutputStream(book);
        Workbook made = new Workbook(file, "test", "1.0")) {
      Worksheet sets = made.newWorksheet("Monday");
      List<String> head =
          List.of("clip", "athlete", "leg", "load", "load_kind", "done_reps", "clean_reps", "date");
      for (int i = 0; i < head.size(); i++) {
        sets.value(0, i, head.get(i));
      }
      sets.value(1, 1, "Mira Solberg");
      sets.value(1, 2, "left");
      sets.value(1, 3, 12.5);
      sets.value(1, 4, "each-hand");
      sets.value(1, 5, 8);
      sets.value(1, 6, 7);
      sets.value(1, 7, java.time.LocalDate.of(2026, 3, 9));
      sets.style(1, 7).format("dd/mm/yyyy").set();
      Worksheet athletes = made.newWorksheet("Athletes");
      athletes.value(0, 0, "athlete");
      athletes.value(1, 0, "Levi Anders");
    }
    assertThat(run("--sheet", book.toString())).isZero();
    assertThat(lines().get(0)).contains("\"date\":\"2026-03-09\"", "\"value\":12.5");
    assertThat(err.toString()).contains("Mira Solberg is not among the athletes");
    assertThat(page("team.html")).contains("Levi Anders", "Not filmed");
  }

  @Test
  void aSheetThatIsNoneIsSaidPlainly() throws IOException {
    assertThat(run("--sheet", home.resolve("none.csv").toString())).isEqualTo(2);
    Path book = home.resolve("day.xlsx");
    Files.writeString(book, "this is no workbook");
    assertThat(run("--sheet", book.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("day.xlsx", "Save it again");
    Files.writeString(sheet, "clip,leg\n");
    assertThat(runSheet()).isEqualTo(2);
    assertThat(err.toString()).contains("\"athlete\" is missing");
  }

  @Test
  void anEmptySheetIsReadBackAndNeverReplacesOne() throws IOException {
    clip("a.mp4", "one");
    for (String name : List.of("new.csv", "new.xlsx")) {
      Path made = home.resolve(name);
      assertThat(run("--new-sheet", made.toString())).as(err.toString()).isZero();
      assertThat(run("--sheet", made.toString())).as(err.toString()).isZero();
      assertThat(lines()).isEmpty();
    }
    Path filled = home.resolve("new.csv");
    String text = Files.readString(filled).replaceFirst("a\\.mp4,,", "a.mp4,Mira Solberg,left");
    Files.writeString(filled, text);
    assertThat(run("--new-sheet", filled.toString())).isEqualTo(2);
    assertThat(filled).hasContent(text);
  }

  @Test
  void aCoachsFilesAreNeverReplaced() throws IOException {
    Path output = Files.createDirectory(folder.resolve(SessionFolder.OUTPUT));
    Files.writeString(output.resolve("team.html"), "my own notes");
    sheet(",Tavi Okoro,right,,8,8,no,");
    assertThat(runSheet()).isEqualTo(2);
    assertThat(output.resolve("team.html")).hasContent("my own notes");
    assertThat(lines()).hasSize(1);
  }

  @Test
  void whoeverIsRemovedLeavesNoPageBehind() throws IOException {
    clip("a.mp4", "one");
    sheet("a.mp4,Mira Solberg,left,,,,no,");
    runSheet();
    Path clips = folder.resolve(SessionFolder.OUTPUT).resolve("clips");
    assertThat(clips).isDirectoryContaining("glob:**.html");
    assertThat(command("record", "remove", "Mira Solberg", "--yes")).isZero();
    assertThat(clips).isDirectoryNotContaining("glob:**.{html,json,jpg}");
    for (String page : List.of("team.html", "cards.html", "board.html", "session.csv")) {
      assertThat(page(page)).doesNotContain("Mira");
    }
    assertThat(folder.resolve(SessionFolder.OUTPUT).resolve("kept"))
        .isDirectoryNotContaining("regex:.*[0-9a-f]{64}\\.json");
    assertThat(folder.resolve("a.mp4")).exists();
    assertThat(sheet).exists();
  }

  @Test
  void theOthersPagesAreMadeAgainAtOnceWithoutWhoeverIsRemoved() throws IOException {
    clip("a.mp4", "one");
    clip("b.mp4", "two");
    sheet(
        "a.mp4,Mira Solberg,left,,,,no,Harbour",
        "b.mp4,Tavi Okoro,left,,,,no,Harbour",
        ",Tavi Okoro,right,,8,8,no,Harbour");
    runSheet();
    String before = page("team.html");
    measured.clear();
    assertThat(command("record", "remove", "Mira Solberg", "--yes")).as(err.toString()).isZero();
    assertThat(out.toString()).contains("Made again without them");
    assertThat(measured).as("nothing is measured for it").isEmpty();
    assertThat(lines()).as("nothing is recorded for it").hasSize(2);
    String team = page("team.html");
    assertThat(team).contains("Tavi Okoro").doesNotContain("Mira").doesNotContain("a.mp4");
    assertThat(row(team, "Tavi Okoro")).isEqualTo(row(before, "Tavi Okoro"));
    assertThat(page("session.csv")).contains("Tavi Okoro,left").doesNotContain("Mira");
    assertThat(page("board.html")).contains("Tavi Okoro, left leg").doesNotContain("Mira");
    // What is there now is noted again: the next removal finds it.
    assertThat(command("record", "remove", "Tavi Okoro", "--yes")).isZero();
    assertThat(page("team.html")).doesNotContain("Okoro");
    assertThat(err.toString()).doesNotContain("was changed since");
  }

  private static String row(String team, String athlete) {
    String from = team.substring(team.indexOf(">" + athlete));
    return from.substring(0, from.indexOf("</tr>"));
  }

  @Test
  void withoutItsSheetASessionIsMadeAgainByItsNextRun() throws IOException {
    clip("a.mp4", "one");
    sheet("a.mp4,Mira Solberg,left,,,,no,", ",Tavi Okoro,right,,8,8,no,");
    runSheet();
    Files.delete(sheet);
    assertThat(command("record", "remove", "Mira Solberg", "--yes")).isZero();
    assertThat(err.toString()).contains("team.html", "start its session again");
    assertThat(folder.resolve(SessionFolder.OUTPUT).resolve("team.html")).doesNotExist();
  }

  @Test
  void watchingMeasuresEachClipOnceItIsWhole() throws IOException {
    sheet("a.mp4,Mira Solberg,left,,,,no,", "b.mp4,Mira Solberg,right,,,,no,");
    Session session =
        new Session(
            SessionFolder.of(folder),
            Optional.of(sheet),
            new Session.Setting(
                checker,
                "test",
                new RecordStore(new RecordFolder(record), Clock.systemUTC()),
                LadderFile.shipped(),
                Optional.empty(),
                DecimalSign.POINT,
                Clock.fixed(Instant.parse("2026-03-09T10:00:00Z"), ZoneOffset.UTC),
                new SilentListener()));
    Iterator<Step> steps =
        List.<Step>of(
                () -> {
                  assertThat(page("board.html")).contains("Waiting").contains("refresh");
                  clip("a.mp4", "on");
                },
                () -> assertThat(measured).isEmpty(),
                () -> clip("b.mp4", "half"),
                () -> {
                  assertThat(measured).containsExactly("a.mp4");
                  clip("b.mp4", "half and the rest");
                },
                () -> assertThat(measured).containsExactly("a.mp4"),
                () -> assertThat(measured).containsExactly("a.mp4", "b.mp4"))
            .iterator();
    session.watch(
        () -> {
          if (steps.hasNext()) {
            try {
              steps.next().take();
            } catch (IOException e) {
              throw new IllegalStateException(e);
            }
            return true;
          }
          return false;
        });
    assertThat(steps.hasNext()).isFalse();
    assertThat(lines()).hasSize(2);
    assertThat(page("board.html"))
        .contains("Mira Solberg, right leg", "1 of 2 clean")
        .doesNotContain("±");
  }

  /** What happens between two looks. */
  @FunctionalInterface
  private interface Step {
    void take() throws IOException;
  }

  private static final class SilentListener implements SessionListener {
    @Override
    public void say(String line) {}

    @Override
    public void complain(String line) {}

    @Override
    public void fault(String clip, Throwable cause) {
      throw new AssertionError(clip, cause);
    }

    @Override
    public Progress measuring(String label) {
      return Progress.silent();
    }
  }
}
