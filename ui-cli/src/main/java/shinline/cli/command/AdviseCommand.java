package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import shinline.cli.advice.AdviceJson;
import shinline.cli.advice.AdviceText;
import shinline.cli.advice.GivenAdvice;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.RecordStore;
import shinline.metrics.advice.Advisor;

/** {@code shinline advise}: what is next for an athlete, by the rules of the ladder. */
@Command(name = "advise")
public final class AdviseCommand extends AthleteCommand {
  @Option(order = FIRST, names = "--as-of", paramLabel = "DATE")
  private @Nullable LocalDate asOf;

  @Option(order = FIRST, names = "--json", paramLabel = "FILE")
  private @Nullable Path json;

  public AdviseCommand(CommandContext context, Clock clock) {
    super(context, clock);
  }

  @Override
  void tell(RecordStore store, OutputFiles files) {
    Optional<WholeFile> file = Optional.ofNullable(json).map(f -> files.file(f, Claim.NAMED));
    file.ifPresent(WholeFile::checkWritable);
    Advisor advisor = new Advisor(ladder.ladder());
    AthleteRecord known = place.of(place.view(), athlete);
    LocalDate day = asOf == null ? place.today() : asOf;
    GivenAdvice given =
        new GivenAdvice(
            known.name(), advisor.advise(known.history(), day), known.overruleInForce(day));
    file.ifPresent(f -> f.write(writer -> AdviceJson.write(given, writer)));
    AdviceText.lines(given).forEach(context.out()::println);
    context.out().flush();
  }
}
