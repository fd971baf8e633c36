package shinline.cli.progress;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordStore;
import shinline.cli.record.Shell;
import shinline.cli.record.WrittenFiles;

/** The command over an invented athlete's record. */
class ProgressCommandTest {
  private static final String NAME = "Invented <Athlete>";
  private static final String CLIP = "ab".repeat(32);

  private final Shell shell = new Shell();

  @TempDir Path folder;

  @Test
  void tableAndPageTellWhatIsReal() throws IOException {
    add("2026-10-02", "left", "10kg", "shinDeg=8/2/1");
    add("2026-10-09", "left", "12kg", "shinDeg=10/2/1");
    add("2026-10-09", "right", "9kg", "shinDeg=10/2/1");
    Path page = folder.resolve("page.html");
    assertThat(progress("--out", page.toString())).isZero();
    // √2 times a ± of 1 is 1.4.
    assertThat(shell.out())
        .contains("left leg: 10.0° (bench-dumbbells, upright, 2 sessions): +2.0°, a real change")
        .contains("(beyond 1.4°)")
        .contains("weaker is 75.0 % of stronger (right leg has less)")
        .contains("96.54 to 103.46 %")
        .contains("weak ÷ strong × 100")
        .contains("cancels");
    String html = Files.readString(page);
    assertThat(html)
        .contains("Invented &lt;Athlete&gt;")
        .doesNotContain("<Athlete>")
        .contains("class=\"band\"")
        .contains("if it hurts, stop and see a clinician")
        .doesNotContain("http://")
        .doesNotContain("https://");
    assertThat(html.indexOf(">Load")).isLessThan(html.indexOf(">Estimated maximum"));
  }

  @Test
  void theDefaultPageAndItsPicturesGoWithTheAthlete() throws IOException {
    add("2026-10-02", "left", "10kg", "shinDeg=8/2/1", "--clip-sha256", CLIP);
    Path picture = folder.resolve("bottom.jpg");
    ImageIO.write(new BufferedImage(30, 60, BufferedImage.TYPE_INT_RGB), "jpg", picture.toFile());
    RecordStore store = new RecordStore(new RecordFolder(record()), Clock.systemUTC());
    new WrittenFiles(store.folder()).noteBottom(new AthleteName(NAME), picture, CLIP);
    assertThat(progress()).isZero();
    Path page;
    try (var pages = Files.list(record().resolve("pages"))) {
      page = pages.filter(p -> p.toString().endsWith("-progress.html")).findFirst().orElseThrow();
    }
    assertThat(Files.readString(page)).contains("data:image/jpeg;base64,");
    byte[] once = Files.readAllBytes(page);
    assertThat(progress()).isZero();
    assertThat(Files.readAllBytes(page)).isEqualTo(once);
    assertThat(shell.run("record", "remove", NAME, "--yes", "--record", record().toString()))
        .isZero();
    assertThat(page).doesNotExist();
    assertThat(picture).doesNotExist();
  }

  @Test
  void aNameThatIsNotOnRecordIsSaid() {
    assertThat(progress()).isEqualTo(2);
    assertThat(shell.err()).contains("no athletes yet");
    add("2026-10-02", "left", "10kg", "shinDeg=8");
    assertThat(shell.run("progress", "Nobody", "--record", record().toString())).isEqualTo(2);
    assertThat(shell.err()).contains("nothing on record of Nobody. On record: " + NAME);
  }

  private Path record() {
    return folder.resolve("record");
  }

  private int progress(String... more) {
    return run(new String[] {"progress", NAME, "--record", record().toString()}, more);
  }

  private void add(String date, String leg, String load, String bottom, String... more) {
    String[] args = {
      "record",
      "add",
      NAME,
      "--record",
      record().toString(),
      "--date",
      date,
      "--leg",
      leg,
      "--step",
      "bench-dumbbells",
      "--asked-reps",
      "8",
      "--target",
      "upright",
      "--load",
      load,
      "--load-kind",
      "each-hand",
      "--reps",
      "8",
      "--clean",
      "8",
      "--at-bottom",
      bottom
    };
    assertThat(run(args, more)).as(shell.err()).isZero();
  }

  private int run(String[] args, String... more) {
    String[] all = new String[args.length + more.length];
    System.arraycopy(args, 0, all, 0, args.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return shell.run(all);
  }
}
