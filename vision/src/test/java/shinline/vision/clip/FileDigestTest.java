package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FileDigestTest {
  @TempDir Path folder;

  /** The one-block example of FIPS 180-2, appendix B.1. */
  @Test
  void publishedExample() throws IOException {
    Path file = Files.writeString(folder.resolve("abc"), "abc");
    assertThat(FileDigest.of(file).sha256())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void aFilmHasTheSameDigestWhoeverComputesIt(@TempDir Path folder) throws IOException {
    byte[] bytes = new byte[200_001];
    new java.util.Random(1).nextBytes(bytes);
    Path film = Files.write(folder.resolve("film.mp4"), bytes);
    assertThat(FileDigest.ofFilm(film)).isEqualTo(FileDigest.of(film));
    Path empty = Files.write(folder.resolve("empty.mp4"), new byte[0]);
    assertThat(FileDigest.ofFilm(empty)).isEqualTo(FileDigest.of(empty));
  }
}
