package shinline.cli.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.outcome.CoachException;

class OutputFilesTest {
  @TempDir Path folder;

  private static OutputFiles run(Path... clips) {
    return new OutputFiles(List.of(clips));
  }

  private void write(String name, String text) {
    try (OutputFiles run = run()) {
      run.file(folder.resolve(name), Claim.OURS).write(w -> w.write(text));
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatItWroteItReplaces() throws IOException {
    write("a.json", "one");
    write("a.json", "two");
    assertThat(folder.resolve("a.json")).hasContent("two");
    assertThat(names()).containsExactly(FolderManifest.NAME, "a.json");
  }

  @Test
  void aFileOfTheCoachStays() throws IOException {
    Files.writeString(folder.resolve("a.json"), "mine");
    assertThatThrownBy(() -> write("a.json", "two"))
        .isInstanceOf(CoachException.class)
        .hasMessageContaining("a.json")
        .hasMessageContaining("move it away");
    assertThat(folder.resolve("a.json")).hasContent("mine");
    assertThat(names()).containsExactly("a.json");
  }

  @Test
  void aFileThatWasChangedSinceStays() throws IOException {
    write("a.json", "one");
    Files.writeString(folder.resolve("a.json"), "one, and a note of mine");
    assertThatThrownBy(() -> write("a.json", "two")).isInstanceOf(CoachException.class);
    assertThat(folder.resolve("a.json")).hasContent("one, and a note of mine");
  }

  @Test
  void aLinkIsNotFollowedUnlessTheCoachNamedIt() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("a.json"), other);
    assertThatThrownBy(() -> write("a.json", "two")).isInstanceOf(CoachException.class);
    assertThat(other).hasContent("mine");
    try (OutputFiles run = run()) {
      run.file(link, Claim.NAMED).write(w -> w.write("named"));
    }
    assertThat(other).hasContent("named");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aClipIsNeverWrittenNorRemovedWhateverItsName() throws IOException {
    write("a-rep1-shallow.jpg", "picture");
    Path clip = folder.resolve("a-rep1-shallow.jpg");
    Path link = Files.createSymbolicLink(folder.resolve("b.mp4"), clip);
    try (OutputFiles run = run(clip)) {
      for (Claim claim : Claim.values()) {
        assertThatThrownBy(() -> run.file(clip, claim).write(w -> w.write("x")))
            .isInstanceOf(CoachException.class)
            .hasMessageContaining("is a clip");
        assertThatThrownBy(() -> run.file(link, claim).write(w -> w.write("x")))
            .isInstanceOf(CoachException.class);
      }
      run.remove(folder, name -> true);
    }
    assertThat(clip).hasContent("picture");
  }

  @Test
  void onlyOwnUnchangedFilesAreRemoved() throws IOException {
    write("a-rep1-shallow.jpg", "ours");
    write("a-rep2-shallow.jpg", "ours, to be changed");
    Files.writeString(folder.resolve("a-rep2-shallow.jpg"), "changed");
    Files.writeString(folder.resolve("a-rep3-shallow.jpg"), "the coach's");
    try (OutputFiles run = run()) {
      run.remove(folder, name -> name.endsWith(".jpg"));
    }
    assertThat(names())
        .containsExactly(FolderManifest.NAME, "a-rep2-shallow.jpg", "a-rep3-shallow.jpg");
  }

  @Test
  void twoRunsAtOnceDoNotMeet() throws IOException {
    Path place = folder.resolve("film.mp4");
    try (OutputFiles one = run();
        OutputFiles other = run()) {
      Path first = one.begin(place);
      Path second = other.begin(place);
      assertThat(first).isNotEqualTo(second);
      Files.writeString(first, "whole one");
      Files.writeString(second, "whole other");
      one.finish(first, place, Claim.NAMED);
      other.finish(second, place, Claim.NAMED);
      assertThat(place).hasContent("whole other");
    }
    assertThat(names()).containsExactly("film.mp4");
  }

  /** What a killed run leaves: its work folder, known by the manifest, with no lock held. */
  @Test
  void leftoversOfAKilledRunGoAtTheNextStart() throws IOException {
    Path left = Files.createDirectory(folder.resolve(".shinline-0123456789abcdef"));
    Files.writeString(left.resolve("lock"), "");
    Files.writeString(left.resolve("part0.mp4"), "half a film");
    Files.writeString(
        folder.resolve(FolderManifest.NAME), "{\"began\":\".shinline-0123456789abcdef\"}\n{\"wro");
    Path foreign = Files.createDirectory(folder.resolve(".shinline-ffffffffffffffff"));
    write("a.json", "one");
    assertThat(left).doesNotExist();
    assertThat(foreign).exists();
    assertThat(names())
        .containsExactly(".shinline-ffffffffffffffff", FolderManifest.NAME, "a.json");
  }

  @Test
  void aLivingRunIsLeftAlone() throws IOException {
    try (OutputFiles living = run()) {
      Path begun = living.begin(folder.resolve("film.mp4"));
      Files.writeString(begun, "half");
      write("a.json", "one");
      assertThat(begun).hasContent("half");
    }
  }

  @Test
  void aLongManifestIsWrittenAnewAndForgetsNothing() throws IOException {
    write("kept.json", "one");
    for (int i = 0; i < 140; i++) {
      write("a.json", "text " + i);
    }
    assertThat(Files.readAllLines(folder.resolve(FolderManifest.NAME)).size()).isLessThan(410);
    write("kept.json", "two");
    assertThat(folder.resolve("kept.json")).hasContent("two");
  }

  @Test
  void aLinkInThePlaceOfTheManifestIsRefused() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "mine\n");
    Files.createSymbolicLink(folder.resolve(FolderManifest.NAME), other);
    assertThatThrownBy(() -> write("a.json", "one")).isInstanceOf(CoachException.class);
    assertThat(other).hasContent("mine\n");
  }
}
