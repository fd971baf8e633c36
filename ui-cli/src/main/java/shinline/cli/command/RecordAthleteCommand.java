package shinline.cli.command;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import shinline.cli.record.RecordWriting;
import shinline.cli.text.Length;
import shinline.cli.words.Words;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** {@code shinline record athlete}: what is known of an athlete. */
@Command(
    name = "athlete",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordAthleteCommand implements Callable<Integer> {
  private static final int OLDEST = 110;

  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Option(names = "--birth-year", paramLabel = "YEAR")
  private @Nullable Integer birthYear;

  @Option(names = "--mass", paramLabel = "MASS")
  private @Nullable Mass mass;

  @Option(names = "--height", paramLabel = "LENGTH")
  private @Nullable Length height;

  @Option(names = "--consent", paramLabel = "yes|no")
  private @Nullable String consent;

  @Option(names = "--start-step", paramLabel = "STEP")
  private @Nullable String startStep;

  @Option(names = "--note", paramLabel = "TEXT")
  private @Nullable String note;

  @Mixin private LadderOption ladder;
  @Mixin private final RecordPlace place;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  RecordAthleteCommand(CommandContext context, Clock clock) {
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    Map<String, String> fields = new LinkedHashMap<>();
    if (birthYear != null) {
      int year = place.today().getYear();
      if (birthYear > year || birthYear < year - OLDEST) {
        throw CoachException.usage(Words.say("record.athlete.year", birthYear));
      }
      fields.put("birthYear", birthYear.toString());
    }
    if (mass != null) {
      fields.put("massKg", mass.in(MassUnit.KG).value().toPlainString());
    }
    if (height != null) {
      BigDecimal cm = BigDecimal.valueOf(Math.round(height.metres() * 1000), 1);
      fields.put("heightCm", cm.stripTrailingZeros().toPlainString());
    }
    if (consent != null) {
      if (!consent.equals("yes") && !consent.equals("no")) {
        throw CoachException.usage(
            Words.say("option.among", consent, String.join(", ", List.of("yes", "no"))));
      }
      fields.put("consent", String.valueOf(consent.equals("yes")));
    }
    if (startStep != null) {
      if (ladder.ladder().step(startStep).isEmpty()) {
        throw CoachException.usage(Words.say("record.athlete.step", startStep));
      }
      fields.put("startStep", "\"" + startStep + "\"");
    }
    if (note != null) {
      fields.put("note", "\"" + note.replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
    }
    place.add(RecordWriting.athlete(athlete, fields));
    return ExitCode.MEASURED.number();
  }
}
