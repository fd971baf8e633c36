package shinline.cli.process;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Sets;
import shinline.cli.context.CommandContext;
import shinline.cli.file.FlagImages;
import shinline.cli.format.ResultJson;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.ExitCode;

/**
 * A worker that damages what a coach or an editor writes, one number a way, and gives it to the
 * commands that read it. Every damage must end in a code a coach can act on, and in words.
 */
final class MangledTexts {
  private static final Set<Integer> TELLING = Set.of(0, 2, 3, 4);
  private static final List<List<String>> ROWS =
      List.of(
          List.of(
              "clip",
              "athlete",
              "leg",
              "load",
              "done_reps",
              "clean_reps",
              "pain",
              "date",
              "load_kind"),
          List.of("a.mp4", "Mira Solberg", "left", "20", "", "", "no", "2026-03-09", "each-hand"),
          List.of("", "Mira Solberg", "right", "20", "8", "7", "no", "2026-03-09", "each-hand"),
          List.of("b.mp4", "Jon Falk", "left", "", "", "", "yes", "", ""));

  private final Path folder;
  private final Path scratch;
  private String said = "";

  private MangledTexts(Path folder) throws IOException {
    this.folder = folder;
    scratch = Files.createDirectories(folder.resolve("scratch"));
  }

  /** A folder, seed, first number, number after the last. */
  public static void main(String[] words) throws IOException {
    MangledTexts texts = new MangledTexts(Path.of(words[0]));
    texts.originals();
    long seed = Long.parseLong(words[1]);
    for (int n = Integer.parseInt(words[2]); n < Integer.parseInt(words[3]); n++) {
      WatchedWorker.begin(n);
      Kind kind = Kind.values()[n % Kind.values().length];
      WatchedWorker.done(n, texts.tried(n, kind, new Random(seed * 1_000_003 + n)));
    }
  }

  /** What is damaged. */
  private enum Kind {
    SHEET,
    WORKBOOK,
    TARGET,
    LADDER,
    RECORD,
    RESULT
  }

  private int run(String... words) {
    StringWriter out = new StringWriter();
    CommandContext context = PlainContext.of(out, out);
    int code =
        new Main(
                context,
                (clip, options, progress) ->
                    clip.getFileName().toString().startsWith("a")
                        ? Sets.measured(clip.getFileName().toString())
                        : new ClipReport.Unreadable("b.mp4", "damaged", "copy it again"))
            .run(words);
    said = out.toString();
    return code;
  }

  private String tried(int number, Kind kind, Random random) throws IOException {
    Damage damage = new Damage(random);
    int code =
        switch (kind) {
          case SHEET -> session(damaged("sheet.csv", damage));
          case WORKBOOK -> session(workbook(damage, random));
          case TARGET ->
              run("check", "a.mp4", "--no-report", "--target", damaged("target.yaml", damage));
          case LADDER -> ladder(damaged("ladder.yaml", damage), random);
          case RECORD -> record(damaged("record.jsonl", damage), random);
          case RESULT ->
              run("compare", damaged("a.json", damage), folder.resolve("b.json").toString());
        };
    if (!TELLING.contains(code) || said.contains("Exception") || said.contains("\tat ")) {
      System.out.println("number " + number + " " + kind + " code " + code + ": " + said);
    }
    return kind + " " + code;
  }

  private int session(String sheet) throws IOException {
    Files.deleteIfExists(folder.resolve("session-record/record.jsonl"));
    return run(
        "session",
        folder.resolve("monday").toString(),
        "--sheet",
        sheet,
        "--record",
        folder.resolve("session-record").toString());
  }

  private int ladder(String file, Random random) {
    return random.nextBoolean()
        ? run("ladder", file)
        : run("advise", "Mira Solberg", "--ladder", file, "--record", whole());
  }

  private String whole() {
    return folder.resolve("whole").toString();
  }

  private int record(String file, Random random) {
    String record = String.valueOf(Path.of(file).getParent());
    return switch (random.nextInt(4)) {
      case 0 -> run("record", "list", "--record", record);
      case 1 -> run("progress", "Mira Solberg", "--record", record);
      case 2 -> run("advise", "Mira Solberg", "--record", record);
      default -> run("record", "export", "--record", record);
    };
  }

  private String damaged(String name, Damage damage) throws IOException {
    Path to = scratch.resolve(name);
    Path from = name.endsWith(".jsonl") ? folder.resolve("whole") : folder;
    Files.write(to, damage.ofText(Files.readAllBytes(from.resolve(name))));
    return to.toString();
  }

  /** The packed file itself, or what is packed in it. */
  private String workbook(Damage damage, Random random) throws IOException {
    Path whole = folder.resolve("sheet.xlsx");
    Path to = scratch.resolve("sheet.xlsx");
    if (random.nextInt(3) == 0) {
      Files.write(to, damage.ofBytes(Files.readAllBytes(whole)));
      return to.toString();
    }
    try (ZipFile from = new ZipFile(whole.toFile());
        ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
      List<? extends ZipEntry> entries = from.stream().toList();
      int chosen = random.nextInt(entries.size());
      for (int i = 0; i < entries.size(); i++) {
        out.putNextEntry(new ZipEntry(entries.get(i).getName()));
        try (InputStream in = from.getInputStream(entries.get(i))) {
          byte[] bytes = in.readAllBytes();
          out.write(i == chosen ? damage.ofText(bytes) : bytes);
        }
      }
    }
    return to.toString();
  }

  // --- whole files ------------------------------------------------------------------------------

  private void originals() throws IOException {
    Path monday = Files.createDirectories(folder.resolve("monday"));
    Files.writeString(monday.resolve("a.mp4"), "a clip");
    Files.writeString(monday.resolve("b.mp4"), "another");
    StringBuilder sheet = new StringBuilder();
    ROWS.forEach(row -> sheet.append(String.join(",", row)).append('\n'));
    Files.writeString(folder.resolve("sheet.csv"), sheet.toString());
    try (OutputStream out = Files.newOutputStream(folder.resolve("sheet.xlsx"))) {
      out.write(workbook());
    }
    Files.write(
        folder.resolve("target.yaml"),
        Files.readAllBytes(Path.of("..", "docs", "examples", "target.yaml")));
    Files.deleteIfExists(folder.resolve("ladder.yaml"));
    good("ladder", "--new", folder.resolve("ladder.yaml").toString());
    if (!Files.exists(folder.resolve("whole/record.jsonl"))) {
      for (String leg : List.of("left", "right")) {
        good(
            "record",
            "add",
            "Mira Solberg",
            "--date",
            "2026-03-02",
            "--leg",
            leg,
            "--step",
            "bench-dumbbells",
            "--asked-reps",
            "8",
            "--target",
            "upright",
            "--load",
            "20kg",
            "--load-kind",
            "each-hand",
            "--reps",
            "8",
            "--clean",
            "8",
            "--pain",
            "no",
            "--record",
            whole());
      }
    }
    for (String name : List.of("a", "b")) {
      StringWriter json = new StringWriter();
      ResultJson.write(Sets.measured(name + ".mp4"), FlagImages.none(), json);
      Files.writeString(folder.resolve(name + ".json"), json.toString());
    }
    good("compare", folder.resolve("a.json").toString(), folder.resolve("b.json").toString());
    good("ladder", folder.resolve("ladder.yaml").toString());
    for (String file : List.of("sheet.csv", "sheet.xlsx")) {
      int code = session(folder.resolve(file).toString());
      if (code != ExitCode.UNREADABLE.number() || !said.contains("recorded")) {
        System.out.println("undamaged: " + file + " code " + code + ": " + said);
      }
    }
  }

  /** Of undamaged files nothing is complained of, or all the damage shows nothing. */
  private void good(String... words) {
    int code = run(words);
    if (code != 0) {
      System.out.println("undamaged: " + String.join(" ", words) + " code " + code + ": " + said);
    }
  }

  private static byte[] workbook() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("day");
      for (int row = 0; row < ROWS.size(); row++) {
        for (int column = 0; column < ROWS.get(row).size(); column++) {
          sheet.value(row, column, ROWS.get(row).get(column));
        }
      }
    }
    return bytes.toByteArray();
  }
}
