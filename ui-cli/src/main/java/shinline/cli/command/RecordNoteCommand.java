package shinline.cli.command;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.Entry;
import shinline.cli.record.RecordView;
import shinline.cli.record.RecordWriting;
import shinline.cli.words.Words;

/** What a coach notes of an athlete for a date: one subcommand for each kind. */
@Command(mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false)
abstract class RecordNoteCommand implements Callable<Integer> {
  private static final int ADULT_YEARS = 18;

  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Option(names = "--date", paramLabel = "DATE", descriptionKey = "shinline.shared.note-date")
  private @Nullable LocalDate date;

  @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "shinline.shared.note-text")
  private @Nullable String note;

  @Mixin private final RecordPlace place;

  private final String kind;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and the mixin
  private RecordNoteCommand(CommandContext context, Clock clock, String kind) {
    place = new RecordPlace(context, clock);
    this.kind = kind;
  }

  /** The fields of this kind. */
  abstract Map<String, String> fields();

  @Override
  public Integer call() {
    LocalDate day = date == null ? place.today() : date;
    Map<String, String> fields = new LinkedHashMap<>(fields());
    if (note != null) {
      fields.put("note", note);
    }
    if (kind.equals(Entry.RELEASE)) {
      refuseForMinors(day);
    }
    place.add(RecordWriting.noted(kind, athlete, day, fields));
    return ExitCode.MEASURED.number();
  }

  private void refuseForMinors(LocalDate day) {
    OptionalInt born =
        new RecordView(place.store().read()).of(athlete).history().profile().birthYear();
    if (born.isPresent() && day.getYear() - born.getAsInt() < ADULT_YEARS) {
      throw CoachException.usage(
          Words.say("record.release.minor", athlete.written(), String.valueOf(born.getAsInt())));
    }
  }

  /** {@code record clear}: cleared by a clinician after pain. */
  @Command(name = "clear")
  static final class Clear extends RecordNoteCommand {
    Clear(CommandContext context, Clock clock) {
      super(context, clock, Entry.CLEARANCE);
    }

    @Override
    Map<String, String> fields() {
      return Map.of();
    }
  }

  /** {@code record gate}: a gate passed. */
  @Command(name = "gate")
  static final class Gate extends RecordNoteCommand {
    @Option(names = "--gate", paramLabel = "NAME", defaultValue = "hip-flexor-range")
    private String gate;

    @SuppressWarnings("NullAway.Init") // has a default
    Gate(CommandContext context, Clock clock) {
      super(context, clock, Entry.GATE);
    }

    @Override
    Map<String, String> fields() {
      return Map.of("gate", gate);
    }
  }

  /** {@code record release}: the coach's word for a step. */
  @Command(name = "release")
  static final class Release extends RecordNoteCommand {
    @Option(names = "--step", paramLabel = "STEP", defaultValue = "short-range")
    private String step;

    @SuppressWarnings("NullAway.Init") // has a default
    Release(CommandContext context, Clock clock) {
      super(context, clock, Entry.RELEASE);
    }

    @Override
    Map<String, String> fields() {
      return Map.of("release", step);
    }
  }

  /** {@code record overrule}: the coach's own decision in place of the advice. */
  @Command(name = "overrule")
  static final class Overrule extends RecordNoteCommand {
    @Option(names = "--reason", paramLabel = "TEXT", required = true)
    private String reason;

    @Option(names = "--instead", paramLabel = "TEXT")
    private @Nullable String instead;

    @SuppressWarnings("NullAway.Init") // picocli sets the reason
    Overrule(CommandContext context, Clock clock) {
      super(context, clock, Entry.OVERRULE);
    }

    @Override
    Map<String, String> fields() {
      Map<String, String> fields = new LinkedHashMap<>();
      fields.put("reason", reason);
      if (instead != null) {
        fields.put("instead", instead);
      }
      return fields;
    }
  }
}
