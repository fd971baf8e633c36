package shinline.cli.targetfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import shinline.cli.words.Words;
import shinline.metrics.target.Target;

/** What came of reading a target file. */
public sealed interface TargetFile {

  /** Far more than any target needs; a file beyond it is some other file. */
  int MAX_BYTES = 64 * 1024;

  /** The file is good. */
  record Read(Target target) implements TargetFile {}

  /**
   * The file is not.
   *
   * @param problems all that were found, at least one, in the order of the file
   */
  record Refused(List<Problem> problems) implements TargetFile {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("refused without a problem");
      }
    }
  }

  default <T> T fold(Function<Read, T> read, Function<Refused, T> refused) {
    return this instanceof Read r ? read.apply(r) : refused.apply((Refused) this);
  }

  /** Reads a target file; a file that cannot be opened is refused like any other. */
  static TargetFile read(Path file) {
    if (Files.isDirectory(file)) {
      return refused(Words.say("target-file.folder"), Words.say("target-file.folder.do"));
    }
    if (!Files.isRegularFile(file)) {
      return refused(Words.say("target-file.missing"), Words.say("target-file.missing.do"));
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        return refused(
            Words.say("target-file.large", MAX_BYTES / 1024), Words.say("target-file.large.do"));
      }
      return parse(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException notText) {
      return refused(Words.say("target-file.no-text"), Words.say("target-file.no-text.do"));
    } catch (IOException unreadable) {
      return refused(Words.say("target-file.closed"), Words.say("target-file.closed.do"));
    }
  }

  /** Reads the text of a target file. */
  static TargetFile parse(String text) {
    // Some editors put a mark in front of the text that means nothing in UTF-8.
    String yaml = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return new TargetReader().read(yaml);
  }

  private static Refused refused(String what, String whatToDo) {
    return new Refused(List.of(new Problem(OptionalInt.empty(), "", what, whatToDo)));
  }
}
