package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.LineProblem;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordLines;
import shinline.cli.record.RecordStore;
import shinline.cli.words.Words;

/** The option that says where the record is, and the record it names. */
final class RecordPlace {
  /** Fewer letters of an id are too easily another line's. */
  private static final int SHORTEST_ID = 4;

  @Option(
      names = "--record",
      paramLabel = "FOLDER",
      descriptionKey = "shinline.shared.record-folder")
  private @Nullable Path folder;

  RecordStore store(Clock clock) {
    return new RecordStore(
        RecordFolder.choose(
            Optional.ofNullable(folder),
            System.getenv(),
            Path.of(System.getProperty("user.home", "."))),
        clock);
  }

  /** The record; what is wrong with its lines is said. */
  RecordLines read(RecordStore store, CommandContext context) {
    RecordLines record = store.read();
    record.problems().stream().map(LineProblem::text).forEach(context::complain);
    return record;
  }

  /** The line of an id, or of its first letters where no other line has them. */
  static RecordLine line(RecordLines record, String id) {
    Optional<RecordLine> exact = record.withId(id);
    if (exact.isPresent()) {
      return exact.get();
    }
    var found =
        record.lines().stream()
            .filter(l -> id.length() >= SHORTEST_ID && l.id().startsWith(id))
            .toList();
    if (found.size() != 1) {
      throw CoachException.usage(
          Words.say(found.isEmpty() ? "record.id-unknown" : "record.id-unclear", id));
    }
    return found.get(0);
  }
}
