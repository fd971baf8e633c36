package shinline.cli.command;

import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;

/**
 * Clips or pictures one after the other: what one of them breaks costs the others nothing.
 *
 * @param <R> what is told of one
 * @param measure reads and measures one
 * @param came what that came to
 * @param lines what a coach reads of it
 * @param write writes its results; tells what that came to
 */
record EachInput<R>(
    CommandContext surroundings,
    Function<Path, R> measure,
    Function<R, ExitCode> came,
    Function<R, List<String>> lines,
    BiFunction<R, Path, ExitCode> write) {

  /**
   * @param closing said once at the end, if any input could be read
   * @return the worst that any input came to
   * @throws CoachException that a step throws: no other input would go better
   */
  ExitCode run(List<Path> inputs, Supplier<List<String>> closing) {
    ExitCode worst = ExitCode.MEASURED;
    boolean anyRead = false;
    for (Iterator<Path> each = inputs.iterator(); each.hasNext(); ) {
      Path input = each.next();
      try {
        R report = measure.apply(input);
        ExitCode code = came.apply(report);
        anyRead |= code != ExitCode.UNREADABLE;
        print(code, lines.apply(report));
        worst = worst.worse(code).worse(write.apply(report, input));
      } catch (CoachException e) {
        throw e;
      } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
        surroundings.fault(Words.say("fault.in-clip", input.getFileName()), e);
        worst = worst.worse(ExitCode.INTERNAL);
      }
      if (each.hasNext()) {
        surroundings.out().println();
      }
    }
    if (anyRead) {
      surroundings.out().println();
      closing.get().forEach(surroundings.out()::println);
    }
    surroundings.out().flush();
    return worst;
  }

  /** An input without numbers is a complaint, and goes where complaints go. */
  private void print(ExitCode code, List<String> told) {
    var stream = code == ExitCode.MEASURED ? surroundings.out() : surroundings.err();
    told.forEach(stream::println);
    stream.flush();
  }
}
