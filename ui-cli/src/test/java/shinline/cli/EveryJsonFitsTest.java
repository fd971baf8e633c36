package shinline.cli;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.EveryJsonFits.WritesWhatDoesNotFit;

/** The check that runs after every test can fail. */
class EveryJsonFitsTest {
  @TempDir Path folder;

  @Test
  @WritesWhatDoesNotFit
  void whatDoesNotFitIsFoundWhereverItLies() throws IOException {
    Path deep = Files.createDirectories(folder.resolve("a/b"));
    for (String schema : new String[] {"result", "record", "advice"}) {
      String empty = "{\"schema\":\"shinline-" + schema + "/1\"}";
      Path json = Files.writeString(deep.resolve("x.json"), empty);
      assertThatThrownBy(() -> EveryJsonFits.assertFit(folder)).isInstanceOf(AssertionError.class);
      Files.delete(json);
      Path lines = Files.writeString(deep.resolve("x.jsonl"), "\n" + empty + "\n");
      assertThatThrownBy(() -> EveryJsonFits.assertFit(folder)).isInstanceOf(AssertionError.class);
      Files.delete(lines);
    }
  }

  @Test
  void whatFollowsNoSchemaOfOursIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("mine.json"), "[\"mine\"]");
    Files.writeString(folder.resolve("text.json"), "no JSON");
    Files.write(folder.resolve("bytes.json"), new byte[] {(byte) 0xff, 0});
    assertThatCode(() -> EveryJsonFits.assertFit(folder)).doesNotThrowAnyException();
  }
}
