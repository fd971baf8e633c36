package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.advice.AdviceJson;
import shinline.cli.advice.AdviceText;
import shinline.cli.advice.GivenAdvice;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.RecordStore;
import shinline.metrics.advice.Advisor;

/** {@code shinline advise}: what is next for an athlete, by the rules of the ladder. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class AdviseCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Option(names = "--as-of", paramLabel = "DATE")
  private @Nullable LocalDate asOf;

  @Option(names = "--json", paramLabel = "FILE")
  private @Nullable Path json;

  @Mixin private LadderOption ladder;
  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  public AdviseCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    RecordStore store = place.store();
    try (OutputFiles files = new OutputFiles(List.of(store.folder().lines()))) {
      return advise(Optional.ofNullable(json).map(f -> files.file(f, Claim.NAMED)));
    }
  }

  private int advise(Optional<WholeFile> file) {
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
    return ExitCode.MEASURED.number();
  }
}
