package shinline.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.outcome.CoachException;

class WholeFileTest {
  @TempDir Path folder;

  @Test
  void aDiskThatFillsLeavesTheOldFileAndNothingElse() throws IOException {
    Path target = folder.resolve("a.json");
    Files.writeString(target, "old");
    assertThatThrownBy(
            () ->
                new WholeFile(target)
                    .write(
                        w -> {
                          w.write("half");
                          throw new IOException("No space left on device");
                        }))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("a.json")
        .hasMessageContaining("No space left on device");
    assertThat(target).hasContent("old");
    assertThat(folder).isDirectoryContaining("glob:**a.json");
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void checkingLeavesNothingBehind() throws IOException {
    new WholeFile(folder.resolve("a.json")).checkWritable();
    assertThat(Files.list(folder)).isEmpty();
  }

  @Test
  void writingReplaces() throws IOException {
    Path target = folder.resolve("a.json");
    Files.writeString(target, "old");
    new WholeFile(target).write(w -> w.write("new ±"));
    assertThat(target).hasContent("new ±");
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void aMissingFolderIsSaidBeforehand() {
    assertThatThrownBy(() -> new WholeFile(folder.resolve("no/a.json")).checkWritable())
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("folder does not exist");
  }
}
