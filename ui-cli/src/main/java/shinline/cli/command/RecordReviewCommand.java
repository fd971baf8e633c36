package shinline.cli.command;

import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.Entry;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordWriting;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;

/** {@code shinline record review}: dismisses a flag the coach looked at. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordReviewCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ID", descriptionKey = "shinline.shared.id")
  private String id;

  @Option(names = "--flag", paramLabel = "KIND", required = true)
  private String flag;

  @Option(names = "--rep", paramLabel = "N")
  private @Nullable Integer rep;

  @Option(names = "--stands")
  private boolean stands;

  @Mixin private final RecordPlace place;

  @SuppressWarnings("NullAway.Init") // picocli sets the id, the flag and the mixin
  RecordReviewCommand(CommandContext context, Clock clock) {
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    if (Arrays.stream(FlagKind.values()).noneMatch(k -> k.jsonName().equals(flag))) {
      throw CoachException.usage(
          Words.say(
              "option.among",
              flag,
              Arrays.stream(FlagKind.values())
                  .map(FlagKind::jsonName)
                  .collect(Collectors.joining(", "))));
    }
    RecordLine set = place.line(id);
    if (!set.kind().equals(Entry.SET)) {
      throw CoachException.usage(Words.say("record.review.no-set", set.id()));
    }
    place.add(RecordWriting.review(set, flag, Optional.ofNullable(rep), !stands));
    return ExitCode.MEASURED.number();
  }
}
