package shinline.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Schemas;
import shinline.cli.Sets;
import shinline.cli.check.ClipChecker;
import shinline.cli.command.DemoCommand;
import shinline.cli.context.CommandContext;
import shinline.cli.context.PageOpening;
import shinline.cli.words.Words;

/** The invented squad, with a checker that looks at no picture. */
class DemoCommandTest {
  private static final String LAST_DAY = "2026-03-16";
  private static final int ATHLETES = 6;

  @TempDir Path home;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final List<String> measured = new ArrayList<>();
  private final ClipChecker checker =
      (clip, options, progress) -> {
        measured.add(String.valueOf(clip.getFileName()));
        return Sets.measured(String.valueOf(clip.getFileName()));
      };

  private CommandContext context() {
    return PlainContext.of(out, err);
  }

  private int run(String... args) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    return new Main(context(), checker).run(args);
  }

  private Path folder() {
    return home.resolve("demo");
  }

  private int build() {
    return run("demo", folder().toString(), "--as-of", LAST_DAY, "--no-open");
  }

  private List<Path> files(String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder())) {
      return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  private Path record() {
    return folder().resolve("record");
  }

  @Test
  void everyPageSaysThatItIsInvented() throws IOException {
    assertThat(build()).as(err.toString()).isZero();
    String mark = Words.say("invented.page");
    List<Path> pages = files(".html");
    // Team, cards and board, a page a clip, a page of progress an athlete.
    assertThat(pages).hasSize(3 + measured.size() + ATHLETES);
    assertThat(measured).hasSize(3);
    for (Path page : pages) {
      assertThat(Files.readString(page)).as(page.toString()).contains(mark);
    }
    String cards = Files.readString(files("cards.html").get(0));
    assertThat(cards.split("class=\"card\"", -1).length)
        .as("each card, for they are cut apart")
        .isEqualTo(cards.split(">" + Words.say("invented.part") + "<", -1).length);
    assertThat(out.toString()).contains(mark, "team.html");
    // Pages made later say so, too.
    Path later = home.resolve("later.html");
    assertThat(
            run("progress", "Nela Osterwyn", "--record", record().toString(), "--out", "" + later))
        .isZero();
    assertThat(later).content().contains(mark);
    assertThat(err.toString()).contains("invented");
  }

  @Test
  void sixWeeksEndOnTheDayThatWasAskedFor() throws IOException {
    build();
    List<String> lines = Files.readAllLines(record().resolve("record.jsonl"));
    for (String line : lines) {
      assertThat(Schemas.complaints("record.schema.json", line)).isEmpty();
    }
    List<String> dates =
        lines.stream()
            .filter(l -> l.contains("\"kind\":\"set\""))
            .map(l -> l.replaceAll(".*\"date\":\"([^\"]*)\".*", "$1"))
            .distinct()
            .sorted()
            .toList();
    assertThat(dates)
        .containsExactly(
            "2026-02-02",
            "2026-02-09",
            "2026-02-16",
            "2026-02-23",
            "2026-03-02",
            "2026-03-09",
            LAST_DAY);
    assertThat(lines.stream().filter(l -> l.contains("\"leg\":\"left\"")).count())
        .isGreaterThan(60);
    assertThat(lines.stream().filter(l -> l.contains("\"leg\":\"right\"")).count())
        .isGreaterThan(60);
  }

  @Test
  void oneHurtsOneIsUnevenOneDoesNotGetOn() throws IOException {
    build();
    String team = Files.readString(files("team.html").get(0));
    assertThat(team.indexOf("Caden Morrowell")).isLessThan(team.indexOf("Runa Tolvane"));
    assertThat(advice("Caden Morrowell")).contains("\"decision\":\"stop\"");
    assertThat(run("progress", "Ilse Brandavik", "--record", record().toString())).isZero();
    // 14 kg in the right hand against 18 in the left.
    assertThat(out.toString()).contains("weaker is 77.8 % of stronger (right leg has less)");
    assertThat(advice("Joris Quellmark")).contains("\"decision\":\"stay\"", "\"value\":16");
    assertThat(advice("Runa Tolvane", "2026-03-15"))
        .contains("\"decision\":\"raise-load\"", "\"value\":20");
  }

  private String advice(String athlete, String... asOf) throws IOException {
    Path json = home.resolve("advice.json");
    assertThat(
            run(
                "advise",
                athlete,
                "--record",
                record().toString(),
                "--as-of",
                asOf.length > 0 ? asOf[0] : LAST_DAY,
                "--json",
                json.toString()))
        .as(err.toString())
        .isZero();
    return Files.readString(json).replaceAll("\\s", "");
  }

  @Test
  void aSecondDemoReplacesTheFirstAndNothingElse() throws IOException {
    build();
    assertThat(build()).as(err.toString()).isZero();
    Path own = Files.writeString(folder().resolve("evening-at-tallow-yard/notes.txt"), "mine");
    assertThat(build()).isEqualTo(2);
    assertThat(err.toString()).contains("evening-at-tallow-yard/notes.txt");
    assertThat(own).hasContent("mine");
    assertThat(files("team.html")).hasSize(1);
    Files.delete(own);
    Path sheet = files("sheet.csv").get(0);
    Files.writeString(sheet, Files.readString(sheet) + "\n");
    assertThat(build()).as("a file of its own that was changed").isEqualTo(2);
  }

  @Test
  void aFolderOfSomebodyElseIsLeftAlone() throws IOException {
    Path file = Files.createDirectories(folder()).resolve("training-plan.txt");
    Files.writeString(file, "mine");
    assertThat(build()).isEqualTo(2);
    assertThat(err.toString()).contains("training-plan.txt", "Name a new folder");
    assertThat(file).hasContent("mine");
    assertThat(run("demo", file.toString(), "--no-open")).isEqualTo(2);
    assertThat(measured).isEmpty();
  }

  @Test
  void theTeamPageIsOpenedUnlessNobodyWantsIt() throws IOException {
    List<Path> opened = new ArrayList<>();
    CommandLine line =
        new CommandLine(
            new DemoCommand(
                context(),
                checker,
                Clock.fixed(Instant.parse("2026-03-16T20:00:00Z"), ZoneOffset.UTC),
                opened::add));
    assertThat(line.execute(folder().toString())).isZero();
    assertThat(opened).containsExactly(files("team.html").get(0));
    assertThat(line.execute(folder().toString(), "--no-open")).isZero();
    assertThat(opened).hasSize(1);
  }

  @Test
  void withoutADesktopNothingIsStarted() {
    Path page = Path.of("team.html");
    assertThat(PageOpening.command("Linux", Map.of(), page)).isEmpty();
    assertThat(PageOpening.command("Linux", Map.of("DISPLAY", ":0"), page).orElseThrow())
        .startsWith("xdg-open")
        .last()
        .asString()
        .endsWith("team.html");
    assertThat(PageOpening.command("Mac OS X", Map.of(), page).orElseThrow()).startsWith("open");
    assertThat(PageOpening.command("Windows 11", Map.of(), page).orElseThrow())
        .startsWith("rundll32");
  }
}
