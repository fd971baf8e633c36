package shinline.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.outcome.CoachException;

class WholeFileTest {
  @TempDir Path folder;

  private final OutputFiles files = new OutputFiles(List.of());

  @AfterEach
  void end() {
    files.close();
  }

  private WholeFile file(Path target) {
    return files.file(target, Claim.NAMED);
  }

  @Test
  void aDiskThatFillsLeavesTheOldFileAndNothingElse() throws IOException {
    Path target = folder.resolve("a.json");
    Files.writeString(target, "old");
    assertThatThrownBy(
            () ->
                file(target)
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
    files.close();
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void checkingLeavesNothingBehind() throws IOException {
    file(folder.resolve("a.json")).checkWritable();
    files.close();
    assertThat(Files.list(folder)).isEmpty();
  }

  @Test
  void writingReplaces() throws IOException {
    Path target = folder.resolve("a.json");
    Files.writeString(target, "old");
    file(target).write(w -> w.write("new ±"));
    assertThat(target).hasContent("new ±");
    files.close();
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void aMissingFolderIsSaidBeforehand() {
    assertThatThrownBy(() -> file(folder.resolve("no/a.json")).checkWritable())
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("folder does not exist");
  }
}
