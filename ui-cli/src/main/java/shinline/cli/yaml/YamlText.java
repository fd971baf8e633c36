package shinline.cli.yaml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import shinline.cli.words.Words;

/** Reads a coach's file as text. */
public final class YamlText {
  /** Far more than any file of ours needs; a file beyond it is some other file. */
  public static final int MAX_BYTES = 64 * 1024;

  private YamlText() {}

  /** The text of a file; empty, with a problem noted, when it cannot be had. */
  public static Optional<String> read(Path file, Problems problems) {
    if (Files.isDirectory(file)) {
      return refused(problems, Words.say("yaml.folder"), Words.say("yaml.folder.do"));
    }
    if (!Files.isRegularFile(file)) {
      return refused(problems, Words.say("yaml.missing"), Words.say("yaml.missing.do"));
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        problems.add(
            OptionalInt.empty(),
            "",
            Words.say("yaml.large", MAX_BYTES / 1024),
            Words.say("yaml.large.do"));
        return Optional.empty();
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return Optional.of(text);
    } catch (CharacterCodingException notText) {
      return refused(problems, Words.say("yaml.no-text"), Words.say("yaml.no-text.do"));
    } catch (IOException unreadable) {
      return refused(problems, Words.say("yaml.closed"), Words.say("yaml.closed.do"));
    }
  }

  private static Optional<String> refused(Problems problems, String what, String whatToDo) {
    problems.add(OptionalInt.empty(), "", what, whatToDo);
    return Optional.empty();
  }
}
