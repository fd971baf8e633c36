package shinline.cli.doctor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.context.CommandContext;
import shinline.cli.doctor.Health.State;
import shinline.cli.outcome.ExitCode;
import shinline.cli.place.LibraryPlace;
import shinline.cli.place.ProgramFolder;
import shinline.cli.text.Typography;
import shinline.cli.words.Words;

class DoctorTest {
  private static final long MEMORY = 8_000_000_000L;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();

  private int doctor(String... words) {
    CommandContext context = PlainContext.of(out, new StringWriter());
    return Main.standard(context).run(words);
  }

  @Test
  void whereTheTestsRunClipsCanBeMeasured() {
    int code = doctor("doctor", "--record", folder.resolve("record").toString());
    assertThat(out.toString())
        .contains(Words.say("doctor.fit"), "A clip of 30 s at 1080p takes about")
        .contains("FFmpeg 8", "OpenCV 4", "SHA-256 begins")
        .doesNotContain("MEND");
    assertThat(code).isZero();
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aRecordThatCannotBeWrittenHasToBeMended() throws IOException {
    Path file = Files.writeString(folder.resolve("record"), "a file in its place");
    assertThat(doctor("doctor", "--record", file.toString())).isEqualTo(ExitCode.USAGE.number());
    assertThat(out.toString()).contains("MEND  record", file.toString(), "nothing can be written");
  }

  @Test
  void whatNeedsAMissingPartIsNotTried() throws IOException {
    Path taken = Files.writeString(folder.resolve("cache"), "a file in its place");
    List<Health> found =
        new Doctor(
                new Doctor.Surroundings(
                    folder.resolve("nowhere"),
                    new LibraryPlace(new ProgramFolder(taken)),
                    folder,
                    Typography.PLAIN))
            .examine();
    assertThat(found)
        .extracting(Health::part)
        .containsExactly(
            Part.JAVA,
            Part.PROCESSOR,
            Part.MEMORY,
            Part.TEMPORARY_FOLDER,
            Part.CACHE,
            Part.RECORD,
            Part.TERMINAL);
    assertThat(found)
        .filteredOn(h -> h.state() == State.BAD)
        .extracting(Health::part)
        .containsExactly(Part.TEMPORARY_FOLDER, Part.CACHE);
    assertThat(found.get(found.size() - 1).state()).isEqualTo(State.POOR);
  }

  @Test
  void whatAMachineLacksIsTold() {
    assertThat(new Machine(17, "17.0.1", 2, MEMORY).java().state()).isEqualTo(State.GOOD);
    assertThat(new Machine(11, "11.0.2", 2, MEMORY).java().words()).contains("11.0.2", "17");
    assertThat(new Machine(11, "11.0.2", 2, MEMORY).java().state()).isEqualTo(State.BAD);
    assertThat(new Machine(17, "17", 1, MEMORY).processor().state()).isEqualTo(State.POOR);
    assertThat(new Machine(17, "17", 4, MEMORY).processor().state()).isEqualTo(State.GOOD);
    assertThat(new Machine(17, "17", 4, 1_000_000_000).memory().state()).isEqualTo(State.BAD);
    assertThat(new Machine(17, "17", 4, 3_000_000_000L).memory().state()).isEqualTo(State.POOR);
    assertThat(new Machine(17, "17", 4, MEMORY).memory().state()).isEqualTo(State.GOOD);
  }

  @Test
  void aFolderIsTried() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertThat(new WritableFolder(Part.RECORD, folder).there().state()).isNotEqualTo(State.BAD);
    assertThat(new WritableFolder(Part.RECORD, folder.resolve("a/b")).there().state())
        .isEqualTo(State.BAD);
    assertThat(new WritableFolder(Part.RECORD, folder.resolve("a/b")).orToBeMade().state())
        .isNotEqualTo(State.BAD);
    assertThat(new WritableFolder(Part.RECORD, file.resolve("b")).orToBeMade().state())
        .isEqualTo(State.BAD);
    assertThat(folder).isDirectoryNotContaining(p -> !p.equals(file));
  }
}
