package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.Entry;
import shinline.cli.record.LineProblem;
import shinline.cli.record.Origin;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordLines;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
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

  private final CommandContext context;
  private final Clock clock;

  RecordPlace(CommandContext context, Clock clock) {
    this.context = context;
    this.clock = clock;
  }

  RecordStore store() {
    return new RecordStore(
        RecordFolder.choose(
            Optional.ofNullable(folder),
            System.getenv(),
            Path.of(System.getProperty("user.home", "."))),
        clock);
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The record as it stands; what is wrong with its lines is said. */
  RecordView view() {
    return new RecordView(read());
  }

  /** What a record says of an athlete; what is wrong with the lines is said. */
  AthleteRecord of(RecordView record, AthleteName athlete) {
    AthleteRecord known = record.of(athlete);
    say(known.problems());
    return known;
  }

  /** The line of an id, or of its first letters where no other line has them, as it stands now. */
  RecordLine line(String id) {
    RecordLines record = read();
    return new RecordView(record).now(line(record, id));
  }

  /** The lines; what is wrong with them is said. */
  RecordLines read() {
    RecordLines record = store().read();
    say(record.problems());
    if (store().folder().origin() == Origin.INVENTED) {
      context.complain(Words.say("invented.record", store().folder().path()));
    }
    return record;
  }

  /** Adds an entry and says so. */
  void add(Entry entry) {
    context.say(Words.say("record.added", store().append(entry)));
  }

  private void say(List<LineProblem> problems) {
    problems.stream().map(LineProblem::text).forEach(context::complain);
  }

  private static RecordLine line(RecordLines record, String id) {
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
