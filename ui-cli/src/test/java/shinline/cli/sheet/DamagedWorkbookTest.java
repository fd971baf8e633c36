package shinline.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;

/** What the mangling run found: a workbook that unpacks and is no workbook inside. */
class DamagedWorkbookTest {
  private static final String CELLS = "/xl/worksheets/sheet1.xml";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void aWorkbook() throws IOException {
    file = folder.resolve("day.xlsx");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      var sheet = book.newWorksheet("day");
      sheet.value(0, 0, "clip");
      sheet.value(1, 0, 42);
    }
    Files.write(file, bytes.toByteArray());
  }

  @Test
  void undamagedItIsRead() {
    assertThat(SheetFile.read(file).sets().rows()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "a cell of no type, t=\"n\", t=\";\"",
    "a row whose number is none, <row r=\"2\", <row r=\"2026-02-30\"",
    "an end inside a text, <v>42</v>, <v>42&"
  })
  void insideItIsDamaged(String what, String from, String to) throws IOException {
    try (FileSystem archive = FileSystems.newFileSystem(file)) {
      Path cells = archive.getPath(CELLS);
      String xml = Files.readString(cells, StandardCharsets.UTF_8);
      assertThat(xml).as(what).contains(from);
      Files.writeString(cells, xml.replace(from, to));
    }
    assertThatThrownBy(() -> SheetFile.read(file))
        .isInstanceOfSatisfying(
            CoachException.class, e -> assertThat(e.exitCode()).isEqualTo(ExitCode.USAGE))
        .hasMessageContaining("day.xlsx");
  }
}
