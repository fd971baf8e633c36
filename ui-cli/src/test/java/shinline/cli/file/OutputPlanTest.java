package shinline.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.outcome.CoachException;

class OutputPlanTest {
  @TempDir private Path folder;

  @Test
  void anAnnotatedClipIsOfOneClip() {
    assertThatThrownBy(() -> plan("drawn.mp4", "a.mp4", "b.mp4"))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("--annotated");
  }

  @Test
  void anAnnotatedClipEndsInMp4() {
    assertThatThrownBy(() -> plan("drawn.mov", "a.mp4"))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining(".mp4");
  }

  @Test
  void anAnnotatedClipDoesNotReplaceItsOwnSource() {
    assertThatThrownBy(() -> plan("a.mp4", "a.mp4"))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("is a clip");
    assertThat(plan("drawn.mp4", "a.mp4").annotated().map(WholeFile::path))
        .contains(folder.resolve("drawn.mp4"));
  }

  private OutputPlan plan(String annotated, String... clips) {
    List<Path> inputs = List.of(clips).stream().map(folder::resolve).toList();
    try (OutputFiles files = new OutputFiles(inputs)) {
      return OutputPlan.of(
          inputs,
          new OutputPlan.Asked(
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.of(folder.resolve(annotated)),
              OutputPlan.Page.LEFT_OUT),
          files);
    }
  }
}
